#include "ui/pages/preferences_page.h"

#include "ui/look/pieces.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/people_and_scales.h"
#include "ui/presenters/limit_choices.h"
#include "ui/presenters/workspace.h"
#include "ui/print/printable.h"
#include "ui/text/date_words.h"
#include "ui/text/languages.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTimeZone>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

using core::model::Instrument;
using core::model::InstrumentKind;
using core::model::Person;

QComboBox* box(const char* object_name, const QString& name,
               const QVector<QPair<QString, QVariant>>& choices) {
    auto* made = look::named(new QComboBox, object_name, name);
    made->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    made->setMinimumContentsLength(16);
    for (const auto& [text, value] : choices) {
        made->addItem(text, value);
    }
    return made;
}

void choose_data(QComboBox* box, const QVariant& value) {
    box->setCurrentIndex(std::max(0, box->findData(value)));
}

} // namespace

PreferencesPage::PreferencesPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent) {
    auto* body = frame_page(this, tr("Preferences")).body;
    build_desk(body);
    build_people(body);
    build_scales(body);
    body->addStretch(1);
}

void PreferencesPage::build_desk(QVBoxLayout* body) {
    body->addWidget(look::section_title(tr("This desk")));
    body->addWidget(look::caption(tr("Kept on this computer, not in the book. Every field still "
                                     "accepts any unit.")));
    using namespace ui::text;
    mass_ = box("pref_mass", tr("Weights"),
                {{tr("grams"), int(MassStyle::grams)},
                 {tr("grams and kilograms"), int(MassStyle::kilograms)},
                 {tr("ounces"), int(MassStyle::ounces)},
                 {tr("pounds and ounces"), int(MassStyle::pounds)}});
    temperature_ = box("pref_temperature", tr("Temperatures"),
                       {{tr("degrees Celsius"), int(TemperatureStyle::celsius)},
                        {tr("degrees Fahrenheit"), int(TemperatureStyle::fahrenheit)}});
    length_ = box("pref_length", tr("Thickness"),
                  {{tr("millimetres"), int(LengthStyle::millimetres)},
                   {tr("inches"), int(LengthStyle::inches)}});
    volume_ = box("pref_volume", tr("Liquids"),
                  {{tr("millilitres"), int(VolumeStyle::millilitres)},
                   {tr("US fluid ounces"), int(VolumeStyle::fluid_ounces)}});
    QVector<QPair<QString, QVariant>> languages = {{tr("as the computer"), QString()}};
    for (const auto& choice : language_choices()) {
        languages.push_back({choice.name, choice.tag});
    }
    if (const QString own = workspace_.preferences().language;
        std::none_of(languages.begin(), languages.end(),
                     [&](const auto& choice) { return choice.second == own; })) {
        languages.push_back({own, own}); // set by hand: numbers and dates follow it
    }
    language_ = box("pref_language", tr("Language"), languages);
    QVector<QPair<QString, QVariant>> zones = {{tr("as the computer"), QString()}};
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds()) {
        // IANA "Area/City" names and UTC; the rest are aliases that only lengthen the list.
        if (id.contains('/') ? !id.startsWith("Etc/") : id == "UTC") {
            zones.push_back({QString::fromLatin1(id), QString::fromLatin1(id)});
        }
    }
    zone_ = box("pref_zone", tr("Time zone"), zones);
    QVector<QPair<QString, QVariant>> limits = {{tr("none chosen"), QString()}};
    for (const auto& choice : presenters::limit_choices()) {
        limits.push_back({choice.name, choice.id});
    }
    limits_ = box("pref_limits", tr("Limits to check against"), limits);
    using presenters::ThemeChoice;
    theme_ = box("pref_theme", tr("Colours"),
                 {{tr("as the desktop"), int(ThemeChoice::system)},
                  {tr("light"), int(ThemeChoice::light)},
                  {tr("dark"), int(ThemeChoice::dark)}});
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    const std::pair<QString, QComboBox*> rows[] = {
        {tr("&Weights"), mass_},
        {tr("&Temperatures"), temperature_},
        {tr("T&hickness"), length_},
        {tr("Li&quids"), volume_},
        {tr("Lan&guage"), language_},
        {tr("Time &zone"), zone_},
        {tr("&Limits to check against"), limits_},
        {tr("&Colours"), theme_},
    };
    for (const auto& [label, field] : rows) {
        look::add_field(form, label, field);
        connect(field, &QComboBox::currentIndexChanged, this, &PreferencesPage::choose);
    }
    body->addLayout(form);
    sample_ = look::caption({});
    sample_->setObjectName(QStringLiteral("pref_sample"));
    body->addWidget(sample_);
}

void PreferencesPage::build_people(QVBoxLayout* body) {
    body->addSpacing(look::lines(this, 0.5));
    auto* head = new look::HeadRow(look::lines(this, 0.4));
    head->addWidget(look::section_title(tr("People")));
    auto* add = look::button("add_person", tr("Add a &person…"));
    head->addWidget(add);
    body->addLayout(head);
    body->addWidget(look::caption(tr("Who signs decisions and corrections.")));
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    person_ = box("pref_person", tr("Who works at this desk"), {});
    look::add_field(form, tr("Who works at this &desk"), person_);
    body->addLayout(form);
    connect(person_, &QComboBox::currentIndexChanged, this, &PreferencesPage::choose);
    people_ = new People(
        {{tr("Initials"),
          [](const Person& p) { return QString::fromStdString(p.initials); },
          {},
          false,
          {}},
         {tr("Name"),
          [](const Person& p) { return QString::fromStdString(p.name); },
          {},
          false,
          {}},
         {tr("Works here"),
          [](const Person& p) { return p.active ? tr("yes") : tr("no"); },
          {},
          false,
          {}}},
        [](const Person& p) { return p.id.row(); }, this);
    people_table_ = new Table("people_table", tr("People"));
    people_table_->show_model(people_);
    people_table_->grow_with_rows(true);
    body->addWidget(people_table_);
    connect(add, &QPushButton::clicked, this, [this] { open_person(0); });
    connect(people_table_, &Table::opened, this, &PreferencesPage::open_person);
}

