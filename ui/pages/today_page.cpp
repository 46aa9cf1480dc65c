#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/look/theme.h"
#include "ui/models/work_model.h"
#include "ui/pages/page_frame.h"
#include "ui/presenters/day_work.h"
#include "ui/presenters/workspace.h"
#include "ui/print/printable.h"
#include "ui/text/date_words.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QStyledItemDelegate>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>
#include <functional>

namespace ui::pages {
namespace {

using models::WorkDeed;
using models::WorkLine;
using models::WorkModel;

/// Lines with room to be hit by a thumb in a cold room, and a hairline above each heading.
class LineRoom : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QSize size = QStyledItemDelegate::sizeHint(option, index);
        size.setHeight(QFontMetrics(option.font).height() * (index.parent().isValid() ? 3 : 4) / 2);
        return size;
    }

  protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
        QStyledItemDelegate::initStyleOption(option, index);
        if (!index.parent().isValid()) {
            option->displayAlignment = Qt::AlignLeft | Qt::AlignBottom;
        }
    }
};

/// The sheet's list. Space does the line's deed, Enter opens what it is about, L leaves it out.
class WorkList : public QTreeView {
    Q_DECLARE_TR_FUNCTIONS(WorkList)
  public:
    using Deed = std::function<void(const QString& key)>;
    WorkList(WorkModel* model, Deed done, Deed open, Deed leave_out);
    void show_lines();
    [[nodiscard]] const WorkLine* current() const { return model_->line_at(currentIndex()); }
    void set_current(const QString& key);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fit_columns();
    WorkModel* model_;
    Deed done_;
    Deed open_;
    Deed leave_out_;
};

WorkList::WorkList(WorkModel* model, Deed done, Deed open, Deed leave_out)
    : model_(model), done_(std::move(done)), open_(std::move(open)),
      leave_out_(std::move(leave_out)) {
    look::named(this, "work_list", tr("Work of the day"));
    setModel(model);
    setItemDelegate(new LineRoom(this));
    setRootIsDecorated(false);
    setItemsExpandable(false);
    setIndentation(0);
    setUniformRowHeights(false);
    setAllColumnsShowFocus(true);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTextElideMode(Qt::ElideRight);
    setTabKeyNavigation(false);
    const auto& colours = look::tokens();
    setStyleSheet(QStringLiteral("QTreeView::indicator { border: 1px solid %1; background: %2; }"
                                 "QTreeView::indicator:checked { background: %3; }")
                      .arg(colours.muted.name(), colours.surface.name(), colours.done.name()));
    header()->setStretchLastSection(false);
    header()->setTextElideMode(Qt::ElideRight);
    header()->setSectionsMovable(false);
    connect(this, &QTreeView::doubleClicked, this, [this](const QModelIndex& index) {
        if (const auto* line = model_->line_at(index)) {
            open_(line->key);
        }
    });
}

void WorkList::fit_columns() {
    const int rest = viewport()->width();
    const auto at_most = [&](int column, double share) {
        resizeColumnToContents(column);
        setColumnWidth(column, std::min(columnWidth(column) + look::lines(this, 0.6),
                                        static_cast<int>(rest * share)));
        return columnWidth(column);
    };
    const int taken = at_most(WorkModel::work_column, 0.36) +
                      at_most(WorkModel::where_column, 0.20) +
                      at_most(WorkModel::when_column, 0.24);
    setColumnWidth(WorkModel::what_column, std::max(look::lines(this, 4), rest - taken));
}

void WorkList::show_lines() {
    for (int row = 0; row < model_->rowCount({}); ++row) {
        setFirstColumnSpanned(row, {}, true);
        expand(model_->index(row, 0, {}));
    }
    fit_columns();
}

void WorkList::set_current(const QString& key) {
    QModelIndex index = model_->index_of(key);
    if (!index.isValid() && model_->rowCount({}) > 0) {
        index = model_->index(0, 0, model_->index(0, 0, {}));
    }
    setCurrentIndex(index);
}

void WorkList::keyPressEvent(QKeyEvent* event) {
    const auto* line = current();
    if (line != nullptr && event->modifiers() == Qt::NoModifier) {
        const QString key = line->key; // the deed reloads the lines
        if (event->key() == Qt::Key_Space) {
            done_(key);
            return;
        }
        if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
            open_(key);
            return;
        }
        if (event->key() == Qt::Key_Delete) {
            leave_out_(key);
            return;
        }
    }
    QTreeView::keyPressEvent(event);
}

