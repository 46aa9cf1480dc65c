#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/pack_dialogs.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/table.h"
#include "ui/presenters/keep_by.h"
#include "ui/presenters/stock.h"
#include "ui/presenters/workspace.h"
#include "ui/text/date_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QCheckBox>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

using presenters::StockLine;

/// Finished packs in eating order, and what was taken from the one that is marked.
class StockPage : public Page {
    Q_DECLARE_TR_FUNCTIONS(StockPage)
  public:
    StockPage(presenters::Workspace& workspace, QWidget* parent);
    void arrive(const Place& place) override;
    void refresh() override;

  private:
    using Rows = models::RowsModel<StockLine>;
    using Moves = models::RowsModel<core::model::PackMove>;
    [[nodiscard]] std::vector<Rows::Column> columns() const;
    [[nodiscard]] std::vector<Moves::Column> move_columns() const;
    void build_body(QVBoxLayout* body);
    void show_pack(qint64 row);
    [[nodiscard]] std::optional<core::model::Pack> current() const;
    [[nodiscard]] QString origin_words(const core::model::Pack& pack) const;
    [[nodiscard]] QString keep_words(const core::model::Pack& pack) const;
    void pack();

    QStackedWidget* stack_;
    QCheckBox* with_gone_;
    Rows* rows_;
    Moves* moves_;
    Table* table_;
    Table* move_table_;
    QLabel* facts_;
    QPushButton* take_;
    QPushButton* change_;
    qint64 wanted_ = 0;
};

StockPage::StockPage(presenters::Workspace& workspace, QWidget* parent) : Page(workspace, parent) {
    const auto frame = frame_page(this, tr("Stock"));
    auto* add =
        look::button("pack_piece_button", tr("&Pack a finished piece…"), look::ButtonLook::primary);
    frame.head->addWidget(add);
    connect(add, &QPushButton::clicked, this, &StockPage::pack);
    stack_ = new QStackedWidget(this);
    auto* empty = new look::EmptyState(
        "stock_empty", tr("Nothing is packed yet"),
        tr("When a piece is signed as done, pack it here: whole, cut, under vacuum or frozen. "
           "The list then shows what to eat first, what is left, and where everything went."),
        tr("Pack a finished piece"));
    connect(empty->action(), &QPushButton::clicked, this, &StockPage::pack);
    stack_->addWidget(empty);
    auto* full = new QWidget;
    auto* body = new QVBoxLayout(full);
    body->setContentsMargins(0, 0, 0, 0);
    build_body(body);
    stack_->addWidget(full);
    frame.body->addWidget(stack_, 1);
}

void StockPage::build_body(QVBoxLayout* body) {
    auto* row = new look::SideBySide(34);
    row->add(look::caption(tr("In eating order: open packs first, then the nearest day.")), 1);
    with_gone_ = look::named(new QCheckBox(tr("Show packs that are &gone")), "with_gone",
                             tr("Show packs that are gone"));
    row->add(with_gone_, 0);
    body->addWidget(row);
    rows_ = new Rows(
        columns(), [](const StockLine& l) { return l.pack.id.row(); }, this);
    table_ = new Table("stock_table", tr("Packs"));
    table_->show_model(rows_);
    table_->set_least_height(7);
    body->addWidget(table_, 3);
    auto* about = new look::SideBySide(34);
    facts_ = look::paragraph({});
    facts_->setObjectName(QStringLiteral("pack_facts"));
    about->add(facts_, 1);
    change_ = look::button("change_pack", tr("&Change…"));
    take_ = look::button("take", tr("&Take from it…"));
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(change_);
    buttons->addWidget(take_);
    about->add(buttons, 0);
    body->addWidget(about);
    moves_ = new Moves(
        move_columns(), [](const core::model::PackMove& m) { return m.id.row(); }, this);
    move_table_ = new Table("move_table", tr("What was taken from the pack"));
    move_table_->show_model(moves_);
    move_table_->set_least_height(5);
    body->addWidget(move_table_, 2);
    connect(with_gone_, &QCheckBox::toggled, this, [this] { refresh(); });
    connect(table_, &Table::current_changed, this, &StockPage::show_pack);
    const auto take = [this] {
        if (const auto pack = current()) {
            TakeDialog(workspace_, *pack, this).exec();
        }
    };
    connect(take_, &QPushButton::clicked, this, take);
    connect(table_, &Table::opened, this, take);
    connect(change_, &QPushButton::clicked, this, [this] {
        if (const auto pack = current()) {
            PackChangeDialog(workspace_, *pack, this).exec();
        }
    });
}

