// `saltloft check`, `backup`, `restore` and `salvage` as a script sees them.
#include "core/services/demo_book.h"
#include "tests/support/book_dump.h"
#include "tests/support/run_program.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

using namespace saltloft::testing;
using tests::support::run_program;

namespace {

class BookCommands : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = core::services::Book::create(path, {.now = at_s(test_now_s)});
        ASSERT_TRUE(book.has_value());
        ASSERT_TRUE(book->perform(start_batch("B01"), context()).has_value());
    }
    TempFolder folder;
    std::string path = folder.file("book.saltloft");
};

} // namespace

TEST_F(BookCommands, CheckOfASoundBookIsDone) {
    const auto run = run_program({"check", "--book", path});
    EXPECT_EQ(run.exit_code, 0) << run.err;
    EXPECT_NE(run.out.find("sound"), std::string::npos);
}

TEST_F(BookCommands, CheckFindsAMissingOwnerAndSaysHowToMendIt) {
    run_sql(path, "PRAGMA foreign_keys=OFF; DELETE FROM batch");
    const auto run = run_program({"check", "--book", path});
    EXPECT_EQ(run.exit_code, 1);
    EXPECT_NE(run.out.find("missing batch"), std::string::npos) << run.out;
    EXPECT_NE(run.err.find("restore a backup"), std::string::npos) << run.err;
}

TEST_F(BookCommands, CheckOfWhatIsNoBookIsUnreadable) {
    std::ofstream(folder.file("letter.txt")) << "dear all, this is a letter and not a book";
    EXPECT_EQ(run_program({"check", "--book", folder.file("letter.txt")}).exit_code, 3);
    EXPECT_EQ(run_program({"check", "--book", folder.file("nothing")}).exit_code, 3);
    EXPECT_EQ(run_program({"check"}).exit_code, 2);
}

TEST_F(BookCommands, BackupMakesAVerifiedCopyAndNeverReplaces) {
    const std::string copy = folder.file("copy.saltloft");
    const auto made = run_program({"backup", "--book", path, "--out", copy});
    EXPECT_EQ(made.exit_code, 0) << made.err;
    EXPECT_EQ(dump(copy, DumpOf::all), dump(path, DumpOf::all));
    const auto again = run_program({"backup", "--book", path, "--out", copy});
    EXPECT_EQ(again.exit_code, 3);
    EXPECT_NE(again.err.find("is there already"), std::string::npos) << again.err;
}

TEST_F(BookCommands, BackupOfABookInUseSeesWhatWasJustEntered) {
    auto writer = core::services::Book::open(path, {.now = at_s(test_now_s)});
    ASSERT_TRUE(writer.has_value());
    ASSERT_TRUE(writer->perform(start_batch("B02"), context()).has_value());
    const std::string copy = folder.file("copy.saltloft");
    const auto run = run_program({"backup", "--book", path, "--out", copy});
    EXPECT_EQ(run.exit_code, 0) << run.err;
    EXPECT_EQ(query(copy, "SELECT count(*) FROM batch"), "2");
    EXPECT_TRUE(writer->perform(start_batch("B03"), context()).has_value());
}

TEST_F(BookCommands, CheckMendsRollUpsAndNothingElse) {
    // A bucket that no reading stands behind.
    run_sql(path, "PRAGMA foreign_keys=OFF;"
                  "INSERT INTO climate_bucket VALUES (1, 900, 0, 9, 9, 1, 1, 1, 1, 1, 1)");
    const auto before = dump(path, DumpOf::all);
    const auto found = run_program({"check", "--book", path});
    EXPECT_EQ(found.exit_code, 1);
    EXPECT_NE(found.err.find("--repair"), std::string::npos) << found.err;
    EXPECT_EQ(dump(path, DumpOf::all), before) << "looking changes nothing";
    const auto mended = run_program({"check", "--book", path, "--repair"});
    EXPECT_EQ(mended.exit_code, 0) << mended.err;
    EXPECT_NE(mended.out.find("sound"), std::string::npos) << mended.out;
    EXPECT_EQ(query(path, "SELECT count(*) FROM climate_bucket"), "0");

    run_sql(path, "PRAGMA foreign_keys=OFF; DELETE FROM batch");
    const auto damaged = dump(path, DumpOf::all);
    EXPECT_EQ(run_program({"check", "--book", path, "--repair"}).exit_code, 1);
    EXPECT_EQ(dump(path, DumpOf::all), damaged) << "a damaged book is not written to";
}

