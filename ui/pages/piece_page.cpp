#include "ui/pages/piece_page.h"

#include "ui/charts/chart_view.h"
#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/event_dialog.h"
#include "ui/pages/lost_weight_dialog.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/piece_dialog.h"
#include "ui/pages/split_dialogs.h"
#include "ui/pages/warm_dialog.h"
#include "ui/pages/what_if_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/text/model_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

namespace ui::pages {

using core::model::EventKind;

PiecePage::PiecePage(presenters::Workspace& workspace, QWidget* parent) : Page(workspace, parent) {
    const auto frame = frame_page(this, tr("Piece"));
    title_ = findChild<QLabel*>(QStringLiteral("page_title"));
    subtitle_ = look::caption({});
    subtitle_->setObjectName(QStringLiteral("piece_subtitle"));
    build_head(frame.head);
    frame.body->addWidget(subtitle_);
    auto* upper = new look::SideBySide(42);
    upper->add(build_chart(), 3);
    upper->add(build_facts(), 1);
    frame.body->addWidget(upper, 3);
    frame.body->addWidget(build_tabs(), 2);
    connect(&workspace_.forecasts(), &presenters::Forecasts::arrived, this,
            &PiecePage::forecast_arrived);
}

void PiecePage::build_head(look::HeadRow* head) {
    change_ = look::button("piece_change", tr("&Change…"));
    event_button_ = look::button("piece_event", tr("What &happened"));
    event_button_->setProperty("menu", true);
    auto* menu = look::named(new QMenu(this), "event_menu", tr("What happened to it"));
    for (const EventKind kind : EventDialog::kinds()) {
        QAction* action = menu->addAction(text::words(kind));
        action->setObjectName(QStringLiteral("event_%1").arg(static_cast<int>(kind)));
        action->setToolTip(EventDialog::hint(kind));
        connect(action, &QAction::triggered, this, [this, kind] { event_dialog(kind); });
    }
    menu->addSeparator();
    QAction* split = menu->addAction(text::words(EventKind::split));
    split->setObjectName(QStringLiteral("event_split"));
    connect(split, &QAction::triggered, this, [this] {
        if (line_) {
            SplitDialog(workspace_, *line_, this).exec();
        }
    });
    QAction* merge = menu->addAction(text::words(EventKind::merged));
    merge->setObjectName(QStringLiteral("event_merge"));
    connect(merge, &QAction::triggered, this, [this] {
        if (line_) {
            MergeDialog(workspace_, *line_, this).exec();
        }
    });
    add_troubles(menu);
    menu->setToolTipsVisible(true);
    event_button_->setMenu(menu);
    auto* what_if = look::button("piece_what_if", tr("What &if…"));
    connect(what_if, &QPushButton::clicked, this, [this] {
        if (line_) {
            const auto line = *line_;
            WhatIfDialog(workspace_, line, this).exec();
        }
    });
    review_ = look::button("piece_review", tr("Is it &done?"));
    weigh_ = look::button("piece_weigh", tr("&Weigh…"), look::ButtonLook::primary);
    for (QWidget* button :
         std::initializer_list<QWidget*>{change_, event_button_, what_if, review_, weigh_}) {
        head->addWidget(button);
    }
    connect(change_, &QPushButton::clicked, this, [this] {
        if (line_) {
            PieceDialog(workspace_, line_->piece(), this).exec();
        }
    });
    connect(weigh_, &QPushButton::clicked, this, &PiecePage::weigh);
    connect(review_, &QPushButton::clicked, this, [this] {
        Q_EMIT go({QStringLiteral("review"), piece_, {}});
    });
}

void PiecePage::add_troubles(QMenu* menu) {
    menu->addSeparator();
    const auto item = [&](const char* name, const QString& words, const QString& hint, auto open) {
        QAction* action = menu->addAction(words);
        action->setObjectName(QLatin1String(name));
        action->setToolTip(hint);
        connect(action, &QAction::triggered, this, [this, open] {
            if (line_) {
                const auto line = *line_; // refresh() replaces line_ while a dialog closes
                open(line);
            }
        });
    };
    item("event_warm", tr("finish it in warm air…"),
         tr("A dehydrator or a low oven: how long, and how long where microbes grow."),
         [this](const presenters::PieceLine& line) { WarmDialog(workspace_, line, this).exec(); });
    item("event_lost", tr("a weight is lost…"),
         tr("A start weight was never written down: what its siblings say it was."),
         [this](const presenters::PieceLine& line) {
             LostWeightDialog(workspace_, line, this).exec();
         });
    item("event_upset", tr("the fridge or chamber failed…"),
         tr("Power cut, door left open: what each piece there was like, and how warm it became."),
         [this](const presenters::PieceLine& line) { chamber_failed(line); });
}

QWidget* PiecePage::build_chart() {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    auto* row = new look::HeadRow(look::lines(this, 0.3));
    measure_ = look::named(new QComboBox, "chart_measure", tr("What the chart shows"));
    measure_->setSizeAdjustPolicy(QComboBox::AdjustToContents); // filled by what is known
    axis_ = look::named(new QComboBox, "chart_axis", tr("Time axis"));
    axis_->addItems({tr("by date"), tr("by days since hung")});
    compare_ = look::named(new QComboBox, "chart_compare", tr("Pieces on the chart"));
    fill_compare();
    earlier_ = look::named(new QCheckBox(tr("&Earlier pieces")), "chart_earlier",
                           tr("Own earlier pieces for comparison"));
    auto* all = look::button("chart_all", tr("Show a&ll"), look::ButtonLook::plain);
    auto* save = look::button("chart_save", tr("Save the c&hart…"), look::ButtonLook::plain);
    row->addWidget(measure_);
    row->addWidget(axis_);
    row->addWidget(compare_);
    row->addWidget(earlier_);
    row->addWidget(all);
    row->addWidget(save);
    column->addLayout(row);
    chart_ = new charts::ChartView("loss_chart", card);
    column->addWidget(chart_, 1);
    chart_note_ = look::caption({});
    chart_note_->setObjectName(QStringLiteral("chart_note"));
    column->addWidget(chart_note_);
    connect(compare_, &QComboBox::activated, this, &PiecePage::compare_activated);
    connect(earlier_, &QCheckBox::toggled, this, &PiecePage::compare_again);
    connect(measure_, &QComboBox::currentIndexChanged, this, &PiecePage::show_chart);
    connect(axis_, &QComboBox::currentIndexChanged, this, &PiecePage::show_chart);
    connect(all, &QPushButton::clicked, chart_, &charts::ChartView::show_all);
    connect(save, &QPushButton::clicked, this, &PiecePage::save_chart);
    connect(chart_, &charts::ChartView::chosen, this, &PiecePage::amend);
    return card;
}

QWidget* PiecePage::build_facts() {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    card->setMinimumWidth(look::lines(this, 13));
    big_loss_ = look::figure({}, 2.2);
    big_loss_->setObjectName(QStringLiteral("piece_loss"));
    loss_words_ = look::caption({});
    target_words_ = look::paragraph({});
    target_words_->setObjectName(QStringLiteral("piece_target_words"));
    ready_words_ = look::paragraph({});
    ready_words_->setObjectName(QStringLiteral("piece_ready"));
    learnt_words_ = look::caption({});
    learnt_words_->setObjectName(QStringLiteral("piece_learnt"));
    other_losses_ = look::caption({});
    other_losses_->setObjectName(QStringLiteral("piece_losses"));
    column->addWidget(big_loss_);
    column->addWidget(loss_words_);
    column->addWidget(look::hairline());
    column->addWidget(target_words_);
    column->addWidget(ready_words_);
    column->addWidget(learnt_words_);
    column->addWidget(other_losses_);
    findings_ = new QVBoxLayout;
    findings_->setSpacing(look::lines(this, 0.3));
    column->addLayout(findings_);
    column->addStretch(1);
    return card;
}

QWidget* PiecePage::build_tabs() {
    tabs_ = look::named(new QTabWidget, "piece_tabs", tr("Records of the piece"));
    tabs_->setDocumentMode(true);
    tabs_->setMinimumHeight(look::lines(this, 11));
    tabs_->addTab(build_weighings(), tr("Weighings"));
    tabs_->addTab(build_events(), tr("Events"));
    tabs_->addTab(build_notes(), tr("Notes"));
    family_ = new Family(
        {{tr("Code"), [](const auto& p) { return QString::fromStdString(p.code); }, {}, false, {}},
         {tr("Piece"), [](const auto& p) { return QString::fromStdString(p.name); }, {}, false, {}},
         {tr("State"), [](const auto& p) { return text::words(p.state); }, {}, false, {}}},
        [](const auto& p) { return p.id.row(); }, this);
    auto* table = new Table("family_table", tr("Pieces cut from one another"));
    table->show_model(family_);
    connect(table, &Table::opened, this, [this](qint64 id) {
        Q_EMIT go({QStringLiteral("piece"), id, {}});
    });
    tabs_->addTab(table, tr("Family"));
    return tabs_;
}

PageEntry piece_page() {
    return {"piece", Side::inner, PiecePage::tr("Piece"), PiecePage::tr("One piece in full"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new PiecePage(workspace, parent);
            }};
}

} // namespace ui::pages
