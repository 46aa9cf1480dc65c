// The part of a session that looks after the file of the book: restore, check, salvage, and what
// to do about a book that does not open.
#include "app/window/session.h"

#include "core/services/keeping.h"
#include "ui/pages/check_dialog.h"
#include "ui/pages/open_trouble_dialog.h"
#include "ui/pages/restore_dialog.h"
#include "ui/pages/salvage_dialog.h"

#include <QApplication>
#include <QFileInfo>
#include <QMessageBox>

namespace app::window {
namespace {

/// While one book goes and the next comes there is no window; that must not end the program.
class BetweenBooks {
  public:
    BetweenBooks() : quits_(QApplication::quitOnLastWindowClosed()) {
        QApplication::setQuitOnLastWindowClosed(false);
    }
    ~BetweenBooks() { QApplication::setQuitOnLastWindowClosed(quits_); }
    BetweenBooks(const BetweenBooks&) = delete;
    BetweenBooks& operator=(const BetweenBooks&) = delete;

  private:
    bool quits_;
};

bool is_same_file(const QString& a, const QString& b) {
    return QFileInfo(a).absoluteFilePath() == QFileInfo(b).absoluteFilePath();
}

} // namespace

ui::text::Style Session::style() const {
    return ui::presenters::style_of(preferences_, QLocale::system());
}

QString Session::book_path() const {
    return workspace_ ? QString::fromStdString(workspace_->book().path()) : QString();
}

void Session::close_book() {
    window_.reset(); // its pages lean on the workspace
    workspace_.reset();
}

void Session::ask_restore() {
    restore_over(book_path());
}

bool Session::restore_over(const QString& path) {
    const BetweenBooks between;
    std::string backup;
    {
        ui::pages::RestoreDialog dialog(path.toStdString(), style(), window_.get());
        if (dialog.exec() != QDialog::Accepted) {
            return false;
        }
        backup = dialog.backup();
    }
    if (workspace_ && is_same_file(book_path(), path)) {
        close_book();
    }
    const auto kept = core::services::restore(path.toStdString(), backup, system_now());
    if (!kept) {
        tell(kept.error(), path);
    }
    // Also after a failure: the book as it was is still in its place.
    const bool opened = open(path, false, false);
    if (kept && opened) {
        QMessageBox::information(
            window_.get(), tr("Restore a backup"),
            kept->empty() ? tr("The backup is in its place and open.")
                          : tr("The backup is in its place and open. The book as it was before is "
                               "kept as %1.")
                                .arg(QString::fromStdString(*kept)));
    }
    end_without_window();
    return opened;
}

void Session::ask_check() {
    const QString path = book_path();
    bool is_damaged = false;
    for (const auto& finding : workspace_->book().opening_findings()) {
        is_damaged = is_damaged || finding.code == "book_damaged";
    }
    const bool writes = !workspace_->is_read_only();
    ui::pages::CheckDialog dialog(
        {path.toStdString(), writes, !workspace_->is_demo() && (writes || is_damaged)}, style(),
        window_.get());
    connect(&dialog, &ui::pages::CheckDialog::mended, workspace_.get(),
            &ui::presenters::Workspace::changed);
    dialog.exec();
    switch (dialog.wish()) {
    case ui::pages::CheckDialog::Wish::restore:
        // After this dialog is gone: the window that owns it may go.
        QMetaObject::invokeMethod(this, &Session::ask_restore, Qt::QueuedConnection);
        break;
    case ui::pages::CheckDialog::Wish::salvage:
        QMetaObject::invokeMethod(
            this, [this, path] { salvage_from(path); }, Qt::QueuedConnection);
        break;
    case ui::pages::CheckDialog::Wish::none:
        break;
    }
}

bool Session::salvage_from(const QString& path) {
    const BetweenBooks between;
    QString made;
    {
        ui::pages::SalvageDialog dialog(path.toStdString(), style(), system_now(), window_.get());
        if (dialog.exec() == QDialog::Accepted) {
            made = dialog.target();
        }
    }
    return !made.isEmpty() && open(made, false, false);
}

bool Session::offer_ways_out(const core::base::Error& error, const QString& path) {
    const BetweenBooks between;
    const auto backups = core::services::backups_of(path.toStdString());
    const auto ways = ui::pages::ways_out(error, backups && !backups->empty(), window_ != nullptr);
    ui::pages::WayOut way{};
    {
        ui::pages::OpenTroubleDialog dialog(with_place(error, path), ways, window_.get());
        if (dialog.exec() != QDialog::Accepted) {
            return false;
        }
        way = dialog.way();
    }
    switch (way) {
    case ui::pages::WayOut::restore:
        return restore_over(path);
    case ui::pages::WayOut::salvage:
        return salvage_from(path);
    case ui::pages::WayOut::open_another:
        return ask_open();
    case ui::pages::WayOut::make_new:
        break;
    }
    return ask_new();
}

void Session::end_without_window() {
    if (!window_) {
        QCoreApplication::exit(3); // as when the first book does not open
    }
}

} // namespace app::window
