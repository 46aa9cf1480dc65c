#pragma once

#include "ui/edits/quantity_fields.h"
#include "ui/models/rows_model.h"
#include "ui/pages/entry_dialog.h"
#include "ui/presenters/warm_finishing.h"

class QComboBox;
class QLabel;

namespace ui::pages {

class Table;

/// Finishing in a dehydrator or a low oven: the hours it takes, the hours in which something could
/// grow, and the cautions, all while typing. Keeping it writes a note on the piece.
class WarmDialog : public EntryDialog {
    Q_OBJECT
  public:
    WarmDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
               QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    void edited() override;

  private:
    using Rows = models::RowsModel<presenters::WarmExposureLine>;
    void build_fields();
    void build_answer();
    void show_findings(const core::model::Findings& findings);
    [[nodiscard]] std::optional<presenters::WarmEntry> entered() const;

    core::model::PieceId piece_;
    core::model::BatchId batch_;
    presenters::WarmStart start_;
    std::optional<core::doneness::WarmFinish> finish_;
    edits::TemperatureField* air_ = nullptr;
    edits::HumidityField* humidity_ = nullptr;
    edits::ShareField* wanted_ = nullptr;
    edits::ShareField* water_ = nullptr;
    edits::LengthField* thickness_ = nullptr;
    QComboBox* how_far_ = nullptr;
    QLabel* hours_ = nullptr;
    Rows* rows_ = nullptr;
    Table* table_ = nullptr;
    QVBoxLayout* findings_ = nullptr;
};

} // namespace ui::pages
