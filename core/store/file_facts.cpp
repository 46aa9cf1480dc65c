#include "core/store/file_facts.h"

#include "core/store/fault.h"
#include "core/store/migrations.h"

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <string_view>
#include <sys/vfs.h>
#include <unistd.h>

namespace core::store {

namespace fs = std::filesystem;
using base::ErrorCode;

namespace {

/// Kinds of file system whose locks and shared memory cannot be relied on (statfs(2),
/// linux/magic.h).
bool is_network_kind(std::uint32_t kind) {
    static constexpr std::array<std::uint32_t, 9> kinds{
        0x6969U,     /* NFS */ 0x517BU,      /* SMB */ 0xFF534D42U,  /* CIFS */
        0xFE534D42U, /* SMB2 */ 0x65735546U, /* FUSE */ 0x01021997U, /* 9P */
        0x00C36400U, /* Ceph */ 0x5346414FU, /* AFS */ 0x73757245U,  /* Coda */
    };
    for (const std::uint32_t known : kinds) {
        if (kind == known) {
            return true;
        }
    }
    return false;
}

bool is_file_with_content(const std::string& path) {
    std::error_code error;
    const auto size = fs::file_size(path, error);
    return !error && size > 0;
}

[[noreturn]] void refuse_errno(const std::string& where) {
    const int why = errno;
    const ErrorCode code = why == ENOSPC || why == EDQUOT  ? ErrorCode::disk_full
                           : why == EACCES || why == EPERM ? ErrorCode::no_permission
                           : why == EROFS                  ? ErrorCode::read_only
                           : why == ENOENT                 ? ErrorCode::not_found
                           : why == EEXIST                 ? ErrorCode::conflict
                                                           : ErrorCode::io_failure;
    refuse(code, std::strerror(why), where);
}

} // namespace

std::string folder_of(const std::string& path) {
    const std::string folder = fs::path(path).parent_path().string();
    return folder.empty() ? "." : folder;
}

FileFacts facts_of(const std::string& path) {
    FileFacts facts;
    std::error_code error;
    const auto status = fs::status(path, error);
    facts.exists = fs::exists(status);
    facts.is_directory = fs::is_directory(status);
    const std::string folder = folder_of(path);
    facts.is_folder_writable = access(folder.c_str(), W_OK | X_OK) == 0;
    struct statfs system {};
    if (statfs(folder.c_str(), &system) == 0) {
        facts.is_on_network = is_network_kind(static_cast<std::uint32_t>(system.f_type));
    }
    if (facts.exists && !facts.is_directory) {
        facts.is_readable = access(path.c_str(), R_OK) == 0;
        facts.is_writable = facts.is_folder_writable && access(path.c_str(), W_OK) == 0;
        facts.bytes = static_cast<std::int64_t>(fs::file_size(path, error));
        facts.has_leftover_journal =
            is_file_with_content(path + "-wal") || is_file_with_content(path + "-journal");
    }
    return facts;
}

void require_book_header(const std::string& path, const FileFacts& facts) {
    if (!facts.exists) {
        refuse(ErrorCode::not_found, path, path);
    }
    if (facts.is_directory) {
        refuse(ErrorCode::is_a_directory, path, path);
    }
    if (!facts.is_readable) {
        refuse(ErrorCode::no_permission, path, path);
    }
    // SQLite file format: 100 bytes of header; application id at 68, big-endian.
    static constexpr std::size_t header_size = 100;
    static constexpr std::size_t id_at = 68;
    static constexpr std::string_view magic{"SQLite format 3\0", 16};
    std::array<char, header_size> header{};
    std::ifstream file(path, std::ios::binary);
    file.read(header.data(), header.size());
    if (file.gcount() == 0 && facts.bytes == 0) {
        refuse(ErrorCode::not_a_book, "the file is empty", path);
    }
    if (static_cast<std::size_t>(file.gcount()) < header_size) {
        refuse(ErrorCode::not_a_book, "the file is too short", path);
    }
    if (std::string_view(header.data(), magic.size()) != magic) {
        refuse(ErrorCode::not_a_book, "the file is of another kind", path);
    }
    std::int64_t id = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        id = id * 256 + static_cast<unsigned char>(header.at(id_at + i));
    }
    if (id != application_id) {
        refuse(ErrorCode::not_a_book, "a database of another program", path);
    }
}

void sync_to_disk(const std::string& path) {
    const int descriptor = open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) {
        refuse_errno(path);
    }
    const int failed = fsync(descriptor);
    const int why = errno;
    close(descriptor);
    // Some file systems cannot sync a folder and say so; there is nothing more to be done there.
    if (failed != 0 && why != EINVAL) {
        errno = why;
        refuse_errno(path);
    }
}

void rename_new(const std::string& from, const std::string& to) {
    if (link(from.c_str(), to.c_str()) == 0) {
        unlink(from.c_str());
    } else if (errno == EEXIST || fs::exists(to)) {
        refuse(ErrorCode::conflict, to, to);
    } else if (std::rename(from.c_str(), to.c_str()) != 0) { // no hard links here (FAT)
        refuse_errno(to);
    }
    sync_to_disk(folder_of(to));
}

void rename_over(const std::string& from, const std::string& to) {
    if (std::rename(from.c_str(), to.c_str()) != 0) {
        refuse_errno(to);
    }
    sync_to_disk(folder_of(to));
}

} // namespace core::store
