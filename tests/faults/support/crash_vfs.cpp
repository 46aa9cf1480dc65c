#include "tests/faults/support/crash_vfs.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <cstring>
#include <sqlite3.h>

namespace saltloft::testing {

namespace {
constexpr std::size_t sector = 512;
constexpr std::size_t shm_region = 32768;
} // namespace

/// One file: what the disk surely holds, and what happened since in order.
struct CrashDisk::File {
    struct Change {
        enum class Kind { write, truncate, create } kind;
        std::size_t offset = 0; ///< or the new size
        std::string bytes;
    };
    bool exists = false;         ///< as programs see it
    std::string content;         ///< as programs see it
    bool durable_exists = false; ///< as the disk holds it
    std::string durable;
    std::vector<Change> unsynced;
    /// The file of the same name that was removed; until this one is synced, the folder on the
    /// disk may still lead there.
    std::shared_ptr<File> removed;
    /// Shared memory of the write-ahead log lives in RAM: it is gone with the power.
    std::vector<std::unique_ptr<std::array<char, shm_region>>> shm;
    std::array<int, SQLITE_SHM_NLOCK> shm_shared{};
    std::array<bool, SQLITE_SHM_NLOCK> shm_exclusive{};
    int lock_shared = 0;
    bool lock_reserved = false;
    bool lock_exclusive = false;

    static void apply(std::string& to, bool& is_there, const Change& change) {
        switch (change.kind) {
        case Change::Kind::create:
            is_there = true;
            break;
        case Change::Kind::truncate:
            to.resize(change.offset);
            break;
        case Change::Kind::write:
            if (to.size() < change.offset + change.bytes.size()) {
                to.resize(change.offset + change.bytes.size());
            }
            to.replace(change.offset, change.bytes.size(), change.bytes);
            break;
        }
    }
    void change(Change what) {
        apply(content, exists, what);
        unsynced.push_back(std::move(what));
    }
    /// What the disk gives back: every change since the last sync kept, dropped or torn.
    template <class Draw>
    std::pair<bool, std::string> after_power_cut(const Draw& draw) const {
        bool is_there = durable_exists;
        std::string kept_content = durable;
        for (const Change& change : unsynced) {
            const std::uint64_t fate = draw(3); // kept, dropped, torn
            if (fate == 1) {
                continue;
            }
            Change kept = change;
            if (fate == 2 && change.kind == Change::Kind::write) {
                tear(kept, kept_content, draw);
            }
            apply(kept_content, is_there, kept);
        }
        return {is_there, kept_content};
    }
    /// Any of a write's sectors may have reached the disk, not only the first ones.
    template <class Draw>
    static void tear(Change& kept, const std::string& under, const Draw& draw) {
        for (std::size_t at = 0; at < kept.bytes.size();) {
            const std::size_t place = kept.offset + at;
            const std::size_t until = std::min(kept.bytes.size(), at + sector - place % sector);
            const bool lost = draw(2) == 0;
            for (std::size_t i = at; lost && i < until; ++i) {
                const std::size_t where = kept.offset + i;
                kept.bytes[i] = where < under.size() ? under[where] : '\0';
            }
            at = until;
        }
    }
    void sync() {
        durable = content;
        durable_exists = exists;
        unsynced.clear();
        removed.reset();
    }
};

struct CrashDisk::Snapshot {
    std::map<std::string, std::pair<bool, std::string>> files;
};

/// An open file as SQLite sees it. Locks are counted per file; one thread, so no waiting.
struct OpenFile {
    sqlite3_file base;
    CrashDisk* disk;
    std::shared_ptr<CrashDisk::File>* file;
    bool delete_on_close;
    int lock;
    bool uses_shm;
};

struct CrashDisk::Impl {
    sqlite3_vfs vfs{};
    std::string vfs_name;

    static OpenFile* of(sqlite3_file* f) { return reinterpret_cast<OpenFile*>(f); }
    static CrashDisk& disk_of(sqlite3_vfs* v) { return *static_cast<CrashDisk*>(v->pAppData); }
    static sqlite3_vfs* real() { return sqlite3_vfs_find("unix"); }

