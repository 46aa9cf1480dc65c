#pragma once

#include "core/base/result.h"
#include "core/model/finding.h"
#include "core/store/connection.h"
#include "core/store/fault.h"
#include "core/store/instance_lock.h"

#include <memory>
#include <optional>
#include <string>

namespace core::store {

struct StoreOptions {
    units::Instant now;
    bool create = false; ///< make a new book; conflict when the file is there
    bool read_only = false;
    std::string backup_folder; ///< empty: "backups" beside the book
    bool check = true;         ///< quick integrity check on opening
    std::string vfs;           ///< tests only
};

/// An open book file: its connection, the lock that makes this instance its writer, and what was
/// noticed on opening.
class Store {
  public:
    static base::Result<std::unique_ptr<Store>> open(const std::string& path,
                                                     const StoreOptions& options);
    ~Store();
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;

    [[nodiscard]] const std::string& path() const { return path_; }
    [[nodiscard]] const std::string& backup_folder() const { return backup_folder_; }
    [[nodiscard]] bool is_read_only() const { return read_only_; }
    [[nodiscard]] const model::Findings& opening_findings() const { return findings_; }
    [[nodiscard]] Connection& connection() { return *connection_; }

    /// Reads a consistent state: `work(Connection&)` in one read transaction.
    template <class Work>
    auto read(Work&& work) {
        return guarded([&] {
            Transaction transaction(*connection_, Transaction::Kind::read);
            return work(*connection_);
        });
    }

    /// Makes a change: `work(Connection&)` in one write transaction, committed when it returns.
    /// Fault read_only when this instance may not write; not_found when the file was moved or
    /// removed since it was opened (what is written then would be lost with it).
    template <class Work>
    auto change(Work&& work) {
        return guarded([&] {
            require_writable();
            Transaction transaction(*connection_, Transaction::Kind::immediate);
            if constexpr (std::is_void_v<std::invoke_result_t<Work, Connection&>>) {
                work(*connection_);
                transaction.commit();
                require_file();
            } else {
                auto made = work(*connection_);
                transaction.commit();
                require_file();
                return made;
            }
        });
    }

    /// Runs `work` in a write transaction that is rolled back: what would happen.
    template <class Work>
    auto rehearse(Work&& work) {
        return guarded([&] {
            require_writable();
            Transaction transaction(*connection_, Transaction::Kind::immediate);
            return work(*connection_);
        });
    }

  private:
    Store() = default;
    void require_writable();
    void require_file();
    friend class Opening;

    std::string path_;
    std::string backup_folder_;
    bool read_only_ = false;
    bool has_file_ = true; ///< false for test file systems and memory
    model::Findings findings_;
    std::optional<InstanceLock> lock_; ///< outlives the connection
    std::unique_ptr<Connection> connection_;
};

} // namespace core::store
