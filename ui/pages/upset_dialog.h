#pragma once

#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/models/rows_model.h"
#include "ui/presenters/upset.h"

#include <QDialog>
#include <optional>

class QComboBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ui::look {
class Banner;
}

namespace ui::pages {

class Table;

/// "The fridge was off for 36 h and reached 21 C": what each piece was then and how long the air
/// was where what can grow. Shows a record and keeps it as a note on each batch; judges nothing.
class UpsetDialog : public QDialog {
    Q_OBJECT
  public:
    UpsetDialog(presenters::Workspace& workspace, const core::model::Chamber& chamber,
                std::vector<core::model::Sensor> sensors, QWidget* parent);

  private:
    using Pieces = models::RowsModel<core::chamber::PieceExposure>;
    using Exposures = models::RowsModel<core::chamber::Exposure>;
    void build_form(QVBoxLayout* column);
    void build_tables(QVBoxLayout* column);
    void show_record();
    void show_piece(qint64 row);
    void keep();
    [[nodiscard]] std::optional<presenters::UpsetEntry> entry();

    presenters::Workspace& workspace_;
    core::model::Chamber chamber_;
    std::vector<core::model::Sensor> sensors_;
    std::optional<core::chamber::UpsetRecord> record_;
    QComboBox* source_;
    edits::DayField* day_;
    edits::ClockField* clock_;
    edits::DurationField* lasted_;
    edits::TemperatureField* usual_;
    edits::TemperatureField* reached_;
    Pieces* pieces_;
    Exposures* exposures_;
    Table* piece_table_;
    Table* exposure_table_;
    QLabel* course_;
    look::Banner* banner_;
    QPushButton* keep_;
};

} // namespace ui::pages
