// The menus of the window, apart from its body: every verb has its words and its keys here.
#include "ui/pages/main_window.h"

#include "ui/look/pieces.h"
#include "ui/pages/print_dialog.h"
#include "ui/presenters/workspace.h"

#include <QAction>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>

namespace ui::pages {

QAction* MainWindow::action(const char* name, const QString& text, const QKeySequence& keys) {
    auto* made = new QAction(text, this);
    made->setObjectName(QLatin1String(name));
    made->setShortcut(keys);
    return made;
}

void MainWindow::build_menus() {
    look::named(menuBar(), "menus", tr("Menus"));
    build_book_menu();
    build_edit_menu();
    build_go_menu();
    build_help_menu();
}

/// Empty when a backup may be put in the place of this book. A damaged book is only read, and is
/// the very one to restore.
QString MainWindow::why_no_restore() const {
    if (workspace_.is_demo()) {
        return tr("The demonstration book is made anew each time; there is nothing to restore.");
    }
    if (!workspace_.is_read_only()) {
        return {};
    }
    for (const auto& finding : workspace_.book().opening_findings()) {
        if (finding.code == "book_in_use") {
            return tr("This book is open elsewhere. Close it there and open it again to restore a "
                      "backup.");
        }
        if (finding.code == "book_read_only") {
            return tr("This book may only be read by you. Free the permissions of the file and its "
                      "folder to restore a backup.");
        }
    }
    return {};
}

void MainWindow::build_book_menu() {
    QMenu* menu = menuBar()->addMenu(tr("&Book"));
    look::named(menu, "menu_book", tr("Book"));
    QAction* fresh = action("action_new", tr("&New book…"), QKeySequence::New);
    connect(fresh, &QAction::triggered, this, &MainWindow::new_asked);
    QAction* open = action("action_open", tr("&Open book…"), QKeySequence::Open);
    connect(open, &QAction::triggered, this, &MainWindow::open_asked);
    QAction* demo = action("action_demo", tr("Open the &demonstration book"));
    connect(demo, &QAction::triggered, this, &MainWindow::demo_asked);
    QAction* backup = action("action_backup", tr("&Back up a copy…"));
    connect(backup, &QAction::triggered, this, &MainWindow::backup_asked);
    QAction* restore = action("action_restore", tr("&Restore a backup…"));
    const QString why_not = why_no_restore();
    restore->setEnabled(why_not.isEmpty());
    restore->setStatusTip(why_not.isEmpty() ? tr("Puts an earlier copy in the place of this book")
                                            : why_not);
    restore->setToolTip(restore->statusTip());
    connect(restore, &QAction::triggered, this, &MainWindow::restore_asked);
    QAction* check = action("action_check", tr("&Check the book…"));
    check->setStatusTip(tr("Reads the book from end to end and says whether it is whole"));
    check->setToolTip(check->statusTip());
    connect(check, &QAction::triggered, this, &MainWindow::check_asked);
    menu->setToolTipsVisible(true);
    QAction* print = action("action_print", tr("&Print this page…"), QKeySequence::Print);
    connect(print, &QAction::triggered, this, &MainWindow::print_page);
    QAction* quit = action("action_quit", tr("&Quit"), QKeySequence::Quit);
    quit->setMenuRole(QAction::QuitRole);
    connect(quit, &QAction::triggered, this, &QWidget::close);
    menu->addActions({fresh, open, demo});
    menu->addSeparator();
    menu->addActions({backup, restore, check});
    menu->addSeparator();
    menu->addAction(print);
    menu->addSeparator();
    menu->addAction(quit);
}

void MainWindow::print_page() {
    auto printables = page() != nullptr ? page()->printables() : std::vector<print::Printable>();
    if (printables.empty()) {
        status_->setText(tr("This page has nothing to print."));
        return;
    }
    PrintDialog(workspace_, std::move(printables), this).exec();
}

void MainWindow::build_edit_menu() {
    QMenu* menu = menuBar()->addMenu(tr("&Edit"));
    look::named(menu, "menu_edit", tr("Edit"));
    undo_ = action("action_undo", tr("Undo"), QKeySequence::Undo);
    connect(undo_, &QAction::triggered, this, [this] { workspace_.undo(); });
    redo_ = action("action_redo", tr("Redo"), QKeySequence(tr("Ctrl+Shift+Z")));
    connect(redo_, &QAction::triggered, this, [this] { workspace_.redo(); });
    menu->addActions({undo_, redo_});
}

void MainWindow::build_go_menu() {
    QMenu* menu = menuBar()->addMenu(tr("&Go"));
    look::named(menu, "menu_go", tr("Go"));
    back_ = action("action_back", tr("&Back"), QKeySequence(QStringLiteral("Alt+Left")));
    connect(back_, &QAction::triggered, this, &MainWindow::go_back);
    menu->addAction(back_);
    QAction* side = action("action_side", tr("To the &places"), QKeySequence(QStringLiteral("F6")));
    connect(side, &QAction::triggered, this, [this] { side_->setFocus(Qt::ShortcutFocusReason); });
    menu->addAction(side);
    menu->addSeparator();
    int number = 0;
    for (const auto& entry : entries_) {
        if (entry.side == Side::inner) {
            continue;
        }
        ++number;
        const QKeySequence keys =
            number <= 9 ? QKeySequence(QStringLiteral("Ctrl+%1").arg(number)) : QKeySequence();
        const QString id = QString::fromLatin1(entry.id);
        QAction* go = action((QByteArray("action_go_") + entry.id).constData(), entry.title, keys);
        go->setStatusTip(entry.hint);
        connect(go, &QAction::triggered, this, [this, id] { show_place({id, 0, {}}); });
        menu->addAction(go);
    }
}

void MainWindow::build_help_menu() {
    QMenu* menu = menuBar()->addMenu(tr("&Help"));
    look::named(menu, "menu_help", tr("Help"));
    QAction* guide = action("action_guide", tr("&Guide to this page"), QKeySequence::HelpContents);
    connect(guide, &QAction::triggered, this, [this] {
        // On the guide itself F1 leads to its contents.
        show_place({QStringLiteral("guide"), 0, QStringLiteral("for:") + place_.page});
    });
    QAction* cautions = action("action_cautions", tr("&Cautions"));
    connect(cautions, &QAction::triggered, this, [this] {
        show_place({QStringLiteral("cautions"), 0, {}});
    });
    QAction* about = action("action_about", tr("&About Saltloft"));
    about->setMenuRole(QAction::AboutRole);
    connect(about, &QAction::triggered, this, [this] {
        QMessageBox::about(
            this, tr("About Saltloft"),
            tr("Saltloft %1\n\nPlan, weigh and follow cured and air-dried meat.\n\n"
               "Free software under the GNU General Public License, version 3 or later.\n"
               "It keeps records and computes; it does not decide whether food may be eaten.")
                .arg(QStringLiteral(SALTLOFT_VERSION)));
    });
    menu->addActions({guide, cautions, about});
}

} // namespace ui::pages
