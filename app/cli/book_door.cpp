#include "app/cli/book_door.h"

#include "app/cli/finding_text.h"

#include <cerrno>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace app::cli {

using core::base::ErrorCode;

namespace {

/// The part of the sentence that the code decides; `detail` is in it already.
std::string cause(const core::base::Error& error) {
    switch (error.code) {
    case ErrorCode::not_found:
        return "is not there; check the path";
    case ErrorCode::no_permission:
        return "may not be read or written by you; check its permissions and its folder's";
    case ErrorCode::is_a_directory:
        return "is a folder; name the file in it";
    case ErrorCode::not_a_book:
        return "is not a Saltloft book; check that it is the right file";
    case ErrorCode::newer_book:
        return "was written by version " + error.detail +
               " of this program; use that version or a newer one";
    case ErrorCode::damaged:
        return "is damaged (" + error.detail +
               "); restore a backup of it, or salvage it into a new book";
    case ErrorCode::locked:
        return "is in use by another program; close that one and try again";
    case ErrorCode::disk_full:
        return "could not be written because the disk is full; make room and try again";
    case ErrorCode::read_only:
        return "can only be read here; close the other window that has it open, or copy it";
    case ErrorCode::conflict:
        return "already uses the codes " + error.detail + "; rename those entries first";
    case ErrorCode::not_allowed:
        return "refuses this change (" + error.detail +
               (error.where.empty() ? "" : " at " + error.where) + "); mend these entries first";
    case ErrorCode::no_such_entry:
        return "has no " + error.detail + " '" + error.where + "'; check the code";
    case ErrorCode::bad_format:
        return "cannot be read: " + error.detail;
    case ErrorCode::empty_input:
        return "is empty; export it again";
    case ErrorCode::missing_column:
        return "lacks the columns " + error.detail + "; name them in its first line";
    default:
        return "could not be used (" + error.detail + ")";
    }
}

} // namespace

core::units::Instant now() {
    return core::units::Instant::from_unix_seconds(
        std::chrono::duration_cast<std::chrono::seconds>(
            std::chrono::system_clock::now().time_since_epoch())
            .count());
}

std::string words_for(const core::base::Error& error) {
    return cause(error) + ".";
}

std::optional<core::services::Book> open_book(const std::string& path, bool read_only,
                                              ExitCode& exit_code) {
    core::services::OpenOptions options{.now = now()};
    options.read_only = read_only;
    auto book = core::services::Book::open(path, options);
    if (!book && read_only && book.error().code == ErrorCode::read_only) {
        // Written by an earlier version: it has to be brought up to date (after a backup) before
        // it can be read.
        options.read_only = false;
        book = core::services::Book::open(path, options);
    }
    if (!book) {
        exit_code = fail(ExitCode::unreadable, path + " " + words_for(book.error()));
        return {};
    }
    for (const core::model::Finding& finding : book->opening_findings()) {
        const bool expected = read_only && finding.code == "book_read_only";
        if (!expected) {
            std::fprintf(stderr, "saltloft: %s: %s\n", path.c_str(), words_for(finding).c_str());
        }
    }
    return std::move(*book);
}

std::optional<std::string> read_whole(const std::string& path, ExitCode& exit_code) {
    std::error_code ignored;
    if (std::filesystem::is_directory(path, ignored)) {
        exit_code = fail(ExitCode::unreadable, path + " is a folder; name the file in it.");
        return {};
    }
    std::ifstream file(path, std::ios::binary);
    std::ostringstream bytes;
    if (!file || (file.peek() != std::ifstream::traits_type::eof() && !(bytes << file.rdbuf()))) {
        exit_code =
            fail(ExitCode::unreadable, path + " could not be read (" + std::strerror(errno) +
                                           "); check the path and its permissions.");
        return {};
    }
    return bytes.str();
}

bool write_whole(const std::string& path, const std::string& bytes, ExitCode& exit_code) {
    if (path == "-") {
        std::fwrite(bytes.data(), 1, bytes.size(), stdout);
        return true;
    }
    // Beside the target and then in its place, so that a full disk leaves the old file.
    const std::string beside = path + ".part";
    {
        std::ofstream file(beside, std::ios::binary | std::ios::trunc);
        file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        file.close();
        if (!file) {
            exit_code =
                fail(ExitCode::unreadable, path + " could not be written (" + std::strerror(errno) +
                                               "); check the folder and the room on it.");
            std::error_code ignored;
            std::filesystem::remove(beside, ignored);
            return false;
        }
    }
    std::error_code error;
    std::filesystem::rename(beside, path, error);
    if (error) {
        exit_code =
            fail(ExitCode::unreadable, path + " could not be replaced (" + error.message() + ").");
        std::filesystem::remove(beside, error);
        return false;
    }
    return true;
}

} // namespace app::cli
