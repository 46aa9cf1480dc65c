#include "app/window/session.h"

#include "core/services/demo_book.h"
#include "ui/look/theme.h"
#include "ui/text/error_words.h"
#include "ui/text/languages.h"

#include <QApplication>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QMessageBox>
#include <QStandardPaths>
#include <QTemporaryDir>

namespace app::window {

core::units::Instant system_now() {
    return core::units::Instant::from_unix_seconds(QDateTime::currentSecsSinceEpoch());
}

namespace {

ui::look::Mode mode_of(ui::presenters::ThemeChoice choice) {
    switch (choice) {
    case ui::presenters::ThemeChoice::light:
        return ui::look::Mode::light;
    case ui::presenters::ThemeChoice::dark:
        return ui::look::Mode::dark;
    case ui::presenters::ThemeChoice::system:
        break;
    }
    return ui::look::Mode::system;
}

} // namespace

Session::Session(QSettings& settings)
    : settings_(settings),
      preferences_(ui::presenters::load_preferences(settings, QLocale::system())) {
    ui::text::speak(*qApp, preferences_.language, QLocale::system());
    ui::look::apply_theme(*qApp, mode_of(preferences_.theme));
}

Session::~Session() = default;

QString Session::own_book() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    return QDir(folder).filePath(QStringLiteral("book.saltloft"));
}

bool Session::open(const QString& path, bool demo, bool create_if_missing) {
    core::services::OpenOptions options{system_now()};
    options.create_if_missing = create_if_missing;
    auto book = core::services::Book::open(path.toStdString(), options);
    if (!book) {
        return offer_ways_out(book.error(), path);
    }
    if (!demo && !book->is_read_only()) {
        // A failed backup must not keep anybody from their book; `check` shows its absence.
        static_cast<void>(book->backup_if_due(system_now()));
    }
    auto workspace = std::make_unique<ui::presenters::Workspace>(std::move(*book), preferences_,
                                                                 QLocale::system(), system_now);
    workspace->set_demo(demo || workspace->book().preference("demo") == "1");
    auto window = make_window(*workspace);
    connect(workspace.get(), &ui::presenters::Workspace::changed, this,
            &Session::preferences_changed);
    window->show();
    // The old window goes before its workspace, on which its pages lean.
    window_.swap(window);
    window.reset();
    workspace_.swap(workspace);
    return true;
}

std::unique_ptr<ui::pages::MainWindow> Session::make_window(ui::presenters::Workspace& workspace) {
    using ui::pages::MainWindow;
    auto window = std::make_unique<MainWindow>(workspace, &settings_);
    const auto queued = Qt::QueuedConnection; // each of them may replace the window that asks
    connect(window.get(), &MainWindow::open_asked, this, &Session::ask_open, queued);
    connect(window.get(), &MainWindow::new_asked, this, &Session::ask_new, queued);
    connect(window.get(), &MainWindow::demo_asked, this, &Session::open_demo, queued);
    connect(window.get(), &MainWindow::backup_asked, this, &Session::ask_backup, queued);
    connect(window.get(), &MainWindow::restore_asked, this, &Session::ask_restore, queued);
    connect(window.get(), &MainWindow::check_asked, this, &Session::ask_check, queued);
    return window;
}

void Session::speak_anew() {
    ui::text::speak(*qApp, preferences_.language, QLocale::system());
    auto window = make_window(*workspace_);
    const QString field = window_->focusWidget() ? window_->focusWidget()->objectName() : QString();
    window->restoreGeometry(window_->saveGeometry());
    window->show_place(window_->place());
    window->show();
    if (auto* same = window->findChild<QWidget*>(field); same != nullptr && !field.isEmpty()) {
        same->setFocus();
    }
    window_.swap(window);
}

bool Session::open_demo() {
    QTemporaryDir folder(QDir::tempPath() + QStringLiteral("/saltloft-demo-XXXXXX"));
    folder.setAutoRemove(false);
    const QString path = folder.filePath(QStringLiteral("demonstration.saltloft"));
    {
        // Filled and closed before it is opened like any other book.
        auto book = core::services::Book::create(path.toStdString(), {system_now()});
        const auto filled = book ? core::services::fill_demo_book(*book, {system_now()})
                                 : core::base::Status(tl::unexpected(book.error()));
        if (!filled) {
            tell(filled.error(), path);
            return false;
        }
    }
    return open(path, true, false);
}

bool Session::ask_open() {
    const QString path =
        QFileDialog::getOpenFileName(window_.get(), tr("Open a book"), QFileInfo(own_book()).path(),
                                     tr("Saltloft books (*.saltloft);;All files (*)"));
    return !path.isEmpty() && open(path, false, false);
}

bool Session::ask_new() {
    QString path =
        QFileDialog::getSaveFileName(window_.get(), tr("New book"), QFileInfo(own_book()).path(),
                                     tr("Saltloft books (*.saltloft)"));
    if (path.isEmpty()) {
        return false;
    }
    if (!path.endsWith(QLatin1String(".saltloft"))) {
        path += QLatin1String(".saltloft");
    }
    core::services::OpenOptions options{system_now()};
    if (const auto made = core::services::Book::create(path.toStdString(), options); !made) {
        tell(made.error(), path);
        return false;
    }
    return open(path, false, false);
}

void Session::ask_backup() {
    const QString path = QFileDialog::getSaveFileName(
        window_.get(), tr("Back up a copy"), QDir::homePath(), tr("Saltloft books (*.saltloft)"));
    if (path.isEmpty()) {
        return;
    }
    const auto summary = workspace_->book().backup_to(path.toStdString());
    if (!summary) {
        tell(summary.error(), path);
        return;
    }
    const auto count = [](std::int64_t many) { return static_cast<int>(many); };
    QMessageBox::information(window_.get(), tr("Back up a copy"),
                             tr("The copy was written and read back: %1, %2, %3.")
                                 .arg(tr("%n batch(es)", nullptr, count(summary->batches)),
                                      tr("%n piece(s)", nullptr, count(summary->pieces)),
                                      tr("%n weighing(s)", nullptr, count(summary->weighings))));
}

void Session::preferences_changed() {
    if (preferences_ == workspace_->preferences()) {
        return;
    }
    const bool another_language = preferences_.language != workspace_->preferences().language;
    const bool recolour = preferences_.theme != workspace_->preferences().theme;
    preferences_ = workspace_->preferences();
    ui::presenters::save_preferences(settings_, preferences_);
    if (recolour) {
        ui::look::apply_theme(*qApp, mode_of(preferences_.theme));
    }
    if (another_language) {
        // Later: the page that was just used must not be destroyed under its own signal.
        QMetaObject::invokeMethod(this, &Session::speak_anew, Qt::QueuedConnection);
    }
}

core::base::Error Session::with_place(core::base::Error error, const QString& path) {
    if (error.detail.empty()) {
        error.detail = path.toStdString();
    }
    return error;
}

void Session::tell(const core::base::Error& error, const QString& path) {
    QMessageBox::warning(window_.get(), tr("Saltloft"),
                         ui::text::error_words(with_place(error, path)));
}

} // namespace app::window