    // --- files -----------------------------------------------------------------------------
    static int close(sqlite3_file* f) {
        OpenFile* o = of(f);
        unlock(f, SQLITE_LOCK_NONE);
        delete o->file;
        o->file = nullptr;
        return SQLITE_OK;
    }
    static int read(sqlite3_file* f, void* to, int amount, sqlite3_int64 at) {
        OpenFile* o = of(f);
        if (const int code = o->disk->next(Operation::read); code != SQLITE_OK) {
            return code;
        }
        const std::string& content = (*o->file)->content;
        const auto from = static_cast<std::size_t>(at);
        const auto wanted = static_cast<std::size_t>(amount);
        const std::size_t there =
            from < content.size() ? std::min(wanted, content.size() - from) : 0;
        std::memcpy(to, content.data() + (there == 0 ? 0 : from), there);
        std::memset(static_cast<char*>(to) + there, 0, wanted - there);
        return there == wanted ? SQLITE_OK : SQLITE_IOERR_SHORT_READ;
    }
    static int write(sqlite3_file* f, const void* from, int amount, sqlite3_int64 at) {
        OpenFile* o = of(f);
        if (const int code = o->disk->next(Operation::write); code != SQLITE_OK) {
            return code;
        }
        (*o->file)->change(
            {File::Change::Kind::write, static_cast<std::size_t>(at),
             std::string(static_cast<const char*>(from), static_cast<std::size_t>(amount))});
        return SQLITE_OK;
    }
    static int truncate(sqlite3_file* f, sqlite3_int64 size) {
        OpenFile* o = of(f);
        if (const int code = o->disk->next(Operation::truncate); code != SQLITE_OK) {
            return code;
        }
        (*o->file)->change(
            {File::Change::Kind::truncate, static_cast<std::size_t>(size), std::string()});
        return SQLITE_OK;
    }
    static int sync(sqlite3_file* f, int) {
        OpenFile* o = of(f);
        if (const int code = o->disk->next(Operation::sync); code != SQLITE_OK) {
            return code;
        }
        (*o->file)->sync();
        return SQLITE_OK;
    }
    static int size(sqlite3_file* f, sqlite3_int64* out) {
        *out = static_cast<sqlite3_int64>((*of(f)->file)->content.size());
        return SQLITE_OK;
    }

    static int lock(sqlite3_file* f, int level) {
        OpenFile* o = of(f);
        File& file = **o->file;
        if (level <= o->lock) {
            return SQLITE_OK;
        }
        const int own_shared = o->lock >= SQLITE_LOCK_SHARED ? 1 : 0;
        if (level == SQLITE_LOCK_SHARED) {
            if (file.lock_exclusive) {
                return SQLITE_BUSY;
            }
            ++file.lock_shared;
        } else if (level == SQLITE_LOCK_RESERVED) {
            if (file.lock_reserved) {
                return SQLITE_BUSY;
            }
            file.lock_reserved = true;
        } else {
            const bool own_reserved = o->lock >= SQLITE_LOCK_RESERVED;
            if ((file.lock_reserved && !own_reserved) || file.lock_shared > own_shared) {
                return SQLITE_BUSY;
            }
            file.lock_reserved = true;
            file.lock_exclusive = true;
        }
        o->lock = level;
        return SQLITE_OK;
    }
    static int unlock(sqlite3_file* f, int level) {
        OpenFile* o = of(f);
        File& file = **o->file;
        if (o->lock >= SQLITE_LOCK_RESERVED && level < SQLITE_LOCK_RESERVED) {
            file.lock_reserved = false;
            file.lock_exclusive = false;
        }
        if (o->lock >= SQLITE_LOCK_SHARED && level < SQLITE_LOCK_SHARED) {
            --file.lock_shared;
        }
        o->lock = std::min(o->lock, level);
        return SQLITE_OK;
    }
    static int check_reserved(sqlite3_file* f, int* out) {
        *out = (*of(f)->file)->lock_reserved ? 1 : 0;
        return SQLITE_OK;
    }
    static int control(sqlite3_file*, int, void*) { return SQLITE_NOTFOUND; }
    static int sector_size(sqlite3_file*) { return static_cast<int>(sector); }
    static int characteristics(sqlite3_file*) { return 0; } // nothing is promised

