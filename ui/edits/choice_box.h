#pragma once

#include "ui/look/pieces.h"
#include "ui/text/model_words.h"

#include <QComboBox>

namespace ui::edits {

/// A drop-down over all values of one choice of the book.
template <class Enum>
class ChoiceBox : public QComboBox {
  public:
    ChoiceBox(const char* object_name, const QString& accessible_name, QWidget* parent = nullptr)
        : QComboBox(parent) {
        look::named(this, object_name, accessible_name);
        for (const Enum value : text::choices<Enum>()) {
            addItem(text::words(value), static_cast<int>(value));
        }
    }
    [[nodiscard]] Enum value() const { return static_cast<Enum>(currentData().toInt()); }
    void set_value(Enum value) { setCurrentIndex(findData(static_cast<int>(value))); }
};

} // namespace ui::edits
