#include "ui/pages/batches_page.h"

#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/batch_dialog.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/piece_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/print/printable.h"
#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <limits>

namespace ui::pages {

using core::services::BatchOverview;
using presenters::PieceLine;

BatchesPage::BatchesPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent) {
    const auto frame = frame_page(this, tr("Batches and pieces"));
    auto* fresh = look::button("new_batch", tr("&New batch…"), look::ButtonLook::primary);
    frame.head->addWidget(fresh);
    const auto begin = [this] { Q_EMIT go({QStringLiteral("new_batch"), 0, {}}); };
    connect(fresh, &QPushButton::clicked, this, begin);
    stack_ = new QStackedWidget(this);
    auto* empty = new look::EmptyState(
        "batches_empty", tr("No batch yet"),
        tr("A batch is meat cured together from one recipe. Weigh it, let the mix sheet compute "
           "the cure, and give each piece a code. From then on every weighing finds its place "
           "by itself."),
        tr("Start the first batch"));
    connect(empty->action(), &QPushButton::clicked, this, begin);
    stack_->addWidget(empty);
    auto* full = new QWidget;
    auto* body = new QVBoxLayout(full);
    body->setContentsMargins(0, 0, 0, 0);
    build_body(body);
    stack_->addWidget(full);
    frame.body->addWidget(stack_, 1);
    connect(&workspace_.forecasts(), &presenters::Forecasts::arrived, this,
            &BatchesPage::forecasts_arrived);
}

void BatchesPage::build_body(QVBoxLayout* body) {
    auto* row = new QHBoxLayout;
    find_ = look::named(new QLineEdit, "find", tr("Find a batch"));
    find_->setPlaceholderText(tr("Find by code, name, product or supplier"));
    find_->setClearButtonEnabled(true);
    with_closed_ = look::named(new QCheckBox(tr("Show &finished batches too")), "with_closed",
                               tr("Show finished batches too"));
    with_closed_->setChecked(true);
    row->addWidget(find_, 1);
    row->addWidget(with_closed_);
    body->addLayout(row);
    batches_ = new BatchRows(
        batch_columns(), [](const BatchOverview& o) { return o.batch.id.row(); }, this);
    batch_table_ = new Table("batch_table", tr("Batches"));
    batch_table_->show_model(batches_);
    batch_table_->setMinimumHeight(look::lines(this, 6));
    pieces_ = new PieceRows(
        piece_columns(), [](const PieceLine& l) { return l.piece().id.row(); }, this);
    piece_table_ = new Table("piece_table", tr("Pieces of the batch"));
    piece_table_->show_model(pieces_);
    piece_table_->setMinimumHeight(look::lines(this, 6));

    lower_ = new QWidget;
    auto* column = new QVBoxLayout(lower_);
    column->setContentsMargins(0, look::lines(this, 0.4), 0, 0);
    auto* heading = new look::HeadRow(look::lines(this, 0.4));
    batch_title_ = look::section_title({});
    batch_title_->setWordWrap(false); // the head row gives it a line of its own where it is long
    batch_title_->setObjectName(QStringLiteral("batch_title"));
    add_piece_ = look::button("add_piece", tr("&Add a piece…"));
    change_ = look::button("change_batch", tr("&Change the batch…"));
    heading->addWidget(batch_title_);
    heading->addWidget(change_);
    heading->addWidget(add_piece_);
    heading->addWidget(build_more());
    column->addLayout(heading);
    batch_facts_ = look::caption({});
    batch_facts_->setObjectName(QStringLiteral("batch_facts"));
    column->addWidget(batch_facts_);
    outcome_words_ = look::caption({});
    outcome_words_->setObjectName(QStringLiteral("batch_outcome_words"));
    column->addWidget(outcome_words_);
    column->addWidget(piece_table_, 1);

    auto* split = look::named(new QSplitter(Qt::Vertical), "split", tr("Batches above pieces"));
    split->addWidget(batch_table_);
    split->addWidget(lower_);
    split->setChildrenCollapsible(false);
    split->setStretchFactor(0, 2);
    split->setStretchFactor(1, 3);
    body->addWidget(split, 1);

    connect(find_, &QLineEdit::textChanged, batch_table_, &Table::set_filter);
    connect(with_closed_, &QCheckBox::toggled, this, [this] { refresh(); });
    connect(batch_table_, &Table::current_changed, this, &BatchesPage::show_batch);
    connect(batch_table_, &Table::opened, this, [this] { piece_table_->setFocus(); });
    connect(piece_table_, &Table::opened, this, [this](qint64 id) {
        Q_EMIT go({QStringLiteral("piece"), id, {}});
    });
    connect(add_piece_, &QPushButton::clicked, this, [this] {
        PieceDialog dialog(workspace_, core::model::BatchId::from_row(batch_), this);
        dialog.exec();
    });
    connect(change_, &QPushButton::clicked, this, [this] {
        const auto id = core::model::BatchId::from_row(batch_);
        if (const auto batch = workspace_.one(workspace_.book().batch(id))) {
            BatchDialog dialog(workspace_, *batch, this);
            dialog.exec();
        }
    });
}

