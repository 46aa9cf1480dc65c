#include "core/store/fault.h"

#include <SQLiteCpp/Exception.h>

#include <filesystem>
#include <new>
#include <sqlite3.h>

namespace core::store {

using base::Error;
using base::ErrorCode;

void refuse(ErrorCode code, std::string detail, std::string where) {
    throw Fault(Error{code, std::move(detail), std::move(where)});
}

namespace {

ErrorCode code_of(const SQLite::Exception& exception) {
    switch (exception.getExtendedErrorCode()) {
    case SQLITE_READONLY_DBMOVED:
        return ErrorCode::not_found;
    case SQLITE_CANTOPEN_ISDIR:
        return ErrorCode::is_a_directory;
    default:
        break;
    }
    // SQLiteCpp has 1 for "not an engine result" too, which falls to the default.
    switch (exception.getErrorCode() & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return ErrorCode::locked;
    case SQLITE_FULL:
        return ErrorCode::disk_full;
    case SQLITE_READONLY:
        return ErrorCode::read_only;
    case SQLITE_CORRUPT:
        return ErrorCode::damaged;
    case SQLITE_NOTADB:
        return ErrorCode::not_a_book;
    case SQLITE_CANTOPEN:
        return ErrorCode::not_found;
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return ErrorCode::no_permission;
    case SQLITE_CONSTRAINT:
        return ErrorCode::conflict;
    case SQLITE_SCHEMA:
    case SQLITE_MISMATCH:
        return ErrorCode::damaged;
    case SQLITE_TOOBIG:
        return ErrorCode::out_of_range;
    case SQLITE_INTERRUPT:
        return ErrorCode::cancelled;
    default:
        return ErrorCode::io_failure;
    }
}

} // namespace

Error current_error() {
    try {
        throw;
    } catch (const Fault& fault) {
        return fault.error();
    } catch (const SQLite::Exception& exception) {
        return Error{code_of(exception), exception.what(), {}};
    } catch (const std::filesystem::filesystem_error& exception) {
        const auto code = exception.code();
        if (code == std::errc::no_space_on_device) {
            return Error{ErrorCode::disk_full, exception.what(), {}};
        }
        if (code == std::errc::permission_denied) {
            return Error{ErrorCode::no_permission, exception.what(), {}};
        }
        return Error{ErrorCode::io_failure, exception.what(), {}};
    } catch (const std::bad_alloc&) {
        return Error{ErrorCode::io_failure, "out of memory", {}};
    } catch (const std::exception& exception) {
        return Error{ErrorCode::io_failure, exception.what(), {}};
    }
}

} // namespace core::store