std::vector<StockPage::Rows::Column> StockPage::columns() const {
    const auto style = workspace_.style();
    const auto today = workspace_.today();
    const auto day = [style](const std::optional<core::units::Day>& d) {
        return d ? text::words(*d, style) : text::unknown();
    };
    return {
        {tr("Eat"),
         [](const auto& l) {
             return l.pack.gone ? text::unknown() : QString::number(l.eat_order + 1);
         },
         [](const auto& l) { return QVariant(l.eat_order); },
         true,
         {}},
        {tr("Pack"),
         [](const auto& l) { return QString::fromStdString(l.pack.code); },
         {},
         false,
         {}},
        {tr("Product"), [](const auto& l) { return l.product; }, {}, false, {}},
        {tr("How"),
         [style](const auto& l) {
             const QString how = text::words(l.pack.kind);
             return l.pack.opened_on ? StockPage::tr("%1, open since %2")
                                           .arg(how, text::short_words(*l.pack.opened_on, style))
                                     : how;
         },
         {},
         false,
         {}},
        {tr("Left"),
         [style](const auto& l) {
             const QString left = text::words(l.pack.weight_left, style);
             return l.pack.weight_left == l.pack.packed_weight
                        ? left
                        : StockPage::tr("%1 of %2")
                              .arg(left, text::words(l.pack.packed_weight, style));
         },
         [](const auto& l) { return QVariant(l.pack.weight_left.in_grams()); },
         true,
         {}},
        {tr("Keep until"),
         [day, today](const auto& l) {
             const QString written = day(l.pack.keep_by);
             return l.pack.keep_by && *l.pack.keep_by < today && !l.pack.gone
                        ? StockPage::tr("\u25B2 %1, past").arg(written)
                        : written;
         },
         [](const auto& l) {
             return QVariant(l.pack.keep_by ? l.pack.keep_by->days_since_epoch()
                                            : std::numeric_limits<int>::max());
         },
         false,
         {}},
        {tr("Place"),
         [](const auto& l) { return QString::fromStdString(l.pack.place); },
         {},
         false,
         {}},
    };
}

std::vector<StockPage::Moves::Column> StockPage::move_columns() const {
    const auto style = workspace_.style();
    return {
        {tr("When"),
         [style](const auto& m) { return text::words(m.at, style); },
         [](const auto& m) { return QVariant(static_cast<qlonglong>(m.at.unix_seconds())); },
         false,
         {}},
        {tr("What became of it"), [](const auto& m) { return text::words(m.kind); }, {}, false, {}},
        {tr("How much"),
         [style](const auto& m) { return text::words(m.amount, style); },
         [](const auto& m) { return QVariant(m.amount.in_grams()); },
         true,
         {}},
        {tr("To whom"),
         [](const auto& m) { return QString::fromStdString(m.to_whom); },
         {},
         false,
         {}},
        {tr("Note"), [](const auto& m) { return QString::fromStdString(m.note); }, {}, false, {}},
    };
}

void StockPage::arrive(const Place& place) {
    wanted_ = place.row;
}

void StockPage::refresh() {
    auto lines = presenters::stock_lines(workspace_.book());
    stack_->setCurrentIndex(lines.empty() ? 0 : 1);
    if (!with_gone_->isChecked()) {
        std::erase_if(lines, [](const StockLine& l) { return l.pack.gone; });
    }
    const qint64 keep = wanted_ > 0 ? wanted_ : table_->current_id();
    wanted_ = 0;
    rows_->set_columns(columns());
    moves_->set_columns(move_columns());
    rows_->set_rows(std::move(lines));
    table_->set_current_id(keep);
    show_pack(table_->current_id());
}

