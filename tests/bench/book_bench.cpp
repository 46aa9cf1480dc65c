// What keeping a weighing costs beside a bare insert with the same pragmas, and what opening a
// ten-year book costs beside counting its rows. Baselines run in the same process, in turn with
// what they are compared with, because this class of machine drifts.
#include "core/services/book.h"
#include "core/store/store.h"
#include "tests/bench/smoke.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"
#include "tests/support/ten_year_book.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <vector>

using namespace core;
using namespace saltloft::testing;
using Clock = std::chrono::steady_clock;

namespace {

template <class Work>
double seconds(Work&& work) {
    const auto from = Clock::now();
    work();
    return std::chrono::duration<double>(Clock::now() - from).count();
}

double median(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2),
                     values.end());
    return values[values.size() / 2];
}

void commit_of_one_weighing(benchmark::State& state) {
    const TempFolder folder;
    auto book = services::Book::create(folder.file("book.saltloft"), {.now = at_s(test_now_s)});
    const auto piece =
        book->perform(start_batch("B01"), context())->id<model::PieceId>(model::EntryKind::piece);

    SQLite::Database bare(folder.file("bare.db"), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    for (const char* pragma : {"journal_mode=WAL", "synchronous=FULL", "foreign_keys=ON",
                               "cell_size_check=ON", "trusted_schema=OFF"}) {
        bare.exec(std::string("PRAGMA ") + pragma);
    }
    bare.exec("CREATE TABLE piece (id INTEGER PRIMARY KEY) STRICT; INSERT INTO piece VALUES (1);"
              "CREATE TABLE weighing (id INTEGER PRIMARY KEY AUTOINCREMENT, piece_id INTEGER NOT"
              " NULL REFERENCES piece (id), taken_at_s INTEGER NOT NULL, on_scale_mg INTEGER NOT"
              " NULL, tare_mg INTEGER NOT NULL, state TEXT NOT NULL, scale_step_mg INTEGER,"
              " wet_surface INTEGER NOT NULL, note TEXT NOT NULL, amends_id INTEGER REFERENCES"
              " weighing (id), withdrawn INTEGER NOT NULL) STRICT;"
              "CREATE INDEX weighing_by_piece ON weighing (piece_id, taken_at_s);");
    SQLite::Statement insert(bare, "INSERT INTO weighing (piece_id, taken_at_s, on_scale_mg,"
                                   " tare_mg, state, scale_step_mg, wet_surface, note, amends_id,"
                                   " withdrawn) VALUES (1, ?, ?, 40000, 'netted', 1000, 0, '',"
                                   " NULL, 0)");
    std::vector<double> ours;
    std::vector<double> theirs;
    std::int64_t n = 0;
    for (auto _ : state) {
        ++n;
        theirs.push_back(seconds([&] {
            SQLite::Transaction transaction(bare, SQLite::TransactionBehavior::IMMEDIATE);
            insert.bind(1, test_now_s + n);
            insert.bind(2, 900000 - n);
            insert.exec();
            transaction.commit();
            insert.reset();
        }));
        ours.push_back(seconds([&] {
            const auto done = book->perform(
                actions::AddWeighing{weighing(piece, 900, test_now_s + n, 40)}, context());
            if (!done) {
                state.SkipWithError(done.error().detail.c_str());
            }
        }));
        state.SetIterationTime(ours.back());
    }
    state.counters["bare_us"] = 1e6 * median(theirs);
    state.counters["ours_us"] = 1e6 * median(ours);
    state.counters["times_bare"] = median(ours) / median(theirs);
}
BENCHMARK(commit_of_one_weighing)->UseManualTime()->Iterations(2000)->Unit(benchmark::kMicrosecond);

/// The file named by SALTLOFT_TEN_YEAR_BOOK (made when it is not there), or a fresh one.
std::string ten_year_file(const TempFolder& folder) {
    const char* kept = std::getenv("SALTLOFT_TEN_YEAR_BOOK");
    const std::string path = kept != nullptr ? kept : folder.file("ten.saltloft");
    if (!std::filesystem::exists(path)) {
        make_ten_year_book(path, smoke() ? BookSize{.batches = 40} : ten_years);
    }
    return path;
}

void open_ten_year_book(benchmark::State& state) {
    const TempFolder folder;
    const std::string path = ten_year_file(folder);
    const bool checked = state.range(0) != 0;
    std::vector<double> ours;
    std::vector<double> first_screen;
    std::vector<double> counting;
    const std::string count = "sqlite3 '" + path + "' 'select count(*) from weighing' >/dev/null";
    for (auto _ : state) {
        counting.push_back(seconds([&] {
            if (std::system(count.c_str()) != 0) {
                state.SkipWithError("sqlite3 is needed for the baseline");
            }
        }));
        std::optional<services::Book> book;
        ours.push_back(seconds([&] {
            auto opened = services::Book::open(path, {.now = at_s(test_now_s), .check = checked});
            if (!opened) {
                state.SkipWithError(opened.error().detail.c_str());
                return;
            }
            book.emplace(std::move(*opened));
        }));
        first_screen.push_back(seconds([&] {
            benchmark::DoNotOptimize(
                book->piece_histories({.states = {model::PieceState::drying}}));
        }));
        state.SetIterationTime(ours.back());
    }
    state.counters["sqlite3_count_ms"] = 1e3 * median(counting);
    state.counters["open_ms"] = 1e3 * median(ours);
    state.counters["hanging_pieces_ms"] = 1e3 * median(first_screen);
    state.counters["times_count"] = median(ours) / median(counting);
    state.counters["file_mb"] = static_cast<double>(std::filesystem::file_size(path)) / 1024 / 1024;
}
BENCHMARK(open_ten_year_book)
    ->ArgName("quick_check")
    ->Arg(0)
    ->Arg(1)
    ->UseManualTime()
    ->Iterations(5)
    ->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
