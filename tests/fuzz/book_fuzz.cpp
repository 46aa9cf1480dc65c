// Opening whatever bytes as a book: a clear refusal or a readable book, never a crash, and nothing
// in it is run. What opens is read through, checked, copied and salvaged, as the window would do.
#include "core/services/book.h"
#include "core/store/fault.h"

#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;
using core::services::Book;

std::string folder() {
    static const std::string path = [] {
        // Shared memory where there is some: thousands of runs a second need no disk.
        const fs::path base = fs::exists("/dev/shm") ? "/dev/shm" : fs::temp_directory_path();
        const fs::path made = base / ("saltloft-fuzz-" + std::to_string(getpid()));
        fs::create_directories(made);
        return made.string();
    }();
    return path;
}

void read_through(const Book& book) {
    (void)book.batch_overviews();
    (void)book.piece_histories();
    (void)book.log(50);
    (void)book.notes();
    (void)book.packs();
    (void)book.open_stages();
    (void)book.undo_label();
    (void)book.check_integrity(true);
    if (const auto pieces = book.pieces(); pieces && !pieces->empty()) {
        (void)book.history({core::model::EntryKind::piece, pieces->front().id.row()});
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string path = folder() + "/book";
    const auto now = core::units::Instant::from_unix_seconds(1772352000);
    for (const char* suffix : {"", "-wal", "-shm", "-journal"}) {
        std::error_code ignored;
        fs::remove(path + suffix, ignored);
    }
    {
        std::ofstream file(path, std::ios::binary | std::ios::trunc);
        file.write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
    }
    bool offer_salvage = false;
    {
        auto book = Book::open(path, {.now = now});
        if (book) {
            read_through(*book);
            (void)book->undo({std::nullopt, now, ""});
        }
        offer_salvage =
            book ? book->is_read_only() : book.error().code == core::base::ErrorCode::damaged;
    }
    std::error_code ignored;
    if (offer_salvage) { // as the window does
        const std::string saved = folder() + "/saved";
        fs::remove(saved, ignored);
        (void)core::services::salvage(path, saved, now);
    }
    fs::remove_all(folder() + "/backups", ignored);
    return 0;
}