void PreferencesPage::build_scales(QVBoxLayout* body) {
    body->addSpacing(look::lines(this, 0.5));
    auto* head = new look::HeadRow(look::lines(this, 0.4));
    head->addWidget(look::section_title(tr("Scales")));
    auto* add = look::button("add_scale", tr("Add a &scale…"));
    head->addWidget(add);
    body->addLayout(head);
    body->addWidget(look::caption(tr("The step is the smallest change the display shows. It "
                                     "decides which doses the scale can weigh and how sure a "
                                     "curve is.")));
    scales_ = new Scales(
        scale_columns(), [](const Instrument& i) { return i.id.row(); }, this);
    scale_table_ = new Table("scale_table", tr("Scales"));
    scale_table_->show_model(scales_);
    scale_table_->grow_with_rows(true);
    body->addWidget(scale_table_);
    connect(add, &QPushButton::clicked, this, [this] { open_scale(0); });
    connect(scale_table_, &Table::opened, this, &PreferencesPage::open_scale);
}

std::vector<PreferencesPage::Scales::Column> PreferencesPage::scale_columns() const {
    const auto style = workspace_.style();
    return {
        {tr("Scale"),
         [](const Instrument& i) { return QString::fromStdString(i.name); },
         {},
         false,
         {}},
        {tr("Step"),
         [style](const Instrument& i) {
             return i.scale_step ? text::words(*i.scale_step, style, i.scale_step)
                                 : text::unknown();
         },
         {},
         true,
         {}},
        {tr("Check every"),
         [](const Instrument& i) {
             return i.check_every_days ? tr("%n day(s)", nullptr, *i.check_every_days)
                                       : text::unknown();
         },
         {},
         false,
         {}},
        {tr("In use"),
         [](const Instrument& i) { return i.active ? tr("yes") : tr("no"); },
         {},
         false,
         {}},
    };
}

std::vector<print::Printable> PreferencesPage::printables() {
    return print::calibration_printables(workspace_.book(), workspace_.today(), workspace_.style());
}

void PreferencesPage::refresh() {
    const auto& now = workspace_.preferences();
    filling_ = true;
    choose_data(mass_, int(now.mass));
    choose_data(temperature_, int(now.temperature));
    choose_data(length_, int(now.length));
    choose_data(volume_, int(now.volume));
    choose_data(language_, now.language);
    choose_data(zone_, now.time_zone);
    choose_data(limits_, now.limit_set);
    choose_data(theme_, int(now.theme));
    show_people();
    auto instruments = workspace_.rows(workspace_.book().instruments());
    std::erase_if(instruments, [](const Instrument& i) { return i.kind != InstrumentKind::scale; });
    scales_->set_columns(scale_columns());
    scales_->set_rows(std::move(instruments));
    show_sample();
    filling_ = false;
}

void PreferencesPage::show_people() {
    auto people = workspace_.rows(workspace_.book().people());
    person_->clear();
    person_->addItem(tr("nobody chosen"), QString());
    for (const auto& person : people) {
        if (person.active) {
            const QString initials = QString::fromStdString(person.initials);
            person_->addItem(tr("%1 (%2)").arg(QString::fromStdString(person.name), initials),
                             initials);
        }
    }
    choose_data(person_, workspace_.preferences().person);
    people_->set_rows(std::move(people));
}

void PreferencesPage::show_sample() {
    const auto& style = workspace_.style();
    sample_->setText(tr("So things read: %1, %2, %3, %4.")
                         .arg(text::words(core::units::Mass::grams(1234), style),
                              text::words(core::units::Temperature::celsius(12.5), style),
                              text::words(core::units::Length::millimetres(60), style),
                              text::words(workspace_.now(), style)));
}

void PreferencesPage::choose() {
    if (filling_) {
        return;
    }
    auto now = workspace_.preferences();
    now.mass = static_cast<text::MassStyle>(mass_->currentData().toInt());
    now.temperature = static_cast<text::TemperatureStyle>(temperature_->currentData().toInt());
    now.length = static_cast<text::LengthStyle>(length_->currentData().toInt());
    now.volume = static_cast<text::VolumeStyle>(volume_->currentData().toInt());
    now.language = language_->currentData().toString();
    now.time_zone = zone_->currentData().toString();
    now.limit_set = limits_->currentData().toString();
    now.theme = static_cast<presenters::ThemeChoice>(theme_->currentData().toInt());
    now.person = person_->currentData().toString();
    workspace_.set_preferences(now);
}

void PreferencesPage::open_person(qint64 id) {
    Person person;
    for (const auto& row : people_->rows()) {
        if (row.id.row() == id) {
            person = row;
        }
    }
    PersonDialog(workspace_, person, this).exec();
}

void PreferencesPage::open_scale(qint64 id) {
    Instrument scale;
    for (const auto& row : scales_->rows()) {
        if (row.id.row() == id) {
            scale = row;
        }
    }
    ScaleDialog(workspace_, scale, this).exec();
}

PageEntry preferences_page() {
    return {"preferences", Side::house, PreferencesPage::tr("Preferences"),
            PreferencesPage::tr("Units, language, limits, people and scales"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new PreferencesPage(workspace, parent);
            }};
}

} // namespace ui::pages