    // --- shared memory -------------------------------------------------------------------------
    static int shm_map(sqlite3_file* f, int region, int, int extend, void volatile** out) {
        File& file = **of(f)->file;
        const auto index = static_cast<std::size_t>(region);
        *out = nullptr;
        if (index >= file.shm.size() && extend == 0) {
            return SQLITE_OK;
        }
        while (file.shm.size() <= index) {
            file.shm.push_back(std::make_unique<std::array<char, shm_region>>());
            file.shm.back()->fill(0);
        }
        *out = file.shm[index]->data();
        of(f)->uses_shm = true;
        return SQLITE_OK;
    }
    static int shm_lock(sqlite3_file* f, int offset, int n, int flags) {
        File& file = **of(f)->file;
        for (int i = offset; i < offset + n; ++i) {
            const auto at = static_cast<std::size_t>(i);
            if ((flags & SQLITE_SHM_LOCK) != 0 &&
                (file.shm_exclusive[at] ||
                 ((flags & SQLITE_SHM_EXCLUSIVE) != 0 && file.shm_shared[at] > 0))) {
                return SQLITE_BUSY;
            }
        }
        for (int i = offset; i < offset + n; ++i) {
            const auto at = static_cast<std::size_t>(i);
            const bool take = (flags & SQLITE_SHM_LOCK) != 0;
            if ((flags & SQLITE_SHM_EXCLUSIVE) != 0) {
                file.shm_exclusive[at] = take;
            } else {
                file.shm_shared[at] += take ? 1 : -1;
            }
        }
        return SQLITE_OK;
    }
    static void shm_barrier(sqlite3_file*) {}
    static int shm_unmap(sqlite3_file* f, int remove) {
        if (remove != 0) {
            (*of(f)->file)->shm.clear();
        }
        return SQLITE_OK;
    }

