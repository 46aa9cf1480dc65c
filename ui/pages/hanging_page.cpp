#include "ui/pages/hanging_page.h"

#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/page_frame.h"
#include "ui/presenters/workspace.h"
#include "ui/print/printable.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <limits>

namespace ui::pages {

using presenters::HangingLine;
using presenters::ReadyBy;

HangingPage::HangingPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent) {
    const auto frame = frame_page(this, tr("What hangs"));
    chamber_ = look::named(new QComboBox, "hanging_chamber", tr("Chamber"));
    frame.head->addWidget(look::field_label(tr("&Chamber"), chamber_));
    frame.head->addWidget(chamber_);
    stack_ = new QStackedWidget(this);
    stack_->addWidget(new look::EmptyState(
        "hanging_empty", tr("Nothing hangs yet"),
        tr("When a piece comes out of the cure, open it and choose \"What happened: hung to dry\". "
           "From its second weighing on it stands here on a time axis with the interval in which "
           "it is expected to reach its target."),
        QString()));
    auto* full = new QWidget;
    auto* body = new QVBoxLayout(full);
    body->setContentsMargins(0, 0, 0, 0);
    auto* asked = new QHBoxLayout;
    by_ = new edits::DayField("ready_by", tr("Ready by"), workspace_.style(), workspace_.today());
    asked->addWidget(look::field_label(tr("What is &ready by"), by_->line()), 0, Qt::AlignTop);
    asked->addWidget(by_, 0, Qt::AlignTop);
    asked->addStretch(1);
    answer_ = look::paragraph({});
    answer_->setObjectName(QStringLiteral("ready_answer"));
    auto* row = new look::SideBySide(38);
    row->add(asked, 0);
    row->add(answer_, 1);
    body->addWidget(row);
    rows_ = new Rows(
        columns(), [](const HangingLine& l) { return l.line.piece().id.row(); }, this);
    table_ = new Table("hanging_table", tr("Drying pieces"));
    header_ = look::named(new TimelineHeader(table_), "hanging_header", tr("Columns and dates"));
    table_->setHorizontalHeader(header_);
    table_->show_model(rows_);
    table_->verticalHeader()->setDefaultSectionSize(look::lines(this, 2.0));
    table_->set_least_height(10);
    timeline_ = new ReadyTimeline(
        [this](const QModelIndex& index) {
            ReadyTimeline::Row out;
            const int n = rows_->row_of(index.data(models::id_role).toLongLong());
            if (n < 0) {
                return out;
            }
            const auto& line = rows_->row(n).line;
            out.hung = line.hung_at;
            if (line.towards_target && line.piece().target &&
                line.piece().target->loss.as_fraction() > 0) {
                out.progress = line.towards_target->loss / line.piece().target->loss;
            }
            out.forecast = line.forecast;
            return out;
        },
        this);
    table_->setItemDelegateForColumn(rows_->columnCount() - 1, timeline_);
    table_->set_filling_column(rows_->columnCount() - 1);
    body->addWidget(table_, 1);
    past_words_ = look::paragraph({});
    past_words_->setObjectName(QStringLiteral("hanging_past"));
    body->addWidget(past_words_);
    key_ = look::caption(
        tr("Bar: how far the loss has come towards the target, from hanging to now. Box: 8 chances "
           "in 10 that the target is reached inside; the line in it is even odds. An arrow: it "
           "may never be. At target is not done: look, touch and cut before you decide."));
    body->addWidget(key_);
    stack_->addWidget(full);
    frame.body->addWidget(stack_, 1);
    connect(chamber_, &QComboBox::activated, this, [this] { refresh(); });
    connect(by_, &edits::EntryField::edited, this, [this] {
        show_window();
        answer();
    });
    connect(table_, &Table::opened, this, [this](qint64 id) {
        Q_EMIT go({QStringLiteral("piece"), id, {}});
    });
    connect(table_, &Table::current_changed, this, &HangingPage::show_past);
    connect(&workspace_.forecasts(), &presenters::Forecasts::arrived, this,
            &HangingPage::forecasts_arrived);
}

