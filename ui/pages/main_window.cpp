#include "ui/pages/main_window.h"

#include "ui/look/pieces.h"
#include "ui/pages/page_registry.h"
#include "ui/presenters/workspace.h"
#include "ui/text/finding_words.h"

#include <QAction>
#include <QCloseEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QListWidget>
#include <QSettings>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTimer>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

constexpr int id_role = Qt::UserRole;

QString side_title(Side side) {
    switch (side) {
    case Side::round:
        return MainWindow::tr("Daily round");
    case Side::book:
        return MainWindow::tr("The book");
    case Side::house:
        return MainWindow::tr("The house");
    case Side::inner:
        break;
    }
    return {};
}

} // namespace

MainWindow::MainWindow(presenters::Workspace& workspace, QSettings* settings, QWidget* parent)
    : QMainWindow(parent), workspace_(workspace), settings_(settings) {
    const auto entries = all_pages();
    entries_ = QVector<PageEntry>(entries.begin(), entries.end());
    look::named(this, "main_window", tr("Saltloft"));
    auto* body = new QWidget(this);
    body->setObjectName(QStringLiteral("body"));
    auto* row = new QHBoxLayout(body);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    build_side();
    row->addWidget(side_);
    build_middle();
    auto* middle = new QVBoxLayout;
    middle->setContentsMargins(0, 0, 0, 0);
    middle->setSpacing(0);
    for (auto* banner : {demo_banner_, read_only_banner_, problem_banner_}) {
        middle->addWidget(banner);
    }
    middle->addWidget(stack_, 1);
    row->addLayout(middle, 1);
    setCentralWidget(body);
    status_ = look::named(new QLabel(this), "status_line", tr("What was done last"));
    book_label_ = look::named(new QLabel(this), "book_name", tr("The open book"));
    statusBar()->addWidget(status_, 1);
    statusBar()->addPermanentWidget(book_label_);
    statusBar()->setSizeGripEnabled(false);
    build_menus();
    connect(&workspace_, &presenters::Workspace::changed, this, &MainWindow::book_changed);
    connect(&workspace_, &presenters::Workspace::problem, this, &MainWindow::problem);
    connect(&workspace_, &presenters::Workspace::done, status_, &QLabel::setText);
    setMinimumSize(640, 400);
    show_banners();
    restore();
}

MainWindow::~MainWindow() = default;

void MainWindow::build_side() {
    side_ = look::named(new QListWidget(this), "side", tr("Places"));
    side_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const Side group : {Side::round, Side::book, Side::house}) {
        bool first = true;
        for (const auto& entry : entries_) {
            if (entry.side != group) {
                continue;
            }
            if (first) {
                auto* heading = new QListWidgetItem(side_title(group), side_);
                heading->setFlags(Qt::NoItemFlags);
                QFont small = side_->font();
                small.setWeight(QFont::DemiBold);
                heading->setFont(small);
                first = false;
            }
            auto* item = new QListWidgetItem(entry.title, side_);
            item->setData(id_role, QString::fromLatin1(entry.id));
            item->setToolTip(entry.hint);
            item->setData(Qt::AccessibleDescriptionRole, entry.hint);
        }
    }
    side_->setFixedWidth(std::min(side_->sizeHintForColumn(0) + look::lines(side_, 1.2), 320));
    connect(side_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        if (item != nullptr && item->data(id_role).toString() != place_.page) {
            show_place({item->data(id_role).toString(), 0, {}});
        }
    });
    // A click on the place one is in leaves an inner page (a piece, say).
    connect(side_, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) {
        const Place there{item->data(id_role).toString(), 0, {}};
        if (!there.page.isEmpty() && !(place_ == there)) {
            show_place(there);
        }
    });
}

void MainWindow::build_middle() {
    demo_banner_ = new look::Banner("demo_banner", this);
    read_only_banner_ = new look::Banner("read_only_banner", this);
    problem_banner_ = new look::Banner("problem_banner", this);
    stack_ = look::named(new QStackedWidget(this), "pages", tr("Page"));
}

