#include "ui/pages/what_if_dialog.h"

#include "ui/look/fit.h"
#include "ui/look/pieces.h"
#include "ui/pages/table.h"
#include "ui/presenters/workspace.h"
#include "ui/text/quantity_words.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

constexpr int pause_ms = 250; // between keys of a number, seldom more

} // namespace

WhatIfDialog::WhatIfDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                           QWidget* parent)
    : QDialog(parent), workspace_(workspace), what_if_(workspace, line) {
    const QString title = tr("%1: what if…").arg(QString::fromStdString(line.piece().code));
    look::named(this, "what_if_dialog", title);
    setWindowTitle(title);
    auto* outer = new QVBoxLayout(this);
    outer->addWidget(look::section_title(title));
    build_inside(line, look::add_scrolled_column(outer, "what_if_scroll", title));
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    auto* close = look::button("what_if_close", tr("&Close"), look::ButtonLook::primary);
    row->addWidget(close);
    outer->addLayout(row);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    look::resize_in_lines(this, 40, 36);
    if (what_if_.can_answer()) {
        ask();
    }
}

void WhatIfDialog::build_inside(const presenters::PieceLine& line, QVBoxLayout* column) {
    if (!what_if_.can_answer()) {
        column->addWidget(new look::EmptyState(
            "what_if_empty", tr("Nothing to compare yet"),
            tr("A forecast needs the weight its loss is counted from, and weighings since it was "
               "hung. Weigh the piece, or choose another weight to count from under Change."),
            {}));
        column->addStretch(1);
        return;
    }
    column->addWidget(look::caption(
        tr("The change holds from the last weighing on, and exactly as entered. Nothing of this is "
           "kept.")));
    if (!line.piece().target) {
        column->addWidget(look::caption(
            tr("The piece has no target; 35 % of the hung weight is taken to begin with.")));
    }
    build_fields(column);
    build_comparison(column);
    column->addStretch(1);
    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, &WhatIfDialog::ask);
    connect(&what_if_, &presenters::WhatIf::arrived, this, &WhatIfDialog::show_answer);
    show_air_words();
}

void WhatIfDialog::build_fields(QVBoxLayout* column) {
    const auto& style = workspace_.style();
    humidity_ = new edits::HumidityField("what_if_humidity", tr("Humidity ahead"), style);
    humidity_->set_value(what_if_.air().humidity);
    humidity_now_ = humidity_->value();
    temperature_ =
        new edits::TemperatureField("what_if_temperature", tr("Temperature ahead"), style);
    temperature_->set_value(what_if_.air().temperature);
    temperature_now_ = temperature_->value();
    target_ = new edits::ShareField("what_if_target", tr("Target"), style);
    target_->set_value(what_if_.target());
    target_now_ = target_->value();
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignTop);
    const auto add = [&](const QString& label, edits::EntryField* field) {
        field->set_required(true);
        look::add_field(form, label, field);
        connect(field, &edits::EntryField::edited, this, &WhatIfDialog::edited);
    };
    add(tr("&Humidity of the chamber"), humidity_);
    add(tr("Te&mperature of the chamber"), temperature_);
    add(tr("&Target, loss"), target_);
    column->addLayout(form);
    column->addWidget(look::caption(
        what_if_.air().from_log
            ? tr("Filled in: the last steady stretch of the chamber's log.")
            : tr("Filled in: a usual air, as no log says what it is (common practice, no "
                 "source).")));
    auto* row = new QHBoxLayout;
    power_ = look::paragraph({});
    power_->setObjectName(QStringLiteral("what_if_power"));
    take_ = look::button("what_if_take", tr("&Use that humidity"));
    row->addWidget(power_, 1);
    row->addWidget(take_, 0, Qt::AlignTop);
    column->addLayout(row);
    connect(take_, &QPushButton::clicked, this, [this] {
        if (const auto there = temperature_->value()) {
            humidity_->set_value(presenters::same_power(what_if_.air(), *there));
            edited();
        }
    });
}

void WhatIfDialog::build_comparison(QVBoxLayout* column) {
    caution_ = new look::Banner("what_if_caution");
    column->addWidget(caution_);
    growth_ = look::caption({});
    growth_->setObjectName(QStringLiteral("what_if_growth"));
    column->addWidget(growth_);
    state_ = look::section_title({});
    state_->setObjectName(QStringLiteral("what_if_state"));
    column->addWidget(state_);
    rows_ = new Rows(
        {{{}, [](const auto& l) { return l.what; }, {}, false, {}},
         {tr("As it is"), [](const auto& l) { return l.now; }, {}, false, {}},
         {tr("With the change"), [](const auto& l) { return l.changed; }, {}, false, {}}},
        [](const auto&) { return qint64(0); }, this);
    table_ = new Table("what_if_table", tr("As it is and with the change"));
    table_->show_model(rows_);
    table_->setSortingEnabled(false); // the rows are read from the top down
    table_->wrap_rows(true);
    table_->grow_with_rows(true);
    column->addWidget(table_);
}

std::optional<presenters::WhatIfChange> WhatIfDialog::entered() const {
    const auto humidity = humidity_->value();
    const auto temperature = temperature_->value();
    const auto target = target_->value();
    if (!humidity || !temperature || !target) {
        return {};
    }
    presenters::WhatIfChange change;
    if (humidity != humidity_now_) {
        change.humidity = humidity;
    }
    if (temperature != temperature_now_) {
        change.temperature = temperature;
    }
    if (target != target_now_) {
        change.target = target;
    }
    return change;
}

void WhatIfDialog::edited() {
    show_air_words();
    pause_.start();
}

void WhatIfDialog::ask() {
    const auto change = entered();
    if (!change) {
        state_->setText(tr("Fill in what is empty above."));
        return;
    }
    asked_ = *change;
    state_->setText(tr("Reckoning…"));
    what_if_.ask(asked_);
}

void WhatIfDialog::show_answer() {
    const auto& answer = *what_if_.answer();
    state_->setText(asked_ == presenters::WhatIfChange{} ? tr("As it is; nothing is changed yet")
                                                         : tr("As it is, and with the change"));
    const auto lines = presenters::what_if_lines(answer, what_if_.air(), what_if_.target(), asked_,
                                                 workspace_.style(), workspace_.now());
    rows_->set_rows({lines.begin(), lines.end()});
    table_->fit_columns();
}

void WhatIfDialog::show_air_words() {
    const auto& style = workspace_.style();
    const auto here = what_if_.air().temperature;
    const auto there = temperature_->value();
    const bool moved = there && there != temperature_now_;
    power_->setText(moved ? presenters::same_power_words(what_if_.air(), *there, style)
                          : tr("Change the temperature to see which humidity there has the drying "
                               "power of the air as it is."));
    take_->setVisible(moved && presenters::same_power(what_if_.air(), *there).has_value());
    const auto cautions = moved ? presenters::range_cautions(here, *there, style) : QStringList{};
    caution_->say(cautions.isEmpty() ? QString() : QStringLiteral("caution"),
                  cautions.join(QLatin1Char('\n')));
    const auto both = presenters::in_range_of_both(here, there.value_or(here));
    growth_->setText(
        both.isEmpty()
            ? QString()
            : tr("In the cited growth ranges as it is, by temperature alone: %1. Water, salt and "
                 "acid count too; the program judges none of it.")
                  .arg(both.join(QStringLiteral(", "))));
    growth_->setVisible(!both.isEmpty());
}

} // namespace ui::pages