TEST_F(BookCommands, RestoreSaysFirstAndKeepsWhatItReplaces) {
    const std::string copy = folder.file("copy.saltloft");
    ASSERT_EQ(run_program({"backup", "--book", path, "--out", copy}).exit_code, 0);
    {
        auto writer = core::services::Book::open(path, {.now = at_s(test_now_s)});
        ASSERT_TRUE(writer.has_value());
        ASSERT_TRUE(writer->perform(start_batch("B02"), context()).has_value());
        const auto busy = run_program({"restore", "--book", path, "--backup", copy});
        EXPECT_EQ(busy.exit_code, 3) << "not under the feet of an open book";
        EXPECT_NE(busy.err.find("in use"), std::string::npos) << busy.err;
    }
    const auto now = dump(path, DumpOf::all);
    const auto preview = run_program({"restore", "--book", path, "--backup", copy, "--preview"});
    EXPECT_EQ(preview.exit_code, 0) << preview.err;
    EXPECT_NE(preview.out.find("since the backup: 1"), std::string::npos) << preview.out;
    EXPECT_EQ(dump(path, DumpOf::all), now);

    const auto run = run_program({"restore", "--book", path, "--backup", copy});
    EXPECT_EQ(run.exit_code, 0) << run.err;
    EXPECT_EQ(dump(path, DumpOf::all), dump(copy, DumpOf::all));
    const auto at = run.out.find("kept as ");
    ASSERT_NE(at, std::string::npos) << run.out;
    std::string kept = run.out.substr(at + 8);
    kept.erase(kept.find('\n'));
    EXPECT_EQ(dump(kept, DumpOf::all), now);
}

TEST_F(BookCommands, RestoreRefusesWhatIsNoBackup) {
    const auto before = dump(path, DumpOf::all);
    std::ofstream(folder.file("letter.txt")) << "dear all, this is a letter and not a book";
    const auto letter =
        run_program({"restore", "--book", path, "--backup", folder.file("letter.txt")});
    EXPECT_EQ(letter.exit_code, 3);
    EXPECT_NE(letter.err.find("not a Saltloft book"), std::string::npos) << letter.err;
    EXPECT_EQ(run_program({"restore", "--book", path, "--backup", folder.file("none")}).exit_code,
              3);
    EXPECT_EQ(run_program({"restore", "--book", path}).exit_code, 2);
    const std::string bad = folder.file("bad.saltloft");
    ASSERT_EQ(run_program({"backup", "--book", path, "--out", bad}).exit_code, 0);
    run_sql(bad, "PRAGMA foreign_keys=OFF; DELETE FROM batch");
    EXPECT_EQ(run_program({"restore", "--book", path, "--backup", bad}).exit_code, 1)
        << "a damaged backup is not put in a sound book's place";
    EXPECT_EQ(dump(path, DumpOf::all), before);
}

TEST_F(BookCommands, SalvageMakesASoundBookAndLeavesTheOldOne) {
    run_sql(path, "PRAGMA foreign_keys=OFF; DELETE FROM piece WHERE code = 'B01a'");
    const auto before = dump(path, DumpOf::all);
    const std::string saved = folder.file("saved.saltloft");
    const auto run = run_program({"salvage", "--book", path, "--out", saved});
    EXPECT_EQ(run.exit_code, 0) << run.err;
    EXPECT_NE(run.out.find("weighing: 2 kept, 0 lost"), std::string::npos) << run.out;
    EXPECT_EQ(run_program({"check", "--book", saved}).exit_code, 0);
    EXPECT_EQ(dump(path, DumpOf::all), before);
    const auto again = run_program({"salvage", "--book", path, "--out", saved});
    EXPECT_EQ(again.exit_code, 3);
    EXPECT_NE(again.err.find("is there already"), std::string::npos) << again.err;
    std::ofstream(folder.file("letter.txt")) << "dear all, this is a letter and not a book";
    EXPECT_EQ(run_program({"salvage", "--book", folder.file("letter.txt"), "--out",
                           folder.file("new.saltloft")})
                  .exit_code,
              3);
}

TEST_F(BookCommands, SalvageTellsWhatIsLostByItsExitCode) {
    {
        auto writer = core::services::Book::open(path, {.now = at_s(test_now_s)});
        ASSERT_TRUE(writer.has_value());
        const auto piece = writer->pieces()->front().id;
        for (int i = 1; i <= 600; ++i) {
            ASSERT_TRUE(writer
                            ->perform(core::actions::AddWeighing{weighing(piece, 1000 - i * 0.5,
                                                                          test_now_s + i * 3600)},
                                      context())
                            .has_value());
        }
    }
    // Scribble over one of the weighings' own pages, found by asking the file itself.
    const int page = std::stoi(query(path, "SELECT pageno FROM dbstat WHERE name = 'weighing' AND"
                                           " pagetype = 'leaf' ORDER BY pageno LIMIT 1 OFFSET 2"));
    {
        std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
        file.seekp((page - 1) * 4096L);
        file << std::string(4096, '\xff');
    }
    EXPECT_EQ(run_program({"check", "--book", path}).exit_code, 1);
    const std::string saved = folder.file("saved.saltloft");
    const auto run = run_program({"salvage", "--book", path, "--out", saved});
    EXPECT_EQ(run.exit_code, 1) << run.out;
    EXPECT_NE(run.err.find("could not be read"), std::string::npos) << run.err;
    EXPECT_EQ(run_program({"check", "--book", saved}).exit_code, 0);
}
