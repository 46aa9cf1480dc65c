#pragma once

#include "ui/charts/loss_chart.h"
#include "ui/models/rows_model.h"
#include "ui/pages/page.h"
#include "ui/pages/table.h"
#include "ui/presenters/compare.h"
#include "ui/presenters/piece_line.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QMenu;
class QPushButton;
class QTabWidget;
class QVBoxLayout;

namespace ui::look {
class HeadRow;
}

namespace ui::charts {
class ChartView;
}

namespace ui::pages {

class PhotoStrip;

/// One piece: its curve, what the numbers say, its weighings, events, notes and family.
class PiecePage : public Page {
    Q_OBJECT
  public:
    PiecePage(presenters::Workspace& workspace, QWidget* parent);
    void arrive(const Place& place) override;
    void refresh() override;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    struct WeighingRow {
        core::model::Weighing weighing;
        std::optional<core::units::MassShare> loss; ///< of the target's reference
        QString fate;                               ///< "corrected", "taken back" or empty
    };
    using Weighings = models::RowsModel<WeighingRow>;
    using Events = models::RowsModel<core::model::PieceEvent>;
    using Notes = models::RowsModel<core::model::Note>;
    using Family = models::RowsModel<core::model::Piece>;

    void build_head(look::HeadRow* head);
    void add_troubles(QMenu* menu);
    void chamber_failed(const presenters::PieceLine& line);
    QWidget* build_chart();
    QWidget* build_facts();
    QWidget* build_tabs();
    QWidget* build_weighings();
    QWidget* build_events();
    QWidget* build_notes();
    [[nodiscard]] std::vector<Weighings::Column> weighing_columns() const;
    [[nodiscard]] std::vector<Events::Column> event_columns() const;
    [[nodiscard]] std::vector<Notes::Column> note_columns() const;
    // The chart and what is on it: piece_page_chart.cpp.
    void fill_compare();
    void fill_measures();
    void compare_with(presenters::CompareWith with);
    [[nodiscard]] presenters::CompareWith compared_with() const;
    void compare_activated();
    void compare_again();
    void read_company();
    [[nodiscard]] std::optional<core::model::ReferenceWeight> counted_from() const;
    void show_chart();
    void show_chart_note(const QStringList& without);
    [[nodiscard]] std::vector<charts::ChartStage> chart_stages() const;
    [[nodiscard]] bool room_for_air() const;
    void save_chart();
    void show_facts();
    void show_findings();
    void show_tables();
    void forecast_arrived();
    void weigh();
    void amend(qint64 weighing);
    void withdraw_weighing();
    void withdraw_event();
    void event_dialog(core::model::EventKind kind);
    void add_note();
    void open_note(qint64 note);
    [[nodiscard]] core::model::PieceId piece_id() const {
        return core::model::PieceId::from_row(piece_);
    }

    qint64 piece_ = 0;
    std::optional<presenters::PieceLine> line_;
    QLabel* title_;
    QLabel* subtitle_;
    QPushButton* event_button_;
    QPushButton* weigh_;
    QPushButton* review_;
    QPushButton* change_;
    charts::ChartView* chart_;
    bool air_shown_ = false; ///< the strips below the curve
    std::optional<QVector<charts::Strip>> air_;
    QComboBox* measure_;
    QComboBox* axis_;
    QComboBox* compare_;
    QCheckBox* earlier_;
    QLabel* chart_note_;
    std::vector<core::model::PieceId> chosen_; ///< by tick, to be drawn with it
    presenters::Company company_;
    std::vector<presenters::PieceLine> earlier_lines_;
    QLabel* big_loss_;
    QLabel* loss_words_;
    QLabel* target_words_;
    QLabel* ready_words_;
    QLabel* learnt_words_;
    QLabel* other_losses_;
    QVBoxLayout* findings_;
    QTabWidget* tabs_;
    Weighings* weighings_;
    Events* events_;
    Notes* notes_;
    PhotoStrip* photos_;
    Family* family_;
    Table* weighing_table_;
    Table* event_table_;
};

} // namespace ui::pages
