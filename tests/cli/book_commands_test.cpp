// `saltloft check` and `saltloft backup` as a script sees them.
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
