#pragma once

#include <cstdint>
#include <string>

namespace core::store {

/// What can be said of a book file before the engine touches it. Foreign and broken files are
/// turned away here, so that opening one by mistake never changes it.
struct FileFacts {
    bool exists = false;
    bool is_directory = false;
    bool is_readable = false;
    bool is_writable = false; ///< the file and its folder (the journal lies beside it)
    bool is_folder_writable = false;
    bool is_on_network = false;        ///< NFS, SMB, FUSE and the like
    bool has_leftover_journal = false; ///< the last writer did not close the book
    std::int64_t bytes = 0;
};

FileFacts facts_of(const std::string& path);

/// Faults: not_found, is_a_directory, no_permission, not_a_book (empty, too short, not SQLite,
/// SQLite of some other program). `facts` are of the same path.
void require_book_header(const std::string& path, const FileFacts& facts);

/// Makes sure what was written under `path` (a file or a folder) is on the disk. Throws.
void sync_to_disk(const std::string& path);
/// Renames without ever replacing an existing `to` (Fault conflict), then syncs the folder.
void rename_new(const std::string& from, const std::string& to);
/// Renames over `to`, then syncs the folder. Throws.
void rename_over(const std::string& from, const std::string& to);
std::string folder_of(const std::string& path);

} // namespace core::store