std::vector<BatchesPage::BatchRows::Column> BatchesPage::batch_columns() const {
    const auto style = workspace_.style();
    return {
        {tr("Code"),
         [](const auto& o) { return QString::fromStdString(o.batch.code); },
         {},
         false,
         {}},
        {tr("Batch"),
         [](const auto& o) { return QString::fromStdString(o.batch.name); },
         {},
         false,
         {}},
        {tr("Product"),
         [](const auto& o) { return QString::fromStdString(o.batch.product); },
         {},
         false,
         {}},
        {tr("Started"),
         [style](const auto& o) { return text::words(o.batch.started, style); },
         [](const auto& o) { return QVariant(o.batch.started.days_since_epoch()); },
         false,
         {}},
        {tr("State"), [](const auto& o) { return text::words(o.batch.state); }, {}, false, {}},
        {tr("Pieces"),
         [](const auto& o) { return QString::number(o.pieces); },
         [](const auto& o) { return QVariant(o.pieces); },
         true,
         {}},
        {tr("Drying"),
         [](const auto& o) { return QString::number(o.drying); },
         [](const auto& o) { return QVariant(o.drying); },
         true,
         {}},
        {tr("Last weighed"),
         [style](const auto& o) {
             return o.last_weighed ? text::short_words(style.zone.day_of(*o.last_weighed), style)
                                   : text::unknown();
         },
         [](const auto& o) {
             return QVariant(
                 static_cast<qlonglong>(o.last_weighed ? o.last_weighed->unix_seconds() : 0));
         },
         false,
         {}},
    };
}

std::vector<BatchesPage::PieceRows::Column> BatchesPage::piece_columns() const {
    const auto style = workspace_.style();
    const auto now = workspace_.now();
    const auto chambers = chambers_;
    return {
        {tr("Code"),
         [](const auto& l) { return QString::fromStdString(l.piece().code); },
         {},
         false,
         {}},
        {tr("Piece"),
         [](const auto& l) { return QString::fromStdString(l.piece().name); },
         {},
         false,
         {}},
        {tr("State"), [](const auto& l) { return text::words(l.piece().state); }, {}, false, {}},
        {tr("Place"),
         [chambers](const auto& l) {
             return presenters::place_words(
                 l.piece(),
                 l.piece().chamber ? chambers.value(l.piece().chamber->row()) : QString());
         },
         {},
         false,
         {}},
        {tr("Net now"),
         [style](const auto& l) { return text::words_or_unknown(l.net, style); },
         [](const auto& l) { return QVariant(l.net ? l.net->in_grams() : -1.0); },
         true,
         {}},
        {tr("Lost"),
         [style](const auto& l) { return presenters::progress_words(l, style); },
         [](const auto& l) {
             return QVariant(l.towards_target ? l.towards_target->loss.as_fraction() : -1.0);
         },
         true,
         {}},
        {tr("At target"),
         [style, now](const auto& l) { return presenters::ready_words(l.forecast, style, now); },
         [](const auto& l) {
             return QVariant(
                 static_cast<qlonglong>(l.forecast && l.forecast->ready && l.forecast->ready->p50
                                            ? l.forecast->ready->p50->unix_seconds()
                                            : std::numeric_limits<std::int64_t>::max()));
         },
         false,
         {}},
    };
}

/// A splitter does not ask what wrapped buttons and words need at this width.
void BatchesPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    lower_->setMinimumHeight(lower_->layout()->minimumHeightForWidth(lower_->width()));
}

void BatchesPage::arrive(const Place& place) {
    if (place.row > 0) {
        batch_ = place.row;
    }
}

