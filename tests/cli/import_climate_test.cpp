// `saltloft import-climate` and `saltloft check` as a shell would call them.
#include "core/services/book.h"
#include "core/services/climate.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <array>
#include <cstdio>
#include <fstream>
#include <sys/wait.h>

using nlohmann::json;
using saltloft::testing::TempFolder;

namespace {

struct Ran {
    int code = -1;
    std::string out; ///< standard output, then standard error
};

Ran run(const std::string& arguments) {
    const char* program = std::getenv("SALTLOFT_BIN");
    EXPECT_NE(program, nullptr) << "ctest sets SALTLOFT_BIN";
    Ran ran;
    const std::string line = std::string(program == nullptr ? "false" : program) + " " + arguments;
    FILE* pipe = popen((line + " 2>&1").c_str(), "r");
    std::array<char, 4096> buffer{};
    while (std::fgets(buffer.data(), static_cast<int>(buffer.size()), pipe) != nullptr) {
        ran.out += buffer.data();
    }
    ran.code = WEXITSTATUS(pclose(pipe));
    return ran;
}

class ImportClimate : public ::testing::Test {
  protected:
    std::string write(const std::string& name, const std::string& text) {
        const auto path = folder.file(name);
        std::ofstream(path, std::ios::binary) << text;
        return path;
    }
    Ran import(const std::string& log, const std::string& more = {}) {
        return run("import-climate '" + log + "' --book '" + book + "' --chamber Cellar " + more);
    }
    TempFolder folder;
    std::string book = folder.file("book.saltloft");
    const std::string plain = "time,temp_c,rh_percent\n2025-05-01T10:00:00Z,12.5,75.2\n"
                              "2025-05-01T10:01:00Z,12.6,75.1\n";
};

} // namespace

TEST_F(ImportClimate, TakesALogInOnceAndSaysSoAsJson) {
    const auto log = write("log.csv", plain);
    const auto first = import(log, "--create --json");
    ASSERT_EQ(first.code, 0) << first.out;
    const auto doc = json::parse(first.out);
    EXPECT_EQ(doc.at("added"), 2);
    EXPECT_EQ(doc.at("chamber_added"), true);
    EXPECT_EQ(doc.at("first"), "2025-05-01T10:00:00Z");
    EXPECT_EQ(doc.at("complete"), true);
    const auto again = import(log, "--json");
    ASSERT_EQ(again.code, 0) << again.out;
    EXPECT_EQ(json::parse(again.out).at("added"), 0);
    EXPECT_EQ(json::parse(again.out).at("known"), 2);
    EXPECT_EQ(json::parse(again.out).at("complete"), true);
    // One undo takes the log back.
    auto opened = core::services::Book::open(
        book, {.now = core::units::Instant::from_unix_seconds(1'800'000'000)});
    ASSERT_TRUE(opened.has_value());
    EXPECT_EQ(opened->undo_label()->verb, "import_climate");
    ASSERT_TRUE(
        opened->undo({{}, core::units::Instant::from_unix_seconds(1'800'000'000), {}}).has_value());
    const auto sensors = opened->sensors();
    ASSERT_EQ(sensors->size(), 1U);
    const auto reader = core::services::ClimateReader::open(book);
    ASSERT_TRUE(reader.has_value());
    EXPECT_FALSE(reader->extent(sensors->front().id)->has_value());
    EXPECT_TRUE(opened->check_integrity(true)->sound());
}

TEST_F(ImportClimate, AsksWhereDayAndMonthCannotBeToldAndRemembersTheAnswer) {
    const auto log = write("a.csv", "time,temp,rh\n03/04/2025 10:00,12,75\n");
    const auto asked = import(log, "--create");
    EXPECT_EQ(asked.code, 1) << asked.out;
    EXPECT_NE(asked.out.find("--dates"), std::string::npos);
    EXPECT_EQ(import(log, "--dates mdy").code, 0);
    // The next file of the same sensor needs no answer.
    const auto next = write("b.csv", "time,temp,rh\n03/05/2025 10:00,12,75\n");
    const auto ran = import(next, "--json --zone UTC");
    ASSERT_EQ(ran.code, 0) << ran.out;
    EXPECT_EQ(json::parse(ran.out).at("first"), "2025-03-05T10:00:00Z");
}

TEST_F(ImportClimate, SaysWhatIsWrongAndLeavesNothingBehind) {
    const auto log = write("log.csv", plain);
    EXPECT_EQ(import(log).code, 3); // no book
    ASSERT_EQ(import(log, "--create").code, 0);
    EXPECT_EQ(import(folder.file("none.csv")).code, 3);
    EXPECT_EQ(import(folder.path().string()).code, 3);
    EXPECT_EQ(import(write("empty.csv", "")).code, 3);
    const auto binary = import(write("x.csv", std::string("\x7F\x45LF\0\0\0\1\2\3", 10)));
    EXPECT_EQ(binary.code, 3);
    EXPECT_NE(binary.out.find("not a text file"), std::string::npos) << binary.out;
    EXPECT_EQ(import(log, "--dates tomorrow").code, 2);
    EXPECT_EQ(import(log, "--zone Mars/Base").code, 2);
    EXPECT_EQ(run("import-climate '" + log + "'").code, 2);
    const auto bad = run("import-climate '" + write("y.csv", "no log at all\n") + "' --book '" +
                         book + "' --chamber New");
    EXPECT_EQ(bad.code, 3);
    auto opened = core::services::Book::open(
        book, {.now = core::units::Instant::from_unix_seconds(1'800'000'000)});
    EXPECT_EQ(opened->chambers()->size(), 1U);
}

TEST_F(ImportClimate, TellsRejectedLinesAndTheHourSkippedInSpring) {
    const auto log = write("spring.csv", "time,temp,rh\n2025-03-30 01:30,12,75\n"
                                         "2025-03-30 02:30,12,75\n2025-03-30 03:30,12,x\n");
    const auto ran = import(log, "--create --zone Europe/Rome");
    EXPECT_EQ(ran.code, 1);
    EXPECT_NE(ran.out.find("line 3: skipped_hour"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("line 4: bad_number"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("--offset"), std::string::npos) << ran.out;
}

TEST_F(ImportClimate, SeveralSensorsAreNamed) {
    const auto log = write("log.csv", plain);
    ASSERT_EQ(import(log, "--create --sensor door").code, 0);
    ASSERT_EQ(import(log, "--sensor back").code, 0);
    const auto which = import(log);
    EXPECT_EQ(which.code, 2);
    EXPECT_NE(which.out.find("back, door"), std::string::npos) << which.out;
}