std::optional<core::model::Pack> StockPage::current() const {
    for (const auto& line : rows_->rows()) {
        if (line.pack.id.row() == table_->current_id()) {
            return line.pack;
        }
    }
    return {};
}

void StockPage::show_pack(qint64 row) {
    const auto pack = current();
    take_->setEnabled(pack && !pack->gone && !workspace_.is_read_only());
    change_->setEnabled(pack && !workspace_.is_read_only());
    if (!pack) {
        facts_->setText({});
        moves_->set_rows({});
        return;
    }
    moves_->set_rows(
        workspace_.rows(workspace_.book().pack_moves(core::model::PackId::from_row(row))));
    facts_->setText(origin_words(*pack) + QLatin1Char('\n') + keep_words(*pack));
}

QString StockPage::origin_words(const core::model::Pack& pack) const {
    auto history = workspace_.one(workspace_.book().piece_history(pack.piece));
    if (!history) {
        return {};
    }
    const auto& style = workspace_.style();
    const auto batch = workspace_.one(workspace_.book().batch(history->piece.batch));
    QString words = tr("From piece %1 of batch %2.")
                        .arg(QString::fromStdString(history->piece.code),
                             batch ? QString::fromStdString(batch->code) : text::unknown());
    if (!batch) {
        return words;
    }
    const auto packs = workspace_.rows(workspace_.book().packs_of(pack.piece));
    std::vector<core::model::PackMove> moves;
    for (const auto& one : packs) {
        for (auto& move : workspace_.rows(workspace_.book().pack_moves(one.id))) {
            moves.push_back(std::move(move));
        }
    }
    const auto line = presenters::line_in(workspace_.book(), std::move(*history));
    const auto yield = presenters::yield_of(line, *batch, packs, moves,
                                            presenters::raw_of_batch(workspace_.book(), batch->id));
    if (!yield) {
        return words + QLatin1Char(' ') +
               tr("Its yield is not known: the raw or the finished weight was not taken.");
    }
    words += QLatin1Char(' ') +
             tr("Yield: %1 of %2 raw, %3 (lost %4); packed %5.")
                 .arg(text::words(yield->finished, style), text::words(yield->raw, style),
                      text::words(yield->share, style), text::words(yield->lost, style),
                      text::words_or_unknown(yield->packed, style));
    if (yield->cost_per_kilogram) {
        const auto currency = workspace_.one(workspace_.book().preference("currency"));
        words += QLatin1Char(' ') +
                 tr("At that loss the meat cost %1 a finished kilogram.")
                     .arg(tr("%1 %2")
                              .arg(text::number_words(*yield->cost_per_kilogram, style, 2),
                                   currency && *currency ? QString::fromStdString(**currency)
                                                         : QString())
                              .trimmed());
    }
    return words;
}

QString StockPage::keep_words(const core::model::Pack& pack) const {
    if (!pack.keep_by) {
        return tr("No day is set to keep it until.");
    }
    const QString day = text::words(*pack.keep_by, workspace_.style());
    const QString rule = presenters::keep_rule_words(pack.keep_by_rule);
    if (!rule.isEmpty()) {
        return tr("Keep until %1 by a rule: %2.").arg(day, rule);
    }
    const QString why = presenters::own_day_why(workspace_.book(), pack);
    return why.isEmpty() ? tr("Keep until %1: somebody's own day.").arg(day)
                         : tr("Keep until %1: somebody's own day, because: %2").arg(day, why);
}

void StockPage::pack() {
    PackDialog(workspace_, {}, this).exec();
}

} // namespace

PageEntry stock_page() {
    return {"stock", Side::book, StockPage::tr("Stock"),
            StockPage::tr("Finished packs: what to eat first and where it went"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new StockPage(workspace, parent);
            }};
}

} // namespace ui::pages
