// A book goes wrong and comes back: by the Book menu while it is open, and when it does not open.
#include "app/window/session.h"
#include "tests/support/book_dump.h"
#include "tests/support/sample_entries.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"
#include "ui/pages/check_dialog.h"
#include "ui/pages/open_trouble_dialog.h"
#include "ui/pages/restore_dialog.h"
#include "ui/pages/salvage_dialog.h"
#include "ui/pages/table.h"

#include <QAction>
#include <QApplication>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

using namespace saltloft::testing;
namespace fs = std::filesystem;

namespace restore_test {
namespace {

/// Answers each dialog as it comes up, as a person would who says yes to what is offered.
class Person : public QObject {
  public:
    explicit Person(const char* way_out) : way_out_(way_out) { look_again(); }
    QStringList met;   ///< the dialogs, in order
    QStringList words; ///< what message boxes said

  private:
    /// Armed anew each time: a timer does not fire while its own slot has a dialog open.
    void look_again() { QTimer::singleShot(20, this, &Person::look); }
    void look() {
        look_again();
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (dialog == nullptr || acting_) {
            return;
        }
        acting_ = true; // a click may open the next dialog, which is answered from within
        if (met.isEmpty() || met.back() != dialog->objectName()) {
            met << dialog->objectName();
        }
        answer(dialog);
        acting_ = false;
    }
    void answer(QDialog* dialog) {
        if (auto* restore = qobject_cast<ui::pages::RestoreDialog*>(dialog)) {
            auto* table = restore->findChild<ui::pages::Table*>(QStringLiteral("restore_backups"));
            table->setCurrentIndex(table->model()->index(0, 0));
            restore->keeping().wait();
            acting_ = false;
            click(dialog, "restore_start");
        } else if (auto* check = qobject_cast<ui::pages::CheckDialog*>(dialog)) {
            check->keeping().wait();
            click(dialog, "check_salvage");
        } else if (auto* salvage = qobject_cast<ui::pages::SalvageDialog*>(dialog)) {
            click(dialog, "salvage_start");
            salvage->keeping().wait();
            click(dialog, "salvage_open");
        } else if (qobject_cast<ui::pages::OpenTroubleDialog*>(dialog) != nullptr) {
            click(dialog, way_out_);
        } else if (dialog->objectName() == QLatin1String("restore_sure")) {
            click(dialog, "restore_yes");
        } else {
            words << qobject_cast<QMessageBox*>(dialog)->text();
            dialog->accept();
        }
    }
    static void click(QDialog* dialog, const char* name) {
        auto* button = dialog->findChild<QPushButton*>(QLatin1String(name));
        ASSERT_NE(button, nullptr) << name;
        ASSERT_TRUE(button->isVisible() && button->isEnabled()) << name;
        QTest::mouseClick(button, Qt::LeftButton);
    }
    const char* way_out_;
    bool acting_ = false;
};

class Restore : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = take(core::services::Book::create(path, {at_s(test_now_s)}));
        take(book.perform(start_batch("B01"), context()));
        ASSERT_TRUE(take(book.backup_if_due(app::window::system_now())).has_value());
        backup_ = dump(path, DumpOf::all);
        take(book.perform(start_batch("B02"), context()));
    }
    std::string replaced() {
        for (const auto& entry : fs::directory_iterator(folder.path())) {
            if (entry.path().string().find(".replaced-") != std::string::npos) {
                return entry.path().string();
            }
        }
        return {};
    }
    static void choose(app::window::Session& session, const char* action) {
        session.window()->findChild<QAction*>(QLatin1String(action))->trigger();
    }
    TempFolder folder;
    std::string path = folder.file("cellar.saltloft");
    std::vector<std::string> backup_;
    QSettings settings{QString::fromStdString(folder.file("settings.ini")), QSettings::IniFormat};
};

} // namespace

TEST_F(Restore, TheOpenBookIsReplacedAndOpensAgain) {
    const auto now = dump(path, DumpOf::all);
    app::window::Session session(settings);
    ASSERT_TRUE(session.open(QString::fromStdString(path), false, false));
    Person person("");
    choose(session, "action_restore");
    EXPECT_TRUE(QTest::qWaitFor([&] { return !person.words.isEmpty(); }, 20000));
    EXPECT_TRUE(person.words.value(0).contains(QStringLiteral(".replaced-")));
    ASSERT_NE(session.window(), nullptr);
    EXPECT_TRUE(session.window()->isVisible());
    EXPECT_EQ(dump(path, DumpOf::all), backup_);
    EXPECT_EQ(dump(replaced(), DumpOf::all), now) << "what was replaced is still there";
}

TEST_F(Restore, ABookThatDoesNotOpenIsRestoredFromItsMessage) {
    std::ofstream(path, std::ios::trunc) << "half a header";
    app::window::Session session(settings);
    Person person("trouble_restore");
    EXPECT_TRUE(session.open(QString::fromStdString(path), false, false));
    EXPECT_EQ(person.met.value(0), QStringLiteral("trouble_dialog"));
    ASSERT_NE(session.window(), nullptr);
    EXPECT_EQ(dump(path, DumpOf::all), backup_);
    EXPECT_EQ(fs::file_size(replaced()), 13U);
}

TEST_F(Restore, ADamagedBookIsCheckedSalvagedAndTheNewOneOpens) {
    run_sql(path, "PRAGMA foreign_keys=OFF; DELETE FROM batch WHERE code = 'B02'");
    const auto before = dump(path);
    app::window::Session session(settings);
    ASSERT_TRUE(session.open(QString::fromStdString(path), false, false));
    Person person("");
    choose(session, "action_check");
    const QString saved = QStringLiteral("cellar-salvaged.saltloft");
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return session.window()->windowTitle().contains(saved); }, 20000))
        << session.window()->windowTitle().toStdString();
    EXPECT_EQ(person.met,
              (QStringList{QStringLiteral("check_dialog"), QStringLiteral("salvage_dialog")}));
    EXPECT_EQ(dump(path), before) << "the damaged book is left as it was";
}

} // namespace restore_test