    // --- the file system -------------------------------------------------------------------------
    static const sqlite3_io_methods& methods() {
        static const sqlite3_io_methods all{2,
                                            close,
                                            read,
                                            write,
                                            truncate,
                                            sync,
                                            size,
                                            lock,
                                            unlock,
                                            check_reserved,
                                            control,
                                            sector_size,
                                            characteristics,
                                            shm_map,
                                            shm_lock,
                                            shm_barrier,
                                            shm_unmap,
                                            nullptr,
                                            nullptr};
        return all;
    }
    static int open(sqlite3_vfs* v, const char* name, sqlite3_file* f, int flags, int* out_flags) {
        CrashDisk& disk = disk_of(v);
        f->pMethods = nullptr;
        if (const int code = disk.next(Operation::open); code != SQLITE_OK) {
            return SQLITE_CANTOPEN;
        }
        auto& file = name == nullptr ? disk.files_["temporary"] : disk.files_[name];
        if (file == nullptr) {
            file = std::make_shared<File>();
        }
        if (!file->exists) {
            if ((flags & SQLITE_OPEN_CREATE) == 0) {
                return SQLITE_CANTOPEN;
            }
            file->change({File::Change::Kind::create, 0, std::string()});
        }
        OpenFile* o = of(f);
        *o = OpenFile{{&methods()},     &disk, new std::shared_ptr<File>(file), false,
                      SQLITE_LOCK_NONE, false};
        if (out_flags != nullptr) {
            *out_flags = flags;
        }
        return SQLITE_OK;
    }
    static int remove(sqlite3_vfs* v, const char* name, int sync_folder) {
        CrashDisk& disk = disk_of(v);
        if (const int code = disk.next(Operation::remove); code != SQLITE_OK) {
            return SQLITE_IOERR_DELETE;
        }
        const auto found = disk.files_.find(name);
        if (found == disk.files_.end() || !found->second->exists) {
            return SQLITE_IOERR_DELETE_NOENT;
        }
        const auto gone = std::make_shared<File>();
        gone->removed = found->second;
        found->second = gone;
        if (sync_folder != 0) {
            gone->sync();
        }
        return SQLITE_OK;
    }
    static int access(sqlite3_vfs* v, const char* name, int, int* out) {
        CrashDisk& disk = disk_of(v);
        const auto found = disk.files_.find(name);
        *out = found != disk.files_.end() && found->second->exists ? 1 : 0;
        return SQLITE_OK;
    }
    static int full_path(sqlite3_vfs*, const char* name, int size, char* out) {
        sqlite3_snprintf(size, out, "%s", name);
        return SQLITE_OK;
    }
    static int randomness(sqlite3_vfs*, int n, char* out) {
        return real()->xRandomness(real(), n, out);
    }
    static int sleep(sqlite3_vfs*, int microseconds) { return microseconds; } // nobody to wait for
    static int current_time(sqlite3_vfs*, double* out) { return real()->xCurrentTime(real(), out); }
    static int last_error(sqlite3_vfs*, int, char*) { return 0; }
};

CrashDisk::CrashDisk(std::string name) : name_(std::move(name)), impl_(std::make_unique<Impl>()) {
    impl_->vfs_name = name_;
    sqlite3_vfs& v = impl_->vfs;
    v.iVersion = 1;
    v.szOsFile = sizeof(OpenFile);
    v.mxPathname = 512;
    v.zName = impl_->vfs_name.c_str();
    v.pAppData = this;
    v.xOpen = Impl::open;
    v.xDelete = Impl::remove;
    v.xAccess = Impl::access;
    v.xFullPathname = Impl::full_path;
    v.xRandomness = Impl::randomness;
    v.xSleep = Impl::sleep;
    v.xCurrentTime = Impl::current_time;
    v.xGetLastError = Impl::last_error;
    sqlite3_vfs_register(&v, 0);
}

CrashDisk::~CrashDisk() {
    sqlite3_vfs_unregister(&impl_->vfs);
}

int CrashDisk::next(Operation operation) {
    const std::int64_t number = operations_++;
    if (power_lost_at_ && number >= *power_lost_at_) {
        struck_ = true;
        return SQLITE_IOERR;
    }
    if (!trouble_) {
        return SQLITE_OK;
    }
    const std::int64_t since = number - trouble_set_at_;
    const bool now =
        trouble_->lasting ? since >= trouble_->from_operation : since == trouble_->from_operation;
    if (!now) {
        return SQLITE_OK;
    }
    if (trouble_->kind == Trouble::Kind::disk_full) {
        if (operation != Operation::write) {
            return SQLITE_OK;
        }
        struck_ = true;
        return SQLITE_FULL;
    }
    struck_ = true;
    switch (operation) {
    case Operation::read:
        return SQLITE_IOERR_READ;
    case Operation::write:
        return SQLITE_IOERR_WRITE;
    case Operation::truncate:
        return SQLITE_IOERR_TRUNCATE;
    case Operation::sync:
        return SQLITE_IOERR_FSYNC;
    default:
        return SQLITE_IOERR;
    }
}

void CrashDisk::set_trouble(const Trouble& trouble) {
    trouble_ = trouble;
    trouble_set_at_ = operations_;
    struck_ = false;
}

void CrashDisk::clear_trouble() {
    trouble_.reset();
    power_lost_at_.reset();
}

void CrashDisk::lose_power_at(std::int64_t operation) {
    power_lost_at_ = operations_ + operation;
    struck_ = false;
}

void CrashDisk::cut_power(std::mt19937_64& chance) {
    clear_trouble();
    const auto draw = [&](std::uint64_t below) { return chance() % below; };
    for (auto& [name, file] : files_) {
        std::shared_ptr<File> found = file;
        while (found->removed != nullptr && draw(2) == 0) {
            found = found->removed; // the folder had not heard of the removal
        }
        const auto [exists, content] = found->after_power_cut(draw);
        // Whoever had it open is gone; locks and shared memory with them.
        const auto fresh = std::make_shared<File>();
        fresh->exists = exists;
        fresh->content = exists ? content : std::string();
        fresh->sync();
        file = fresh;
    }
}

std::shared_ptr<const CrashDisk::Snapshot> CrashDisk::snapshot() const {
    auto taken = std::make_shared<Snapshot>();
    for (const auto& [name, file] : files_) {
        taken->files[name] = {file->exists, file->content};
    }
    return taken;
}

void CrashDisk::go_back_to(const Snapshot& snapshot) {
    files_.clear();
    for (const auto& [name, state] : snapshot.files) {
        const auto fresh = std::make_shared<File>();
        fresh->exists = state.first;
        fresh->content = state.second;
        fresh->sync();
        files_[name] = fresh;
    }
}

std::string CrashDisk::bytes(const std::string& path) const {
    const auto found = files_.find(path);
    return found == files_.end() ? std::string() : found->second->content;
}

} // namespace saltloft::testing
