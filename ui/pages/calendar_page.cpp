#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/month_view.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/save_calendar.h"
#include "ui/presenters/plan_calendar.h"
#include "ui/presenters/workspace.h"
#include "ui/text/date_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

/// A month of stages and work over all open batches.
class CalendarPage : public Page {
    Q_DECLARE_TR_FUNCTIONS(CalendarPage)
  public:
    CalendarPage(presenters::Workspace& workspace, QWidget* parent);
    void refresh() override;

  private:
    [[nodiscard]] QWidget* build_full();
    void step(int months);
    void show_month();
    void show_day();
    void open_batch();
    void save();

    presenters::PlanCalendar* calendar_;
    models::MonthModel* model_;
    MonthView* view_ = nullptr;
    QStackedWidget* stack_;
    QLabel* month_title_ = nullptr;
    QLabel* day_title_ = nullptr;
    QListWidget* day_list_ = nullptr;
    QDate month_; ///< its first day
    core::units::Day day_;
};

CalendarPage::CalendarPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent), calendar_(new presenters::PlanCalendar(workspace, this)),
      model_(new models::MonthModel(workspace.style().locale, this)), day_(workspace.today()) {
    month_ = text::to_qdate(day_);
    month_.setDate(month_.year(), month_.month(), 1);
    const auto frame = frame_page(this, tr("Calendar"));
    auto* save = look::button("save_calendar", tr("&Save as calendar file…"));
    frame.head->addWidget(save);
    connect(save, &QPushButton::clicked, this, &CalendarPage::save);
    stack_ = new QStackedWidget(this);
    auto* empty = new look::EmptyState(
        "calendar_empty", tr("No plan yet"),
        tr("Stages and work of every open batch stand here day by day. Save them as a calendar "
           "file to see them on a phone; saving again brings moved days up to date."),
        tr("Plan a batch"));
    connect(empty->action(), &QPushButton::clicked, this, [this] {
        Q_EMIT go({QStringLiteral("plan"), 0, {}});
    });
    stack_->addWidget(empty);
    stack_->addWidget(build_full());
    frame.body->addWidget(stack_, 1);
    setFocusProxy(view_);
}

QWidget* CalendarPage::build_full() {
    auto* full = new QWidget;
    auto* column = new QVBoxLayout(full);
    column->setContentsMargins(0, 0, 0, 0);
    auto* head = new look::HeadRow(look::lines(this, 0.4));
    auto* before = look::button("month_before", tr("&Earlier"));
    auto* today = look::button("month_today", tr("&Today"));
    auto* after = look::button("month_after", tr("&Later"));
    month_title_ = look::section_title({});
    month_title_->setObjectName(QStringLiteral("month_title"));
    head->addWidget(month_title_);
    head->addWidget(before);
    head->addWidget(today);
    head->addWidget(after);
    column->addLayout(head);
    view_ = new MonthView("month", tr("Days of the month"), model_);
    view_->setMinimumHeight(look::lines(this, 14));
    auto* row = new look::SideBySide(36);
    row->add(view_, 3);
    auto* side = new QVBoxLayout;
    day_title_ = look::section_title({});
    day_title_->setObjectName(QStringLiteral("day_title"));
    day_title_->setWordWrap(true);
    side->addWidget(day_title_);
    day_list_ = look::named(new QListWidget, "day_list", tr("On this day"));
    day_list_->setWordWrap(true);
    side->addWidget(day_list_, 1);
    day_list_->setMinimumHeight(look::lines(this, 5));
    row->add(side, 1);
    column->addWidget(row, 1);
    connect(before, &QPushButton::clicked, this, [this] { step(-1); });
    connect(after, &QPushButton::clicked, this, [this] { step(1); });
    connect(today, &QPushButton::clicked, this, [this] { step(0); });
    connect(view_, &MonthView::month_asked, this, &CalendarPage::step);
    connect(view_, &MonthView::day_changed, this, [this] {
        day_ = view_->current_day();
        show_day();
    });
    connect(view_, &MonthView::opened, this, [this] { day_list_->setFocus(); });
    connect(day_list_, &QListWidget::itemActivated, this, &CalendarPage::open_batch);
    return full;
}

void CalendarPage::refresh() {
    const auto last = text::to_day(month_.addMonths(1)) + 7;
    calendar_->load(std::max(last, workspace_.today() + 7));
    stack_->setCurrentIndex(calendar_->is_empty() ? 0 : 1);
    show_month();
}

void CalendarPage::step(int months) {
    if (months == 0) {
        day_ = workspace_.today();
    } else {
        const QDate day = text::to_qdate(day_).addMonths(months);
        day_ = text::to_day(day);
    }
    const QDate day = text::to_qdate(day_);
    month_.setDate(day.year(), day.month(), 1);
    refresh();
}

void CalendarPage::show_month() {
    const auto day = day_; // the reset moves the view's current cell
    model_->show_month(month_.year(), month_.month(), workspace_.today(),
                       [this](core::units::Day d) { return calendar_->entries(d); });
    view_->set_current_day(day);
    month_title_->setText(text::month_words(text::to_day(month_), workspace_.style()));
    day_ = day;
    show_day();
}

void CalendarPage::show_day() {
    day_title_->setText(text::short_words(day_, workspace_.style()));
    day_list_->clear();
    const auto& entries = calendar_->entries(day_);
    for (const auto& entry : entries) {
        auto* item = new QListWidgetItem(entry.title, day_list_);
        item->setData(Qt::UserRole, entry.batch);
    }
    if (entries.empty()) {
        auto* item = new QListWidgetItem(tr("Nothing on this day."), day_list_);
        item->setFlags(Qt::ItemIsEnabled);
    }
}

void CalendarPage::open_batch() {
    const auto* item = day_list_->currentItem();
    const qint64 batch = item != nullptr ? item->data(Qt::UserRole).toLongLong() : 0;
    if (batch > 0) {
        Q_EMIT go({QStringLiteral("batches"), batch, {}});
    }
}

void CalendarPage::save() {
    const auto file = calendar_->file();
    if (!file) {
        return;
    }
    QString problem;
    const QString sentence = save_calendar(this, *file, QStringLiteral("saltloft.ics"), &problem);
    if (!problem.isEmpty()) {
        Q_EMIT workspace_.problem(problem);
    } else if (!sentence.isEmpty()) {
        Q_EMIT said(sentence);
    }
}

} // namespace

PageEntry calendar_page() {
    return {"calendar", Side::book, CalendarPage::tr("Calendar"),
            CalendarPage::tr("Stages and work by day, and as a calendar file"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new CalendarPage(workspace, parent);
            }};
}

} // namespace ui::pages
