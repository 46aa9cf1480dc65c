#include "ui/pages/warm_dialog.h"

#include "ui/look/fit.h"
#include "ui/pages/table.h"
#include "ui/presenters/workspace.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <cmath>

namespace ui::pages {
namespace {

constexpr auto usual_air = core::units::Temperature::celsius(40); // of a dehydrator's low setting
constexpr auto usual_humidity = core::units::RelativeHumidity::percent(30);

} // namespace

WarmDialog::WarmDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                       QWidget* parent)
    : EntryDialog(workspace, "warm_dialog",
                  tr("%1: finish in warm air").arg(QString::fromStdString(line.piece().code)),
                  parent),
      piece_(line.piece().id), batch_(line.piece().batch),
      start_(presenters::warm_start(workspace.book(), line, workspace.now())) {
    form()->addRow(look::caption(
        tr("A dehydrator or a low oven takes the last water out in hours. It also spends those "
           "hours where microbes grow. What stands here is reckoned from the piece's own pace and "
           "published figures; it judges nothing. Follow your own code.")));
    build_fields();
    build_answer();
    set_keep_words(tr("&Record in the book"));
    look::resize_in_lines(this, 38, 38);
    WarmDialog::edited();
}

void WarmDialog::build_fields() {
    const auto& style = workspace().style();
    air_ = new edits::TemperatureField("warm_air", tr("Air of the device"), style);
    air_->set_required(true);
    air_->set_value(usual_air);
    humidity_ = new edits::HumidityField("warm_humidity", tr("Its humidity"), style);
    humidity_->set_required(true);
    humidity_->set_value(usual_humidity);
    wanted_ = new edits::ShareField("warm_wanted", tr("Loss wanted"), style);
    wanted_->set_required(true);
    wanted_->set_value(start_.wanted);
    water_ = new edits::ShareField("warm_water", tr("Water of the piece now"), style);
    water_->set_required(true);
    if (start_.water_now) { // an estimate: more digits would pretend to know
        water_->set_value(
            core::units::MassShare::percent(std::round(start_.water_now->in_percent() * 10) / 10));
    }
    thickness_ = new edits::LengthField("warm_thickness", tr("Thickness now"), style);
    thickness_->set_required(true);
    thickness_->set_value(start_.thickness);
    how_far_ = look::named(new QComboBox, "warm_how_far", tr("How far it is"));
    how_far_->addItems({tr("planned"), tr("begun now"), tr("done")});
    add_row(tr("&Air of the device"), air_);
    add_row(tr("Its &humidity, a guess if not measured"), humidity_);
    add_row(tr("&Loss wanted"), wanted_);
    add_row(tr("&Water of the piece now"), water_);
    add_row(tr("&Thickness now"), thickness_);
    add_row(tr("How &far it is"), how_far_);
}

void WarmDialog::build_answer() {
    below()->addWidget(look::section_title(tr("How long")));
    hours_ = look::paragraph({});
    hours_->setObjectName(QStringLiteral("warm_hours"));
    below()->addWidget(hours_);
    findings_ = new QVBoxLayout;
    findings_->setSpacing(look::lines(this, 0.3));
    below()->addLayout(findings_);
    below()->addWidget(look::section_title(tr("Hours inside growth ranges")));
    rows_ = new Rows(
        {{tr("Organism"), [](const auto& l) { return l.name; }, {}, false, {}},
         {tr("In its range"), [](const auto& l) { return l.hours; }, {}, false, {}},
         {tr("Beside it"), [](const auto& l) { return l.remark; }, {}, false, {}}},
        [](const auto&) { return qint64(0); }, this);
    table_ = new Table("warm_exposure", tr("Hours inside growth ranges"));
    table_->show_model(rows_);
    table_->wrap_rows(true);
    table_->grow_with_rows(true);
    below()->addWidget(table_);
}

std::optional<presenters::WarmEntry> WarmDialog::entered() const {
    const auto air = air_->value();
    const auto humidity = humidity_->value();
    const auto wanted = wanted_->value();
    const auto water = water_->value();
    const auto thickness = thickness_->value();
    if (!air || !humidity || !wanted || !water || !thickness) {
        return {};
    }
    return presenters::WarmEntry{*air, *humidity, *wanted, *water, *thickness};
}

void WarmDialog::edited() {
    if (rows_ == nullptr) {
        return;
    }
    const auto entry = entered();
    finish_ = entry ? presenters::warm_answer(start_, *entry) : std::nullopt;
    const auto& style = workspace().style();
    if (!start_.loss_now) {
        hours_->setText(tr("No loss is known yet: weigh the piece first, so that there is a start "
                           "to count from."));
    } else if (!entry) {
        hours_->setText(tr("Fill in what is empty above, and the hours stand here."));
    } else {
        const QString pace =
            start_.rate_per_day && start_.levels_off
                ? tr("Reckoned from the pace it dries at where it hangs.")
                : tr("Reckoned from published figures: its own pace is not known well enough.");
        hours_->setText(presenters::warm_hours_words(*finish_, style) + QLatin1Char(' ') + pace);
    }
    const auto lines = finish_ ? presenters::warm_exposure(*finish_, style)
                               : QVector<presenters::WarmExposureLine>{};
    rows_->set_rows({lines.begin(), lines.end()});
    show_findings(finish_ ? finish_->findings : core::model::Findings{});
}

void WarmDialog::show_findings(const core::model::Findings& findings) {
    while (auto* item = findings_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    int number = 0;
    for (const auto& finding : findings) {
        auto* banner =
            new look::Banner(("warm_finding_" + QByteArray::number(number++)).constData());
        banner->say(text::severity_look(finding.severity),
                    text::finding_with_source(finding, workspace().style()));
        findings_->addWidget(banner);
    }
}

std::optional<core::actions::Command> WarmDialog::command() {
    const auto entry = entered();
    if (!entry || !finish_) {
        say(QStringLiteral("stop"), tr("There is no answer to record yet."));
        return {};
    }
    for (const auto& finding : finish_->findings) {
        if (finding.severity == core::model::Severity::stop) {
            say(QStringLiteral("stop"), text::finding_words(finding, workspace().style()));
            return {};
        }
    }
    core::model::Note note{.batch = batch_,
                           .piece = piece_,
                           .at = workspace().now(),
                           .kind = core::model::NoteKind::action};
    note.text = presenters::warm_record(start_, *entry, *finish_, how_far_->currentText(),
                                        workspace().style())
                    .toStdString();
    return core::actions::AddNote{note};
}

} // namespace ui::pages
