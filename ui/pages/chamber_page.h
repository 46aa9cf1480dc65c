#pragma once

#include "ui/charts/climate_chart.h"
#include "ui/models/rows_model.h"
#include "ui/pages/page.h"
#include "ui/presenters/chamber_air.h"
#include "ui/presenters/watched_folder.h"

#include <optional>

class QComboBox;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QStackedWidget;
class QTabWidget;
class QVBoxLayout;

namespace ui::charts {
class ChartView;
}
namespace ui::look {
class Banner;
class HeadRow;
} // namespace ui::look

namespace ui::pages {

class Table;

/// The chambers: their air over time, whether the sensors may be believed, what hangs in them and
/// how much water that gives off, and the logs that brought the readings.
class ChamberPage : public Page {
    Q_OBJECT
  public:
    ChamberPage(presenters::Workspace& workspace, QWidget* parent);
    void arrive(const Place& place) override;
    void refresh() override;
    std::vector<print::Printable> printables() override;
    /// Waits for the air being read (rendered screens, tests).
    void wait();

  private:
    struct ExcursionRow {
        core::chamber::Excursion excursion;
    };
    struct SensorRow {
        core::model::Sensor sensor;
        std::optional<core::services::ClimateReader::Extent> extent;
        std::vector<core::chamber::CheckDue> checks;
    };
    using Excursions = models::RowsModel<ExcursionRow>;
    using Sensors = models::RowsModel<SensorRow>;
    using Loads = models::RowsModel<core::chamber::PieceLoad>;
    using Logs = models::RowsModel<core::model::ClimateImport>;

    void build_head(look::HeadRow* head);
    QWidget* build_air();
    QWidget* build_sensors();
    QWidget* build_load();
    QWidget* build_logs();
    void fill_choices();
    void ask_air();
    void show_air();
    void show_sensors();
    void show_load();
    void show_logs();
    void move_window(double windows);
    void import_log();
    void take_back();
    void choose_folder();
    void edit_sensor(bool existing);
    void check_sensor();
    [[nodiscard]] const core::model::Chamber* current() const;
    [[nodiscard]] std::vector<core::model::Sensor> sensors_here() const;
    [[nodiscard]] std::vector<charts::ClimateStage> stages_here(core::units::Instant from,
                                                                core::units::Instant to) const;
    [[nodiscard]] std::optional<core::model::Sensor> marked_sensor() const;

    std::vector<core::model::Chamber> chambers_;
    std::vector<core::model::Sensor> sensors_;
    presenters::ChamberAirDesk* desk_;
    presenters::WatchedFolder* watched_;
    std::optional<core::units::Instant> window_end_; ///< absent: up to the newest reading
    qint64 wanted_chamber_ = 0;
    bool filling_ = false;
    QStackedWidget* stack_;
    QComboBox* chamber_;
    QComboBox* window_;
    QComboBox* quantity_;
    QComboBox* first_;
    QComboBox* second_;
    charts::ChartView* chart_;
    QLabel* band_words_;
    QVBoxLayout* air_findings_;
    Excursions* excursions_;
    Table* excursion_table_;
    Sensors* sensor_rows_;
    Table* sensor_table_;
    Loads* loads_;
    Table* load_table_;
    QLabel* load_words_;
    QLabel* rotation_words_;
    QVBoxLayout* load_findings_;
    QComboBox* joining_;
    Logs* logs_;
    Table* log_table_;
    QPushButton* take_back_;
    QPushButton* import_;
    QPushButton* folder_;
    look::Banner* folder_banner_;
    QTabWidget* tabs_;
};

} // namespace ui::pages
