// The piece page's chart: what is drawn on it, in which terms, and with which other pieces.
#include "core/services/piece_air.h"
#include "ui/charts/chart_view.h"
#include "ui/look/pieces.h"
#include "ui/pages/compare_dialog.h"
#include "ui/pages/piece_curves.h"
#include "ui/pages/piece_page.h"
#include "ui/presenters/workspace.h"
#include "ui/text/data_name.h"
#include "ui/text/model_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QSignalBlocker>

namespace ui::pages {

using core::model::ReferenceWeight;
using presenters::CompareWith;

namespace {

constexpr int as_weight = -1; ///< data of the measure "net weight"

} // namespace

void PiecePage::fill_compare() {
    compare_->addItem(tr("this piece alone"), static_cast<int>(CompareWith::alone));
    compare_->addItem(tr("with its batch"), static_cast<int>(CompareWith::batch));
    compare_->addItem(tr("with its chamber"), static_cast<int>(CompareWith::chamber));
    compare_->addItem(tr("with its product"), static_cast<int>(CompareWith::product));
    compare_->addItem(tr("with chosen pieces…"), static_cast<int>(CompareWith::chosen));
}

CompareWith PiecePage::compared_with() const {
    return static_cast<CompareWith>(compare_->currentData().toInt());
}

void PiecePage::compare_with(CompareWith with) {
    compare_->setCurrentIndex(compare_->findData(static_cast<int>(with)));
}

void PiecePage::compare_activated() {
    if (!line_) {
        return;
    }
    if (compared_with() == CompareWith::chosen) {
        CompareDialog dialog(workspace_, line_->piece().id, chosen_, this);
        if (dialog.exec() == QDialog::Accepted) {
            chosen_ = dialog.chosen();
        } else if (chosen_.empty()) {
            compare_with(CompareWith::alone);
        }
    }
    compare_again();
}

void PiecePage::compare_again() {
    if (line_) {
        read_company();
        forecast_arrived();
    }
}

/// Reads the other pieces of the chart and asks for all their forecasts.
void PiecePage::read_company() {
    const auto& book = workspace_.book();
    company_ = presenters::company_of(book, line_->piece(), compared_with(), chosen_);
    const bool any = presenters::has_earlier(book, line_->piece());
    earlier_->setEnabled(any);
    earlier_->setToolTip(any ? tr("Your own finished pieces of the same product and shape, as if "
                                  "hung on the same day")
                             : tr("No piece of the same product and shape was finished yet."));
    earlier_lines_ = any && earlier_->isChecked() ? presenters::earlier_of(book, line_->piece())
                                                  : std::vector<presenters::PieceLine>{};
    std::vector<presenters::PieceRecord> records;
    records.push_back({line_->history, line_->kin, {}});
    for (const auto& line : company_.lines) {
        if (line.piece().state == core::model::PieceState::drying) {
            records.push_back({line.history, line.kin, {}});
        }
    }
    workspace_.ask_forecasts(std::move(records));
}

/// One measure for each weight a loss can be counted from, the target's first, then the weight.
void PiecePage::fill_measures() {
    const QVariant before = measure_->currentData();
    const QSignalBlocker quiet(measure_);
    measure_->clear();
    const auto add = [&](ReferenceWeight reference) {
        const int number = static_cast<int>(reference);
        if (measure_->findData(number) < 0) {
            measure_->addItem(tr("loss from the %1").arg(text::words(reference)), number);
        }
    };
    if (line_->towards_target) {
        add(line_->towards_target->reference);
    }
    for (const auto& loss : line_->losses) {
        add(loss.reference);
    }
    measure_->addItem(tr("net weight"), as_weight);
    measure_->setCurrentIndex(std::max(0, measure_->findData(before)));
}

/// Which weight losses count from, also where the weight is drawn (for the target and the band).
std::optional<ReferenceWeight> PiecePage::counted_from() const {
    const int number = measure_->currentData().toInt();
    if (measure_->currentIndex() >= 0 && number != as_weight) {
        return static_cast<ReferenceWeight>(number);
    }
    if (line_->towards_target) {
        return line_->towards_target->reference;
    }
    return line_->losses.empty() ? std::nullopt : std::optional(line_->losses.back().reference);
}

void PiecePage::show_chart() {
    if (!line_) {
        return;
    }
    charts::LossChartInput input;
    input.counted_from = counted_from();
    QStringList without;
    auto own = input.counted_from ? curve_of(*line_, *input.counted_from) : std::nullopt;
    input.curves.push_back(own ? std::move(*own) : bare_curve_of(*line_));
    if (input.counted_from) {
        without = add_company(input, company_.lines, earlier_lines_, *input.counted_from);
    }
    const QString code = input.curves.front().name;
    input.title = company_.lines.empty() ? tr("Loss curve of %1").arg(code)
                                         : tr("Loss curves of %1 and others").arg(code);
    for (const auto& event : line_->history.events) {
        input.events.push_back({event.at, text::words(event.kind)});
    }
    input.stages = chart_stages();
    air_shown_ = room_for_air();
    if (air_shown_) {
        if (!air_) { // read once for all that is drawn until the next refresh
            air_ = charts::air_strips(core::services::PieceAir(workspace_.book(), workspace_.now())
                                          .around(line_->history),
                                      workspace_.style());
        }
        input.climate = *air_;
    }
    const charts::LossChartOptions options{.weight = measure_->currentData().toInt() == as_weight,
                                           .time = axis_->currentIndex() == 1
                                                       ? charts::TimeAxis::elapsed
                                                       : charts::TimeAxis::calendar};
    input.now = workspace_.now();
    chart_->show_spec(charts::loss_chart(input, options, workspace_.style()));
    show_chart_note(without);
}

/// What of the comparison is not on the chart, and why.
void PiecePage::show_chart_note(const QStringList& without) {
    QStringList parts;
    if (compared_with() != CompareWith::alone && company_.lines.empty()) {
        parts << tr("No other such piece was hung and weighed since.");
    }
    if (company_.left_out > 0) {
        parts << tr("Not drawn, as one chart cannot tell more apart: %1 that hung before.")
                     .arg(company_.left_out);
    }
    if (!without.isEmpty()) {
        parts << tr("Not drawn, as this weight of theirs is not known: %1.")
                     .arg(without.join(QStringLiteral(", ")));
    }
    chart_note_->setText(parts.join(QLatin1Char(' ')));
    chart_note_->setVisible(!parts.isEmpty());
}

std::vector<charts::ChartStage> PiecePage::chart_stages() const {
    std::vector<charts::ChartStage> stages;
    for (const auto& stage : workspace_.rows(workspace_.book().stages(line_->piece().batch))) {
        // What was over before it hung lies left of the curve and would only squeeze it.
        const bool before = stage.ended_at && line_->hung_at && *stage.ended_at <= *line_->hung_at;
        if (stage.started_at && !before) {
            stages.push_back({*stage.started_at, stage.ended_at.value_or(workspace_.now()),
                              text::data_name(stage.what.name)});
        }
    }
    return stages;
}

bool PiecePage::room_for_air() const {
    // Below that the strips would leave the curve too low to read.
    return chart_->height() >= look::lines(this, 20);
}

void PiecePage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    if (line_ && room_for_air() != air_shown_) {
        show_chart();
    }
}

void PiecePage::save_chart() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the chart"),
                                                      title_->text() + QStringLiteral(".pdf"),
                                                      tr("PDF (*.pdf);;SVG (*.svg);;PNG (*.png)"));
    if (path.isEmpty()) {
        return;
    }
    Q_EMIT said(chart_->save(path)
                    ? tr("The chart is in %1.").arg(path)
                    : tr("%1 could not be written. Choose another place.").arg(path));
}

} // namespace ui::pages
