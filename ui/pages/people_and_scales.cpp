#include "ui/pages/people_and_scales.h"

#include "ui/presenters/workspace.h"

#include <QCheckBox>
#include <QLineEdit>

namespace ui::pages {

PersonDialog::PersonDialog(presenters::Workspace& workspace, const core::model::Person& person,
                           QWidget* parent)
    : EntryDialog(workspace, "person_dialog",
                  person.id.is_assigned() ? tr("Change a person") : tr("Add a person"), parent),
      person_(person) {
    name_ =
        look::named(new QLineEdit(QString::fromStdString(person.name)), "person_name", tr("Name"));
    initials_ = look::named(new QLineEdit(QString::fromStdString(person.initials)),
                            "person_initials", tr("Initials"));
    initials_->setMaxLength(5);
    active_ =
        look::named(new QCheckBox(tr("&Works here now")), "person_active", tr("Works here now"));
    active_->setChecked(person.active);
    add_row(tr("&Name"), name_);
    add_row(tr("&Initials, as signed"), initials_);
    add_row({}, active_);
}

std::optional<core::actions::Command> PersonDialog::command() {
    person_.name = name_->text().trimmed().toStdString();
    person_.initials = initials_->text().trimmed().toStdString();
    person_.active = active_->isChecked();
    if (person_.name.empty() || person_.initials.empty()) {
        say(QStringLiteral("stop"), tr("Enter a name and the initials to sign with."));
        return {};
    }
    if (person_.id.is_assigned()) {
        return core::actions::ChangePerson{person_};
    }
    return core::actions::AddPerson{person_};
}

ScaleDialog::ScaleDialog(presenters::Workspace& workspace, const core::model::Instrument& scale,
                         QWidget* parent)
    : EntryDialog(workspace, "scale_dialog",
                  scale.id.is_assigned() ? tr("Change a scale") : tr("Add a scale"), parent),
      scale_(scale) {
    const auto& style = workspace.style();
    name_ =
        look::named(new QLineEdit(QString::fromStdString(scale.name)), "scale_name", tr("Name"));
    step_ = new edits::MassField("scale_step", tr("Smallest step it shows"), style);
    step_->set_required(true);
    step_->set_value(scale.scale_step);
    every_ = new edits::NumberField("scale_check", tr("Check it every so many days"), style);
    if (scale.check_every_days) {
        every_->set_value(static_cast<double>(*scale.check_every_days));
    }
    active_ = look::named(new QCheckBox(tr("In &use")), "scale_active", tr("In use"));
    active_->setChecked(scale.active);
    add_row(tr("&Name"), name_);
    add_row(tr("Smallest &step it shows"), step_);
    add_row(tr("&Check it every so many days"), every_);
    add_row({}, active_);
}

std::optional<core::actions::Command> ScaleDialog::command() {
    scale_.kind = core::model::InstrumentKind::scale;
    scale_.name = name_->text().trimmed().toStdString();
    scale_.scale_step = step_->value();
    scale_.check_every_days.reset();
    if (const auto days = every_->value()) {
        scale_.check_every_days = static_cast<int>(*days);
    }
    scale_.active = active_->isChecked();
    if (scale_.name.empty()) {
        say(QStringLiteral("stop"), tr("Give the scale a name, such as \"bench scale\"."));
        return {};
    }
    if (scale_.id.is_assigned()) {
        return core::actions::ChangeInstrument{scale_};
    }
    return core::actions::AddInstrument{scale_};
}

} // namespace ui::pages
