#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <random>
#include <string>
#include <vector>

namespace saltloft::testing {

/// What the next operations of a CrashDisk should do wrong.
struct Trouble {
    enum class Kind {
        io_error,  ///< the operation fails with the engine's I/O error for it
        disk_full, ///< writes and growth fail as on a full disk; the rest works
    };
    Kind kind = Kind::io_error;
    std::int64_t from_operation = 0; ///< counted from when the trouble is set, 0 is the next
    bool lasting = false;            ///< only that one operation, or all from it on
};

/// A disk in memory that forgets what was not forced to it, as a power cut makes a real one forget.
/// Registered as an SQLite file system under `name`. Between two syncs of a file each write may be
/// kept, dropped or torn at a 512-byte sector, independently of the others; making, truncating and
/// removing a file counts as a write until the next sync. Several connections may use it, in one
/// thread.
class CrashDisk {
  public:
    explicit CrashDisk(std::string name);
    ~CrashDisk();
    CrashDisk(const CrashDisk&) = delete;
    CrashDisk& operator=(const CrashDisk&) = delete;
    [[nodiscard]] const std::string& name() const { return name_; }

    /// The power goes and comes back: files hold what the disk kept, drawn with `chance`. All
    /// connections must have been dropped (see abandon_open_files) before the next use.
    void cut_power(std::mt19937_64& chance);
    /// Cuts the power in the middle of operation n from now: every operation from it on fails, and
    /// the state it finds is what cut_power then works from.
    void lose_power_at(std::int64_t operation);
    void set_trouble(const Trouble& trouble);
    void clear_trouble();
    [[nodiscard]] bool trouble_struck() const { return struck_; }
    [[nodiscard]] std::int64_t operations() const { return operations_; }

    /// The whole disk, for going back to a state.
    struct Snapshot;
    [[nodiscard]] std::shared_ptr<const Snapshot> snapshot() const;
    void go_back_to(const Snapshot& snapshot);
    /// A file's bytes as they are read now, for looking at a book outside the disk.
    [[nodiscard]] std::string bytes(const std::string& path) const;

    struct File;
    struct Impl;

  private:
    friend struct Impl;
    enum class Operation { read, write, truncate, sync, open, remove, other };
    /// SQLITE_OK, or the code with which this operation fails.
    int next(Operation operation);

    std::string name_;
    std::map<std::string, std::shared_ptr<File>> files_;
    std::optional<Trouble> trouble_;
    std::int64_t trouble_set_at_ = 0;
    std::optional<std::int64_t> power_lost_at_;
    std::int64_t operations_ = 0;
    bool struck_ = false;
    std::unique_ptr<Impl> impl_;
};

} // namespace saltloft::testing
