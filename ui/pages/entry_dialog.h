#pragma once

#include "core/services/book.h"
#include "ui/edits/entry_field.h"
#include "ui/look/pieces.h"

#include <QDialog>
#include <optional>

class QFormLayout;
class QVBoxLayout;

namespace ui::presenters {
class Workspace;
}

namespace ui::pages {

/// A small form that makes one change of the book. Keep checks every field, then asks the book;
/// what is wrong is said in the form, and nothing typed is lost.
class EntryDialog : public QDialog {
    Q_OBJECT
  public:
    EntryDialog(presenters::Workspace& workspace, const char* object_name, const QString& title,
                QWidget* parent);
    /// What perform() made, after the dialog was accepted.
    [[nodiscard]] const core::actions::Performed& performed() const { return performed_; }

  protected:
    /// The change as entered, or nothing when a field is at fault (and says so itself).
    virtual std::optional<core::actions::Command> command() = 0;
    /// Called after any field was edited: for previews.
    virtual void edited() {}
    /// The reason, for corrections and withdrawals.
    [[nodiscard]] virtual QString why() const { return {}; }

    /// Adds a row; entry fields are also checked on Keep and watched for edits.
    void add_row(const QString& label, QWidget* field);
    [[nodiscard]] QFormLayout* form() const { return form_; }
    [[nodiscard]] QVBoxLayout* below() const { return below_; } ///< under the form
    void set_keep_words(const QString& words);
    [[nodiscard]] presenters::Workspace& workspace() const { return workspace_; }
    void say(const QString& severity, const QString& sentence);

  private:
    void keep();
    presenters::Workspace& workspace_;
    QFormLayout* form_;
    QVBoxLayout* below_;
    look::Banner* banner_;
    QPushButton* keep_;
    QVector<edits::EntryField*> fields_;
    core::actions::Performed performed_;
    QString accepted_; ///< cautions already shown once for the same entry
};

} // namespace ui::pages
