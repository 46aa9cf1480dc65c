// What is thrown below the store's door comes out as a value that says what a person can do.
#include "core/store/fault.h"

#include <gtest/gtest.h>

#include <SQLiteCpp/Exception.h>
#include <filesystem>
#include <new>
#include <sqlite3.h>

using core::base::Error;
using core::base::ErrorCode;
using core::store::guarded;

namespace {

template <class Thrown>
Error error_after(const Thrown& thrown) {
    const auto result = guarded([&] { throw thrown; });
    EXPECT_FALSE(result.has_value());
    return result.has_value() ? Error{} : result.error();
}

ErrorCode after_engine_code(int code) {
    return error_after(SQLite::Exception("the engine's words", code)).code;
}

} // namespace

TEST(Fault, WorkThatSucceedsHandsItsValueOn) {
    EXPECT_EQ(*guarded([] { return 42; }), 42);
    bool ran = false;
    EXPECT_TRUE(guarded([&] { ran = true; }).has_value());
    EXPECT_TRUE(ran);
}

TEST(Fault, OurOwnFaultsComeOutAsTheyAre) {
    const auto result =
        guarded([] { core::store::refuse(ErrorCode::conflict, "code taken", "B01"); });
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error(), (Error{ErrorCode::conflict, "code taken", "B01"}));
    const core::store::Fault fault({ErrorCode::locked, "in use", {}});
    EXPECT_STREQ(fault.what(), "in use");
}

TEST(Fault, TheEnginesResultCodesAreTold) {
    EXPECT_EQ(after_engine_code(SQLITE_BUSY), ErrorCode::locked);
    EXPECT_EQ(after_engine_code(SQLITE_LOCKED), ErrorCode::locked);
    EXPECT_EQ(after_engine_code(SQLITE_FULL), ErrorCode::disk_full);
    EXPECT_EQ(after_engine_code(SQLITE_READONLY), ErrorCode::read_only);
    EXPECT_EQ(after_engine_code(SQLITE_CORRUPT), ErrorCode::damaged);
    EXPECT_EQ(after_engine_code(SQLITE_SCHEMA), ErrorCode::damaged);
    EXPECT_EQ(after_engine_code(SQLITE_MISMATCH), ErrorCode::damaged);
    EXPECT_EQ(after_engine_code(SQLITE_NOTADB), ErrorCode::not_a_book);
    EXPECT_EQ(after_engine_code(SQLITE_CANTOPEN), ErrorCode::not_found);
    EXPECT_EQ(after_engine_code(SQLITE_PERM), ErrorCode::no_permission);
    EXPECT_EQ(after_engine_code(SQLITE_AUTH), ErrorCode::no_permission);
    EXPECT_EQ(after_engine_code(SQLITE_CONSTRAINT), ErrorCode::conflict);
    EXPECT_EQ(after_engine_code(SQLITE_TOOBIG), ErrorCode::out_of_range);
    EXPECT_EQ(after_engine_code(SQLITE_INTERRUPT), ErrorCode::cancelled);
    EXPECT_EQ(after_engine_code(SQLITE_IOERR), ErrorCode::io_failure);
    EXPECT_EQ(after_engine_code(SQLITE_CORRUPT_INDEX), ErrorCode::damaged)
        << "an extended code is of its family";
    EXPECT_EQ(error_after(SQLite::Exception("the engine's words", SQLITE_FULL)).detail,
              "the engine's words");
}

TEST(Fault, TheFileSystemsFaultsAreTold) {
    const auto after = [](std::errc code) {
        return error_after(
                   std::filesystem::filesystem_error("copy", "a file", std::make_error_code(code)))
            .code;
    };
    EXPECT_EQ(after(std::errc::no_space_on_device), ErrorCode::disk_full);
    EXPECT_EQ(after(std::errc::permission_denied), ErrorCode::no_permission);
    EXPECT_EQ(after(std::errc::io_error), ErrorCode::io_failure);
}

TEST(Fault, AnythingElseIsAFailureWithItsWords) {
    EXPECT_EQ(error_after(std::bad_alloc()).detail, "out of memory");
    const auto error = error_after(std::runtime_error("broken"));
    EXPECT_EQ(error.code, ErrorCode::io_failure);
    EXPECT_EQ(error.detail, "broken");
}
