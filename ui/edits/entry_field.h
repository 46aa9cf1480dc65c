#pragma once

#include "core/base/result.h"
#include "ui/text/style.h"

#include <QWidget>

class QLabel;
class QLineEdit;

namespace ui::edits {

/// A one-line entry with its unit beside it and, below it, either what was understood (when it
/// was typed in another unit) or one sentence that says what is wrong. A fault is shown when the
/// person leaves the field, not while typing; once shown it goes away as soon as it is mended.
class EntryField : public QWidget {
    Q_OBJECT
  public:
    EntryField(const char* object_name, const QString& accessible_name, QWidget* parent);
    ~EntryField() override;

    [[nodiscard]] QString text() const;
    void set_text(const QString& text);
    [[nodiscard]] bool is_empty() const;
    /// An empty field is a fault when required.
    void set_required(bool required);
    void set_unit(const QString& unit);
    void set_placeholder(const QString& text);
    void set_read_only(bool read_only);
    /// Shows a fault found by somebody else (a clash in the book); empty takes it away.
    void show_fault(const QString& sentence);
    /// Shows what is wrong now, as if the person had left the field. True when nothing is.
    bool validate();
    /// Whether the text could be taken, without showing anything.
    [[nodiscard]] bool is_good() const;
    [[nodiscard]] QLineEdit* line() const { return line_; }
    [[nodiscard]] QString message() const;

  Q_SIGNALS:
    /// The text changed and is_good() may have, too.
    void edited();
    /// Enter was pressed.
    void entered();

  protected:
    /// What the text means, written in the person's own unit. An error otherwise.
    [[nodiscard]] virtual core::base::Result<QString> understood(const QString& text) const = 0;

    /// Put before the echo: "= 741 g". Days echo as "Saturday, tomorrow" without it.
    [[nodiscard]] virtual QString echo_mark() const { return QStringLiteral("= "); }

  private:
    void check(bool show_fault);

    QLineEdit* line_;
    QLabel* unit_;
    QLabel* message_;
    bool required_ = false;
    bool faulty_ = false;
};

} // namespace ui::edits
