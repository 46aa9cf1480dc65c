// The fridge died over a weekend: its log is imported through the window's own dialog, the page
// shows how long the air was out of band, and the upset's record says what each piece was then.
#include "core/services/book.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"
#include "ui/pages/chamber_page.h"
#include "ui/pages/import_log_dialog.h"
#include "ui/pages/upset_dialog.h"
#include "ui/presenters/workspace.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QtTest/QTest>
#include <gtest/gtest.h>

#include <fstream>

using namespace core;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::TempFolder;
using ui::presenters::Workspace;

namespace {

constexpr std::int64_t monday = 1'772'438'400; // 2026-03-02T08:00:00Z

/// A reading each ten minutes from Friday noon: 3 C, then 36 hours up to 21 C, then cold again.
void write_log(const std::string& path) {
    std::ofstream log(path);
    log << "epoch,temperature,humidity\n";
    const std::int64_t friday_noon = monday - 68 * 3600;
    for (int i = 0; i <= 6 * 66; ++i) {
        const double hour = i / 6.0;
        const bool off = hour >= 10 && hour < 46;
        log << friday_noon + i * 600 << ',' << (off ? 3 + (hour - 10) / 2 : 3) << ",82\n";
    }
}

class FridgeFailure : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = services::Book::create(folder.file("b.saltloft"), {.now = at_s(monday)});
        ASSERT_TRUE(book.has_value());
        workspace = std::make_unique<Workspace>(std::move(*book), ui::presenters::Preferences{},
                                                QLocale(QLocale::English, QLocale::UnitedKingdom),
                                                [] { return at_s(monday); });
        model::Chamber fridge;
        fridge.name = "Fridge";
        fridge.kind = model::ChamberKind::fridge;
        fridge.high_temperature = units::Temperature::celsius(5);
        const auto made = workspace->perform(actions::AddChamber{fridge});
        ASSERT_TRUE(made.has_value());
        chamber = made->id<model::ChamberId>(model::EntryKind::chamber);
        model::Sensor probe;
        probe.chamber = chamber;
        probe.name = "probe";
        ASSERT_TRUE(workspace->perform(actions::AddSensor{probe}).has_value());
        auto start = saltloft::testing::start_batch("B01");
        for (auto& piece : start.pieces) {
            piece.piece.chamber = chamber;
            piece.piece.state = model::PieceState::curing;
        }
        ASSERT_TRUE(workspace->perform(start).has_value());
    }

    TempFolder folder;
    std::unique_ptr<Workspace> workspace;
    model::ChamberId chamber;
};

template <class W>
W* child(QWidget* parent, const char* name) {
    auto* found = parent->findChild<W*>(QLatin1String(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
}

} // namespace

TEST_F(FridgeFailure, FromTheLogToTheRecord) {
    const auto log = folder.file("fridge.csv");
    write_log(log);
    const auto sensors = workspace->rows(workspace->book().sensors());

    ui::pages::ImportLogDialog import(*workspace, sensors, nullptr);
    import.set_file(QString::fromStdString(log));
    import.import().wait();
    auto* start = child<QPushButton>(&import, "import_start");
    ASSERT_TRUE(start->isEnabled());
    EXPECT_EQ(child<QTableView>(&import, "import_parts")->model()->rowCount(), 10);
    QTest::mouseClick(start, Qt::LeftButton);
    import.import().wait();
    ASSERT_TRUE(import.import().report()->has_value());
    EXPECT_EQ((*import.import().report())->import.added, 6 * 66 + 1);

    ui::pages::ChamberPage page(*workspace, nullptr);
    page.resize(1200, 900);
    page.refresh();
    page.wait();
    EXPECT_TRUE(child<QLabel>(&page, "air_band_words")->text().contains(QStringLiteral("too warm")))
        << child<QLabel>(&page, "air_band_words")->text().toStdString();
    EXPECT_EQ(child<QTableView>(&page, "air_excursions")->model()->rowCount(), 1);

    const auto places = workspace->rows(workspace->book().chambers());
    ui::pages::UpsetDialog upset(*workspace, places.front(), sensors, nullptr);
    child<QComboBox>(&upset, "upset_source")->setCurrentIndex(1);
    child<QLineEdit>(&upset, "upset_day_line")->setText(QStringLiteral("2026-02-27"));
    child<QLineEdit>(&upset, "upset_clock_line")->setText(QStringLiteral("22:00"));
    child<QLineEdit>(&upset, "upset_lasted_line")->setText(QStringLiteral("36 h"));
    QTest::mouseClick(child<QPushButton>(&upset, "upset_show"), Qt::LeftButton);
    auto* pieces = child<QTableView>(&upset, "upset_pieces");
    ASSERT_EQ(pieces->model()->rowCount(), 2);
    auto* exposures = child<QTableView>(&upset, "upset_exposures");
    EXPECT_EQ(exposures->model()->rowCount(), 8);
    // From 3 to 21 C in a straight line over 36 h, 7 C and more last 28 h.
    bool found = false;
    for (int row = 0; row < exposures->model()->rowCount(); ++row) {
        const auto name = exposures->model()->index(row, 0).data().toString();
        if (name.contains(QStringLiteral("aureus"))) {
            found = true;
            auto hours = exposures->model()->index(row, 1).data().toString();
            hours.replace(QChar::Nbsp, QLatin1Char(' '));
            EXPECT_EQ(hours.toStdString(), "1 d 4 h");
        }
    }
    EXPECT_TRUE(found);
    QTest::mouseClick(child<QPushButton>(&upset, "upset_keep"), Qt::LeftButton);
    const auto notes = workspace->rows(workspace->book().notes());
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_NE(notes.front().text.find("Staphylococcus aureus"), std::string::npos);
    EXPECT_EQ(notes.front().text.find("safe"), std::string::npos);

    // The note is one step back, the log the next.
    ASSERT_TRUE(workspace->undo());
    ASSERT_TRUE(workspace->undo());
    const auto reader = services::ClimateReader::open(workspace->book().path());
    EXPECT_FALSE((*reader->extent(sensors.front().id)).has_value());
}