std::vector<HangingPage::Rows::Column> HangingPage::columns() const {
    const auto style = workspace_.style();
    const auto now = workspace_.now();
    const auto ready = [style, now](const HangingLine& l) {
        return presenters::ready_words(l.line.forecast, style, now);
    };
    const auto unlike = [](const HangingLine& l) {
        return l.unlike == 0 ? QString()
                             : HangingPage::tr("It dries much faster or slower than the others of "
                                               "its batch.");
    };
    return {
        {tr("Code"),
         [](const HangingLine& l) { return QString::fromStdString(l.line.piece().code); },
         {},
         false,
         {}},
        {tr("Piece"),
         [](const HangingLine& l) { return QString::fromStdString(l.line.piece().name); },
         {},
         false,
         {}},
        {tr("Hangs"),
         [](const HangingLine& l) { return presenters::place_words(l.line.piece(), l.chamber); },
         {},
         false,
         {}},
        {tr("Lost"),
         [style](const HangingLine& l) {
             const QString mark = l.unlike > 0   ? HangingPage::tr("fast \u25B2 ")
                                  : l.unlike < 0 ? HangingPage::tr("slow \u25BC ")
                                                 : QString();
             return mark + presenters::progress_words(l.line, style);
         },
         [](const HangingLine& l) {
             return QVariant(l.line.towards_target ? l.line.towards_target->loss.as_fraction()
                                                   : -1.0);
         },
         true, unlike},
        {tr("At target"),
         ready,
         [](const HangingLine& l) {
             const auto& f = l.line.forecast;
             return QVariant(static_cast<qlonglong>(
                 f && f->ready && f->ready->p50 ? f->ready->p50->unix_seconds()
                                                : std::numeric_limits<std::int64_t>::max()));
         },
         false,
         {}},
        // Drawn by the delegate; the words are for those who cannot see it.
        {QString(),
         ready,
         [](const HangingLine& l) {
             return QVariant(
                 static_cast<qlonglong>(l.line.hung_at ? l.line.hung_at->unix_seconds() : 0));
         },
         false,
         {}},
    };
}

void HangingPage::arrive(const Place& place) {
    fill_chambers();
    if (place.row > 0) {
        chamber_->setCurrentIndex(std::max(0, chamber_->findData(place.row)));
    }
}

void HangingPage::fill_chambers() {
    const QVariant chosen = chamber_->currentData();
    chamber_->clear();
    chamber_->addItem(tr("all"), 0);
    for (const auto& chamber : workspace_.rows(workspace_.book().chambers())) {
        chamber_->addItem(QString::fromStdString(chamber.name),
                          static_cast<qlonglong>(chamber.id.row()));
    }
    chamber_->setCurrentIndex(std::max(0, chamber_->findData(chosen)));
}

std::vector<print::Printable> HangingPage::printables() {
    return {list_printable(*table_->model(),
                           {.title = tr("What hangs"), .empty = tr("Nothing hangs.")})};
}

void HangingPage::refresh() {
    all_ = presenters::hanging_lines(workspace_.book());
    presenters::mark_unlike(all_);
    stack_->setCurrentIndex(all_.empty() ? 0 : 1);
    past_.load(workspace_);
    const qlonglong chamber = chamber_->currentData().toLongLong();
    if (chamber > 0) {
        std::erase_if(all_, [&](const HangingLine& l) {
            return !l.line.piece().chamber || l.line.piece().chamber->row() != chamber;
        });
    }
    std::vector<presenters::PieceRecord> records;
    for (const auto& line : all_) {
        records.push_back({line.line.history, line.line.kin, {}});
    }
    forecasts_arrived();
    workspace_.ask_forecasts(std::move(records));
}