void WorkList::mouseReleaseEvent(QMouseEvent* event) {
    const QModelIndex index = indexAt(event->position().toPoint());
    const auto* line = model_->line_at(index);
    QTreeView::mouseReleaseEvent(event);
    // The box stands at the left of the first column, about as wide as a line is high.
    if (line != nullptr && event->button() == Qt::LeftButton && line->deed != WorkDeed::open &&
        index.column() == WorkModel::work_column &&
        event->position().x() < visualRect(index).left() + look::lines(this, 1.5)) {
        done_(QString(line->key));
    }
}

void WorkList::resizeEvent(QResizeEvent* event) {
    QTreeView::resizeEvent(event);
    fit_columns();
}

/// What to do today, over all batches: the first page of the day.
class TodayPage : public Page {
    Q_DECLARE_TR_FUNCTIONS(TodayPage)
  public:
    TodayPage(presenters::Workspace& workspace, QWidget* parent);
    void refresh() override;
    std::vector<print::Printable> printables() override;

  private:
    [[nodiscard]] QWidget* build_full();
    void show_work();
    void do_line(const QString& key);
    void open_line(const QString& key);
    void leave_out(const QString& key);
    void show_current();
    [[nodiscard]] const WorkLine* line(const QString& key) const;

    presenters::DayWork* work_;
    WorkModel* model_;
    WorkList* list_ = nullptr;
    QStackedWidget* stack_;
    QLabel* headline_ = nullptr;
    look::Banner* clear_ = nullptr;
    QLabel* hint_ = nullptr;
    QPushButton* do_ = nullptr;
    QPushButton* leave_ = nullptr;
    QString wanted_;
};

TodayPage::TodayPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent), work_(new presenters::DayWork(workspace, this)),
      model_(new WorkModel(this)) {
    const auto frame = frame_page(this, tr("Today"));
    auto* round = look::button("to_weigh_in", tr("&Weigh-in round"));
    auto* calendar = look::button("to_calendar", tr("&Calendar"));
    frame.head->addWidget(round);
    frame.head->addWidget(calendar);
    connect(round, &QPushButton::clicked, this, [this] {
        Q_EMIT go({QStringLiteral("weigh_in"), 0, {}});
    });
    connect(calendar, &QPushButton::clicked, this, [this] {
        Q_EMIT go({QStringLiteral("calendar"), 0, {}});
    });
    stack_ = new QStackedWidget(this);
    auto* empty = new look::EmptyState(
        "today_empty", tr("No work yet"),
        tr("Once a batch is planned, this page lists each day's work across all batches: turning, "
           "rubbing, weighing, looking at the chambers, judging what is ready. One key ticks a "
           "line off; what was missed stays at the top."),
        tr("Plan a batch"));
    connect(empty->action(), &QPushButton::clicked, this, [this] {
        Q_EMIT go({QStringLiteral("plan"), 0, {}});
    });
    stack_->addWidget(empty);
    stack_->addWidget(build_full());
    frame.body->addWidget(stack_, 1);
    setFocusProxy(list_);
    connect(&workspace.forecasts(), &presenters::Forecasts::arrived, this, [this] {
        if (isVisible()) {
            show_work();
        }
    });
}

QWidget* TodayPage::build_full() {
    auto* full = new QWidget;
    auto* column = new QVBoxLayout(full);
    column->setContentsMargins(0, 0, 0, 0);
    headline_ = look::section_title({});
    headline_->setObjectName(QStringLiteral("today_headline"));
    column->addWidget(headline_);
    clear_ = new look::Banner("today_clear");
    column->addWidget(clear_);
    list_ = new WorkList(
        model_, [this](const QString& key) { do_line(key); },
        [this](const QString& key) { open_line(key); },
        [this](const QString& key) { leave_out(key); });
    column->addWidget(list_, 1);
    list_->setMinimumHeight(look::lines(this, 9));
    auto* foot = new look::SideBySide(34);
    hint_ = look::caption({});
    hint_->setObjectName(QStringLiteral("line_hint"));
    foot->add(hint_, 1);
    leave_ = look::button("leave_out", tr("&Leave out this time"));
    do_ = look::button("do_line", tr("&Done"), look::ButtonLook::primary);
    auto* keys = new QHBoxLayout;
    keys->addStretch(1);
    keys->addWidget(leave_);
    keys->addWidget(do_);
    foot->add(keys, 0);
    column->addWidget(foot);
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &TodayPage::show_current);
    connect(do_, &QPushButton::clicked, this, [this] {
        if (const auto* current = list_->current()) {
            do_line(QString(current->key));
        }
    });
    connect(leave_, &QPushButton::clicked, this, [this] {
        if (const auto* current = list_->current()) {
            leave_out(QString(current->key));
        }
    });
    return full;
}