void MainWindow::show_banners() {
    demo_banner_->say(QStringLiteral("note"),
                      workspace_.is_demo()
                          ? tr("Invented data: this book shows a producer that does not exist. "
                               "Nothing you do here touches your own book.")
                          : QString());
    QStringList lines;
    for (const auto& finding : workspace_.book().opening_findings()) {
        lines << text::finding_words(finding, workspace_.style());
    }
    if (workspace_.is_read_only() && lines.isEmpty()) {
        lines << tr("This book is open for reading only.");
    }
    read_only_banner_->say(QStringLiteral("caution"), lines.join(QLatin1Char('\n')));
    const QString name = QFileInfo(QString::fromStdString(workspace_.book().path())).fileName();
    book_label_->setText(workspace_.is_demo() ? tr("Demonstration book") : name);
    setWindowTitle(tr("%1 \u2013 Saltloft").arg(book_label_->text()));
}

void MainWindow::problem(const QString& sentence) {
    problem_banner_->say(QStringLiteral("stop"), sentence);
    status_->setText({});
}

Page* MainWindow::page() const {
    return made_.value(place_.page);
}

Page* MainWindow::page_of(const QString& id) {
    if (auto* made = made_.value(id)) {
        return made;
    }
    for (const auto& entry : entries_) {
        if (id != QLatin1String(entry.id)) {
            continue;
        }
        Page* page = entry.make(workspace_, stack_);
        page->setObjectName(QStringLiteral("page_") + id);
        page->setAccessibleName(entry.title);
        connect(page, &Page::go, this, &MainWindow::show_place);
        connect(page, &Page::said, status_, &QLabel::setText);
        stack_->addWidget(page);
        made_.insert(id, page);
        return page;
    }
    return nullptr;
}

void MainWindow::show_place(const Place& place) {
    Place there = place;
    Page* page = page_of(there.page);
    if (page == nullptr) {
        there = {QString::fromLatin1(entries_.front().id), 0, {}};
        page = page_of(there.page);
    }
    remember(place_);
    place_ = there;
    problem_banner_->say({}, {});
    for (int row = 0; row < side_->count(); ++row) {
        if (side_->item(row)->data(id_role).toString() == there.page) {
            side_->setCurrentRow(row);
        }
    }
    page->arrive(there);
    page->refresh();
    stack_->setCurrentWidget(page);
    back_->setEnabled(!trail_.isEmpty());
}

void MainWindow::remember(const Place& place) {
    if (!place.page.isEmpty()) {
        trail_.push_back(place);
        if (trail_.size() > 50) {
            trail_.removeFirst();
        }
    }
}

void MainWindow::go_back() {
    if (trail_.isEmpty()) {
        return;
    }
    const Place there = trail_.takeLast();
    place_ = {};
    show_place(there);
}

void MainWindow::book_changed() {
    problem_banner_->say({}, {});
    const auto set = [](QAction* which, const std::optional<QString>& words, const QString& idle) {
        which->setText(words.value_or(idle));
        which->setEnabled(words.has_value());
    };
    set(undo_, workspace_.is_read_only() ? std::nullopt : workspace_.undo_words(), tr("Undo"));
    set(redo_, workspace_.is_read_only() ? std::nullopt : workspace_.redo_words(), tr("Redo"));
    if (auto* shown = page()) {
        shown->refresh();
    }
}

void MainWindow::restore() {
    if (settings_ == nullptr ||
        !restoreGeometry(settings_->value(QStringLiteral("window/geometry")).toByteArray())) {
        resize(1180, 760);
    }
    const QString id = settings_ == nullptr
                           ? QString()
                           : settings_->value(QStringLiteral("window/place")).toString();
    show_place({id, 0, {}});
    book_changed();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (settings_ != nullptr) {
        settings_->setValue(QStringLiteral("window/geometry"), saveGeometry());
        for (const auto& entry : entries_) {
            // A page about one piece would open on nothing next time.
            if (place_.page == QLatin1String(entry.id) && entry.side != Side::inner) {
                settings_->setValue(QStringLiteral("window/place"), place_.page);
            }
        }
    }
    QMainWindow::closeEvent(event);
}

void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    // Another instance may have written while this window was in the back.
    if (event->type() == QEvent::ActivationChange && isActiveWindow() && page() != nullptr) {
        QTimer::singleShot(0, this, [this] { book_changed(); });
    }
}

} // namespace ui::pages
