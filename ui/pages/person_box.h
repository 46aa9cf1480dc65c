#pragma once

#include "core/model/ids.h"

#include <QComboBox>
#include <optional>

namespace ui::presenters {
class Workspace;
}

namespace ui::pages {

/// Who signs: one of those who work here, or a new name typed in. A name not known yet is put into
/// the book by person(), as a change of its own, so that a first batch needs no way round.
class PersonBox : public QComboBox {
    Q_OBJECT
  public:
    PersonBox(const char* object_name, const QString& accessible_name, QWidget* parent = nullptr);

    /// Reads the people anew. Who was chosen or typed stays; else it is who works at this desk.
    void load(presenters::Workspace& workspace);
    /// Whether somebody is chosen or a name is typed.
    [[nodiscard]] bool is_named() const;
    /// The person; a typed name not known yet is added first. Absent where nobody is named, or
    /// where the book refuses (it then says so by itself).
    std::optional<core::model::PersonId> person(presenters::Workspace& workspace);
};

/// "Ada Mary Quill" -> "AMQ"; at most five letters, as the book keeps them.
QString initials_of(const QString& name);

} // namespace ui::pages
