#pragma once

#include "ui/edits/entry_field.h"
#include "ui/models/rows_model.h"
#include "ui/presenters/log_import.h"

#include <QDialog>
#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

namespace ui::look {
class Banner;
}
namespace ui::presenters {
class Workspace;
}

namespace ui::pages {

class Table;

/// Takes a logger's file into the book: shows how it reads and how sure that is, lets the person
/// say otherwise, shows its first readings, then imports with progress and Cancel.
class ImportLogDialog : public QDialog {
    Q_OBJECT
  public:
    ImportLogDialog(presenters::Workspace& workspace, std::vector<core::model::Sensor> sensors,
                    QWidget* parent);
    /// Hides first: the field that loses the focus would else call a form that is half gone.
    ~ImportLogDialog() override;
    void set_file(const QString& path);
    /// For tests: the worker behind the form.
    [[nodiscard]] presenters::LogImport& import() { return *import_; }

  protected:
    void reject() override;

  private:
    struct Part {
        core::chamber::Detected detected;
    };
    using Parts = models::RowsModel<Part>;
    using Readings = models::RowsModel<core::model::ClimateReading>;
    void build_choices(QVBoxLayout* column);
    void build_tables(QVBoxLayout* column);
    void browse();
    void look();
    void show_preview();
    void start();
    void show_report();
    [[nodiscard]] core::chamber::DialectHints hints() const;
    [[nodiscard]] const core::model::Sensor& sensor() const;

    presenters::Workspace& workspace_;
    std::vector<core::model::Sensor> sensors_;
    presenters::LogImport* import_;
    QLineEdit* file_;
    QComboBox* sensor_;
    QComboBox* dates_;
    QComboBox* temperature_;
    QComboBox* decimal_;
    QComboBox* clock_;
    Parts* parts_;
    Readings* readings_;
    Table* part_table_;
    Table* reading_table_;
    look::Banner* banner_;
    QProgressBar* progress_;
    QPushButton* start_;
    QPushButton* close_;
};

} // namespace ui::pages
