#pragma once

#include "ui/edits/quantity_fields.h"
#include "ui/models/rows_model.h"
#include "ui/presenters/what_if.h"

#include <QDialog>
#include <QTimer>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ui::look {
class Banner;
}

namespace ui::pages {

class Table;

/// "What if the chamber were drier, warmer, or the target lower?": the forecast as it is beside
/// the changed one, while typing. Nothing is kept; nothing is judged.
class WhatIfDialog : public QDialog {
    Q_OBJECT
  public:
    WhatIfDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                 QWidget* parent);
    [[nodiscard]] presenters::WhatIf& what_if() { return what_if_; }

  private:
    using Rows = models::RowsModel<presenters::WhatIfLine>;
    void build_inside(const presenters::PieceLine& line, QVBoxLayout* column);
    void build_fields(QVBoxLayout* column);
    void build_comparison(QVBoxLayout* column);
    void edited();
    void ask();
    void show_answer();
    void show_air_words();
    /// Absent while a field cannot be read.
    [[nodiscard]] std::optional<presenters::WhatIfChange> entered() const;

    presenters::Workspace& workspace_;
    presenters::WhatIf what_if_;
    /// As the fields were filled: a field that still says this changes nothing.
    std::optional<core::units::RelativeHumidity> humidity_now_;
    std::optional<core::units::Temperature> temperature_now_;
    std::optional<core::units::MassShare> target_now_;
    presenters::WhatIfChange asked_;
    QTimer pause_; ///< of the typing
    edits::HumidityField* humidity_ = nullptr;
    edits::TemperatureField* temperature_ = nullptr;
    edits::ShareField* target_ = nullptr;
    QPushButton* take_ = nullptr;
    QLabel* power_ = nullptr;
    QLabel* state_ = nullptr;
    QLabel* growth_ = nullptr;
    look::Banner* caution_ = nullptr;
    Rows* rows_ = nullptr;
    Table* table_ = nullptr;
};

} // namespace ui::pages
