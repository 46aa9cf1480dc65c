// A writer is killed (SIGKILL) at random moments while it acknowledges entries on a pipe: every
// acknowledged entry is in the book afterwards, and the book is sound.
#include "core/services/book.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <csignal>
#include <cstdlib>
#include <gtest/gtest.h>
#include <poll.h>
#include <random>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

using namespace core;
using namespace saltloft::testing;
using services::Book;

namespace {

int how_many(const char* variable, int otherwise) {
    const char* text = std::getenv(variable);
    return text == nullptr ? otherwise : std::atoi(text);
}

struct Acknowledged {
    std::int64_t taken_at_s;
    std::int64_t mass_mg;
};

/// The writer: opens the book, enters weighings and says so after each. Never returns.
[[noreturn]] void write_until_killed(const std::string& path, model::PieceId piece,
                                     std::int64_t first_s, std::uint64_t seed, int pipe) {
    std::mt19937_64 chance(seed);
    auto book = Book::open(path, {.now = at_s(test_now_s)});
    if (!book || book->is_read_only()) {
        _exit(3);
    }
    for (std::int64_t at = first_s;; ++at) {
        const std::int64_t mass_mg = 500000 + static_cast<std::int64_t>(chance() % 400000);
        const auto done = book->perform(
            actions::AddWeighing{weighing(piece, static_cast<double>(mass_mg) / 1000, at)},
            context());
        if (!done) {
            _exit(4);
        }
        const Acknowledged entry{at, mass_mg};
        if (write(pipe, &entry, sizeof entry) != sizeof entry) {
            _exit(5);
        }
    }
}

} // namespace

TEST(Kill, EveryAcknowledgedEntryIsPresentAndTheBookIsSound) {
    const int kills = how_many("SALTLOFT_KILLS", 60);
    const TempFolder folder;
    const std::string path = folder.file("book.saltloft");
    model::PieceId piece;
    {
        auto book = Book::create(path, {.now = at_s(test_now_s)});
        ASSERT_TRUE(book.has_value()) << book.error().detail;
        piece = book->perform(start_batch("B01"), context())
                    ->id<model::PieceId>(model::EntryKind::piece);
    }
    std::mt19937_64 chance(20261125);
    std::set<std::pair<std::int64_t, std::int64_t>> acknowledged;
    std::int64_t next_s = test_now_s + 1;
    int killed_while_writing = 0;
    for (int round = 0; round < kills; ++round) {
        std::array<int, 2> pipe_ends{};
        ASSERT_EQ(pipe(pipe_ends.data()), 0);
        const std::uint64_t seed = chance();
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            close(pipe_ends[0]);
            write_until_killed(path, piece, next_s, seed, pipe_ends[1]);
        }
        close(pipe_ends[1]);
        // One in four at any moment from its start on, while it is still opening; the others in the
        // middle of its entries, however slow the machine is.
        if (chance() % 4 != 0) {
            pollfd first_entry{pipe_ends[0], POLLIN, 0};
            static constexpr int patience_ms = 30000;
            ASSERT_EQ(poll(&first_entry, 1, patience_ms), 1);
        }
        usleep(static_cast<useconds_t>(chance() % 60000));
        ASSERT_EQ(kill(child, SIGKILL), 0);
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status)) << "the writer gave up by itself: " << WEXITSTATUS(status);
        Acknowledged entry{};
        std::size_t in_round = 0;
        while (read(pipe_ends[0], &entry, sizeof entry) == sizeof entry) {
            acknowledged.emplace(entry.taken_at_s, entry.mass_mg);
            ++in_round;
        }
        close(pipe_ends[0]);
        killed_while_writing += in_round > 0 ? 1 : 0;
        next_s += 1000000; // moments of different rounds never meet

        const auto book = Book::open(path, {.now = at_s(test_now_s)});
        ASSERT_TRUE(book.has_value()) << "kill " << round << ": " << book.error().detail;
        ASSERT_FALSE(book->is_read_only()) << "kill " << round;
        std::set<std::pair<std::int64_t, std::int64_t>> found;
        const auto weighings = book->weighings(piece);
        ASSERT_TRUE(weighings.has_value());
        for (const model::Weighing& w : *weighings) {
            found.emplace(w.taken_at.unix_seconds(), std::llround(w.on_scale.in_milligrams()));
        }
        for (const auto& one : acknowledged) {
            ASSERT_EQ(found.count(one), 1U) << "kill " << round << ": an entry is lost";
        }
        const auto report = book->check_integrity(true);
        ASSERT_TRUE(report.has_value() && report->sound()) << "kill " << round;
        // At most one entry a kill may be there without having been acknowledged.
        ASSERT_LE(found.size(), acknowledged.size() + 1 + static_cast<std::size_t>(round) + 1);
    }
    std::printf("kills: %d (%d of them after at least one entry), entries acknowledged: %zu\n",
                kills, killed_while_writing, acknowledged.size());
    EXPECT_GT(killed_while_writing, kills / 2);
}