void HangingPage::forecasts_arrived() {
    for (auto& line : all_) {
        if (const auto* forecast =
                workspace_.forecasts().find(line.line.piece().id, line.line.history.revision)) {
            line.line.forecast = *forecast;
        }
    }
    rows_->set_all(columns(), all_);
    show_window();
    answer();
    show_past(table_->current_id());
}

/// How long such pieces took so far, of the marked row.
void HangingPage::show_past(qint64 piece) {
    const int row = rows_->row_of(piece);
    QString words;
    if (row >= 0) {
        const auto& line = rows_->row(row);
        const auto& hung = line.line.hung_at;
        const auto& style = workspace_.style();
        words = past_.history(
            {.product = line.product.toStdString(),
             .form = line.line.piece().form,
             .chamber = line.line.piece().chamber,
             .hung_on = hung ? std::optional(style.zone.day_of(*hung)) : std::nullopt},
            style);
        if (!words.isEmpty()) {
            //: %1 a product, %2 sentences about earlier pieces of it
            words = tr("%1: %2").arg(line.product, words);
        }
    }
    past_words_->setText(words);
    fit_words();
}

/// In a low window with large type the rows come first; the words are still read with the table.
void HangingPage::fit_words() {
    const bool room = height() >= look::lines(this, 24);
    key_->setVisible(room);
    past_words_->setVisible(room && !past_words_->text().isEmpty());
    table_->setAccessibleDescription(past_words_->text() + QLatin1Char(' ') + key_->text());
}

void HangingPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    fit_words();
}

std::optional<core::units::Instant> HangingPage::asked() const {
    const auto day = by_->value();
    // The end of that day: ready on the day counts.
    return day ? std::optional(workspace_.style().zone.instant_at(*day + 1)) : std::nullopt;
}

void HangingPage::show_window() {
    TimeWindow window;
    window.now = workspace_.now();
    window.asked = asked();
    window.from = window.now - core::units::Duration::days(7);
    window.to = window.now + core::units::Duration::days(28);
    for (const auto& line : all_) {
        if (line.line.hung_at) {
            window.from = std::min(window.from, *line.line.hung_at);
        }
        const auto& f = line.line.forecast;
        if (f && f->ready) {
            for (const auto& end : {f->ready->p50, f->ready->p90}) {
                if (end) {
                    window.to = std::max(window.to, *end + core::units::Duration::days(3));
                }
            }
        }
    }
    // One straggler must not squeeze the rest: nine months ahead is as far as plans go.
    window.to = std::min(window.to, window.now + core::units::Duration::days(270));
    if (window.asked) {
        window.to = std::max(window.to, *window.asked + core::units::Duration::days(2));
    }
    timeline_->set_window(window);
    header_->set_window(window, workspace_.style());
    table_->viewport()->update();
}

void HangingPage::answer() {
    const auto at = asked();
    if (!at) {
        answer_->setText(tr("Type a day, such as a market or a feast, to see which pieces are "
                            "expected to be at their target."));
        return;
    }
    QStringList yes;
    QStringList likely;
    QStringList unlikely;
    for (const auto& line : all_) {
        const QString code = QString::fromStdString(line.line.piece().code);
        switch (presenters::ready_by(line.line.forecast, *at)) {
        case ReadyBy::yes:
            yes << code;
            break;
        case ReadyBy::likely:
            likely << code;
            break;
        case ReadyBy::unlikely:
            unlikely << code;
            break;
        case ReadyBy::no:
        case ReadyBy::unknown:
            break;
        }
    }
    const auto list = [](const QStringList& codes) {
        return codes.isEmpty() ? HangingPage::tr("none") : codes.join(QStringLiteral(", "));
    };
    answer_->setText(
        tr("Nine chances in ten or better: %1. More likely than not: %2. Possible: %3.")
            .arg(list(yes), list(likely), list(unlikely)));
}

PageEntry hanging_page() {
    return {"hanging", Side::round, HangingPage::tr("What hangs"),
            HangingPage::tr("Drying pieces on a time axis, and what is ready by a day"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new HangingPage(workspace, parent);
            }};
}

} // namespace ui::pages