std::vector<print::Printable> BatchesPage::printables() {
    std::vector<print::Printable> printables;
    if (batch_ > 0) {
        printables =
            print::batch_printables(workspace_.book(), core::model::BatchId::from_row(batch_),
                                    workspace_.now(), workspace_.style());
    }
    printables.push_back(list_printable(*batch_table_->model(), {.title = tr("Batches")}));
    return printables;
}

void BatchesPage::refresh() {
    chambers_.clear();
    for (const auto& chamber : workspace_.rows(workspace_.book().chambers())) {
        chambers_.insert(chamber.id.row(), QString::fromStdString(chamber.name));
    }
    auto overviews = workspace_.rows(workspace_.book().batch_overviews());
    stack_->setCurrentIndex(overviews.empty() ? 0 : 1);
    if (!with_closed_->isChecked()) {
        std::erase_if(overviews, [](const BatchOverview& o) {
            return o.batch.state == core::model::BatchState::finished ||
                   o.batch.state == core::model::BatchState::abandoned;
        });
    }
    add_piece_->setEnabled(!workspace_.is_read_only());
    change_->setEnabled(!workspace_.is_read_only());
    {
        const QSignalBlocker quiet(batch_table_); // the pieces are shown once, below
        batches_->set_all(batch_columns(), std::move(overviews));
        batch_table_->set_current_id(batch_);
    }
    show_batch(batch_table_->current_id());
}

void BatchesPage::show_batch(qint64 row) {
    batch_ = row;
    if (row <= 0) {
        pieces_->set_all(piece_columns(), {});
        batch_title_->setText({});
        batch_facts_->setText({});
        outcome_words_->hide();
        return;
    }
    const auto id = core::model::BatchId::from_row(row);
    const auto batch = workspace_.one(workspace_.book().batch(id));
    if (!batch) {
        return;
    }
    const auto& style = workspace_.style();
    batch_title_->setText(
        tr("%1 \u2013 %2")
            .arg(QString::fromStdString(batch->code), QString::fromStdString(batch->name)));
    QStringList facts;
    facts << tr("started %1").arg(text::words(batch->started, style));
    if (!batch->species.empty()) {
        facts << text::data_name(batch->species);
    }
    if (!batch->supplier.empty()) {
        facts << tr("from %1").arg(QString::fromStdString(batch->supplier));
    }
    if (!batch->supplier_lot.empty()) {
        facts << tr("lot %1").arg(QString::fromStdString(batch->supplier_lot));
    }
    if (batch->bought_weight) {
        facts << tr("bought %1").arg(text::words(*batch->bought_weight, style));
    }
    if (!batch->notes.empty()) {
        facts << QString::fromStdString(batch->notes);
    }
    batch_facts_->setText(facts.join(QStringLiteral(" · ")));
    core::services::PieceFilter filter;
    filter.batch = id;
    std::vector<PieceLine> lines;
    std::vector<presenters::PieceRecord> drying;
    for (auto& history : workspace_.rows(workspace_.book().piece_histories(filter))) {
        auto line = presenters::line_in(workspace_.book(), std::move(history));
        if (line.piece().state == core::model::PieceState::drying) {
            drying.push_back({line.history, line.kin, {}});
        }
        lines.push_back(std::move(line));
    }
    compare_->setEnabled(!lines.empty());
    show_outcome(*batch, lines);
    add_forecasts(lines);
    pieces_->set_all(piece_columns(), std::move(lines));
    workspace_.ask_forecasts(std::move(drying));
}

bool BatchesPage::add_forecasts(std::vector<PieceLine>& lines) const {
    bool any = false;
    for (auto& line : lines) {
        const auto* forecast = workspace_.forecasts().find(line.piece().id, line.history.revision);
        if (forecast != nullptr && !line.forecast) {
            line.forecast = *forecast;
            any = true;
        }
    }
    return any;
}

void BatchesPage::forecasts_arrived() {
    auto lines = pieces_->rows();
    if (add_forecasts(lines)) {
        pieces_->set_rows(std::move(lines));
    }
}

PageEntry batches_page() {
    return {"batches", Side::book, BatchesPage::tr("Batches"),
            BatchesPage::tr("All batches and their pieces"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new BatchesPage(workspace, parent);
            }};
}

} // namespace ui::pages