void TodayPage::refresh() {
    show_work();
    work_->ask_forecasts(); // what is ready or soon will be is added when they arrive
}

std::vector<print::Printable> TodayPage::printables() {
    return {list_printable(*model_, {.title = tr("Work of the day"),
                                     .boxes = true,
                                     .pen_columns = {tr("Remarks")},
                                     .empty = tr("Nothing is left for today.")})};
}

void TodayPage::show_work() {
    const QString kept = list_->current() != nullptr ? list_->current()->key : QString();
    work_->load();
    model_->set_lines(work_->lines());
    list_->show_lines();
    list_->set_current(wanted_.isEmpty() ? kept : wanted_);
    wanted_.clear();
    const bool nothing = work_->lines().empty();
    stack_->setCurrentIndex(nothing ? 0 : 1);
    headline_->setText(QStringLiteral("%1 · %2").arg(
        text::short_words(workspace_.today(), workspace_.style()), work_->headline()));
    const bool clear =
        work_->count(models::WorkGroup::overdue) == 0 && work_->count(models::WorkGroup::due) == 0;
    if (!nothing && clear) {
        clear_->say(QStringLiteral("done"), tr("Nothing is left for today."));
    } else {
        clear_->hide();
    }
    show_current();
}

const WorkLine* TodayPage::line(const QString& key) const {
    return model_->line_at(model_->index_of(key));
}

void TodayPage::show_current() {
    const auto* current = list_->current();
    do_->setEnabled(current != nullptr);
    leave_->setVisible(current != nullptr && current->deed == WorkDeed::open);
    if (current == nullptr) {
        hint_->setText({});
        do_->setText(tr("&Done"));
        return;
    }
    switch (current->deed) {
    case WorkDeed::tick:
        do_->setText(tr("&Done"));
        break;
    case WorkDeed::stage:
        do_->setText(tr("&Do it now"));
        break;
    case WorkDeed::open:
        do_->setText(tr("&Open"));
        break;
    case WorkDeed::untick:
        do_->setText(tr("&Take back"));
        break;
    }
    //: %1 what the key does
    hint_->setText(current->deed == WorkDeed::open
                       ? tr("Space or Enter: %1 Delete: leave it out this time.").arg(current->hint)
                       : tr("Space: %1").arg(current->hint));
}

void TodayPage::do_line(const QString& key) {
    const auto* current = line(key);
    if (current == nullptr) {
        return;
    }
    if (current->deed == WorkDeed::open) {
        open_line(key);
        return;
    }
    wanted_ = model_->neighbour(key); // the next line is where the eye goes
    if (!work_->do_line(key)) {
        wanted_.clear();
    }
    list_->setFocus();
}

void TodayPage::open_line(const QString& key) {
    const auto* current = line(key);
    if (current == nullptr) {
        return;
    }
    if (current->page.isEmpty()) {
        do_line(key);
        return;
    }
    Q_EMIT go({current->page, current->row, current->detail});
}

void TodayPage::leave_out(const QString& key) {
    const auto* current = line(key);
    if (current == nullptr || current->deed != WorkDeed::open) {
        return;
    }
    wanted_ = model_->neighbour(key);
    work_->leave_out(key);
    list_->setFocus();
}

} // namespace

PageEntry today_page() {
    return {"today", Side::round, TodayPage::tr("Today"),
            TodayPage::tr("The day's work across all batches"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new TodayPage(workspace, parent);
            }};
}

} // namespace ui::pages
