#include "ui/pages/chamber_dialogs.h"

#include "ui/presenters/workspace.h"
#include "ui/text/quantity_words.h"
#include "ui/text/unit_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <cmath>

namespace ui::pages {
namespace {

std::string entered(const QLineEdit* line) {
    return line->text().trimmed().toStdString();
}

} // namespace

ChamberDialog::ChamberDialog(presenters::Workspace& workspace, const core::model::Chamber& chamber,
                             QWidget* parent)
    : EntryDialog(workspace, "chamber_dialog",
                  chamber.id.is_assigned() ? tr("Change a chamber") : tr("Add a chamber"), parent),
      chamber_(chamber) {
    const auto& style = workspace.style();
    name_ = look::text_line("chamber_name", tr("Name"), QString::fromStdString(chamber.name));
    kind_ = new edits::ChoiceBox<core::model::ChamberKind>("chamber_kind", tr("What it is"));
    kind_->set_value(chamber.kind);
    low_temperature_ =
        new edits::TemperatureField("chamber_low_t", tr("Lowest temperature wanted"), style);
    low_temperature_->set_value(chamber.low_temperature);
    high_temperature_ =
        new edits::TemperatureField("chamber_high_t", tr("Highest temperature wanted"), style);
    high_temperature_->set_value(chamber.high_temperature);
    low_humidity_ = new edits::HumidityField("chamber_low_h", tr("Lowest humidity wanted"), style);
    low_humidity_->set_value(chamber.low_humidity);
    high_humidity_ =
        new edits::HumidityField("chamber_high_h", tr("Highest humidity wanted"), style);
    high_humidity_->set_value(chamber.high_humidity);
    capacity_ = new edits::MassField("chamber_capacity", tr("Water it can carry out a day"), style);
    capacity_->set_value(chamber.water_capacity_per_day);
    places_ = new edits::NumberField("chamber_places", tr("Places to hang"), style);
    if (chamber.places > 0) {
        places_->set_value(static_cast<double>(chamber.places));
    }
    notes_ = look::text_line("chamber_notes", tr("Notes"), QString::fromStdString(chamber.notes));
    add_row(tr("&Name"), name_);
    add_row(tr("&What it is"), kind_);
    add_row(tr("&Temperature from"), low_temperature_);
    add_row(tr("to"), high_temperature_);
    add_row(tr("&Humidity from"), low_humidity_);
    add_row(tr("to"), high_humidity_);
    add_row(tr("Water it can carry &out a day"), capacity_);
    add_row(tr("&Places to hang"), places_);
    add_row(tr("N&otes"), notes_);
}

std::optional<core::actions::Command> ChamberDialog::command() {
    chamber_.name = entered(name_);
    chamber_.kind = kind_->value();
    chamber_.low_temperature = low_temperature_->value();
    chamber_.high_temperature = high_temperature_->value();
    chamber_.low_humidity = low_humidity_->value();
    chamber_.high_humidity = high_humidity_->value();
    chamber_.water_capacity_per_day = capacity_->value();
    chamber_.places = static_cast<int>(std::lround(places_->value().value_or(0)));
    chamber_.notes = entered(notes_);
    if (chamber_.name.empty()) {
        say(QStringLiteral("stop"), tr("Give the chamber a name, such as \"Cellar\"."));
        return {};
    }
    if (chamber_.low_temperature && chamber_.high_temperature &&
        *chamber_.low_temperature > *chamber_.high_temperature) {
        high_temperature_->show_fault(tr("This is below the lowest temperature."));
        return {};
    }
    if (chamber_.low_humidity && chamber_.high_humidity &&
        *chamber_.low_humidity > *chamber_.high_humidity) {
        high_humidity_->show_fault(tr("This is below the lowest humidity."));
        return {};
    }
    if (chamber_.id.is_assigned()) {
        return core::actions::ChangeChamber{chamber_};
    }
    return core::actions::AddChamber{chamber_};
}

SensorDialog::SensorDialog(presenters::Workspace& workspace, const core::model::Sensor& sensor,
                           QWidget* parent)
    : EntryDialog(workspace, "sensor_dialog",
                  sensor.id.is_assigned() ? tr("Change a sensor") : tr("Add a sensor"), parent),
      sensor_(sensor) {
    const auto& style = workspace.style();
    name_ = look::text_line("sensor_name", tr("Name"), QString::fromStdString(sensor.name));
    place_ =
        look::text_line("sensor_place", tr("Where it hangs"), QString::fromStdString(sensor.place));
    temperature_offset_ =
        new edits::NumberField("sensor_offset_t", tr("Added to its temperature, kelvin"), style);
    if (sensor.temperature_offset) {
        temperature_offset_->set_value(sensor.temperature_offset->in_kelvins());
    }
    temperature_offset_->set_unit(QStringLiteral("K"));
    humidity_offset_ =
        new edits::NumberField("sensor_offset_h", tr("Added to its humidity, points"), style);
    humidity_offset_->set_unit(tr("points"));
    if (sensor.humidity_offset) {
        humidity_offset_->set_value(sensor.humidity_offset->in_percent());
    }
    active_ = look::named(new QCheckBox(tr("In &use")), "sensor_active", tr("In use"));
    active_->setChecked(sensor.active);
    add_row(tr("&Name"), name_);
    add_row(tr("&Where it hangs"), place_);
    add_row(tr("Added to its &temperature"), temperature_offset_);
    add_row(tr("Added to its &humidity"), humidity_offset_);
    add_row({}, active_);
    below()->addWidget(look::caption(
        tr("Readings are kept as the sensor gave them; what is added here only changes what is "
           "shown and judged.")));
}

std::optional<core::actions::Command> SensorDialog::command() {
    sensor_.name = entered(name_);
    sensor_.place = entered(place_);
    sensor_.temperature_offset.reset();
    if (const auto kelvins = temperature_offset_->value()) {
        sensor_.temperature_offset = core::units::TemperatureStep::kelvins(*kelvins);
    }
    sensor_.humidity_offset.reset();
    if (const auto points = humidity_offset_->value()) {
        sensor_.humidity_offset = core::units::RelativeHumidity::percent(*points);
    }
    sensor_.active = active_->isChecked();
    if (sensor_.name.empty()) {
        say(QStringLiteral("stop"), tr("Give the sensor a name, such as \"by the door\"."));
        return {};
    }
    if (sensor_.id.is_assigned()) {
        return core::actions::ChangeSensor{sensor_};
    }
    return core::actions::AddSensor{sensor_};
}

SensorCheckDialog::SensorCheckDialog(presenters::Workspace& workspace,
                                     const core::model::Sensor& sensor, QWidget* parent)
    : EntryDialog(workspace, "sensor_check_dialog",
                  tr("Check %1").arg(QString::fromStdString(sensor.name)), parent),
      sensor_(sensor) {
    const auto& style = workspace.style();
    kind_ = look::named(new QComboBox, "check_kind", tr("Checked against"));
    kind_->addItem(tr("Salt slurry in a closed bag, 75 % humidity"));
    kind_->addItem(tr("Ice water, 0 °C"));
    day_ = new edits::DayField("check_day", tr("Day of the check"), style, workspace.today());
    day_->set_required(true);
    day_->set_value(workspace.today());
    found_ = new edits::NumberField("check_found", tr("What the sensor said"), style);
    found_->set_required(true);
    action_ = look::text_line("check_action", tr("What you did about it"));
    suggestion_ = look::paragraph({});
    suggestion_->setObjectName(QStringLiteral("check_suggestion"));
    add_row(tr("Checked &against"), kind_);
    add_row(tr("&Day"), day_);
    add_row(tr("What the sensor &said"), found_);
    add_row(tr("What you did about &it"), action_);
    below()->addWidget(suggestion_);
    below()->addWidget(look::caption(
        tr("Salt slurry: table salt just wet, in a closed bag with the sensor for twelve hours or "
           "more. Common practice: every six months; ice at least once a year.")));
    connect(kind_, &QComboBox::currentIndexChanged, this, [this] { edited(); });
    SensorCheckDialog::edited();
}

bool SensorCheckDialog::is_ice() const {
    return kind_->currentIndex() == 1;
}

void SensorCheckDialog::edited() {
    found_->set_unit(is_ice() ? QStringLiteral("\u00B0C") : text::humidity_unit_name());
    const auto found = found_->value();
    if (!found) {
        suggestion_->setText({});
        return;
    }
    const double off = (is_ice() ? 0.0 : 75.0) - *found;
    const auto number = text::number_words(off, workspace().style(), 1);
    suggestion_->setText(std::fabs(off) < 0.05 ? tr("It is right.")
                         : is_ice() ? tr("It is off: add %1 K to its temperature.").arg(number)
                                    : tr("It is off: add %1 points to its humidity.").arg(number));
}

std::optional<core::model::InstrumentId> SensorCheckDialog::instrument() {
    const auto kind = is_ice() ? core::model::InstrumentKind::thermometer
                               : core::model::InstrumentKind::hygrometer;
    for (const auto& one : workspace().rows(workspace().book().instruments())) {
        if (one.sensor == sensor_.id && one.kind == kind) {
            return one.id;
        }
    }
    core::model::Instrument added;
    added.kind = kind;
    added.name = sensor_.name;
    added.sensor = sensor_.id;
    const auto made = workspace().perform(core::actions::AddInstrument{added});
    return made ? std::optional(
                      made->id<core::model::InstrumentId>(core::model::EntryKind::instrument))
                : std::nullopt;
}

std::optional<core::actions::Command> SensorCheckDialog::command() {
    const auto found = found_->value();
    const auto day = day_->value();
    if (!found || !day) {
        return {};
    }
    const auto kept_under = instrument();
    if (!kept_under) {
        return {};
    }
    core::model::CalibrationCheck check{.instrument = *kept_under,
                                        .at = workspace().style().zone.instant_at(*day, 12 * 60),
                                        .against = is_ice() ? "ice water" : "salt slurry 75 %",
                                        .expected = is_ice() ? 0.0 : 75.0,
                                        .found = *found,
                                        .action = entered(action_)};
    if (const auto who = workspace().who()) {
        check.by = *who;
    }
    return core::actions::AddCheck{check};
}

} // namespace ui::pages
