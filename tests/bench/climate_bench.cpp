// Ten years of five loggers, one reading a minute: 26 million readings. Every figure stands beside
// a baseline measured in this run, because times on a shared machine are noise and ratios hold.
//
// SALTLOFT_BENCH_YEARS sets another length (default 10). The book is made once, in the temporary
// folder, through the store's own append.
#include "core/services/book.h"
#include "core/services/climate.h"
#include "core/store/climate.h"
#include "core/store/store.h"
#include "tests/bench/smoke.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <fstream>
#include <iostream>
#include <sqlite3.h>

using namespace core;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::TempFolder;
using units::Instant;

namespace {

constexpr int sensors = 5;
constexpr int chart_pixels = 1200;
constexpr std::int64_t year_s = 365LL * 86400;
constexpr std::int64_t first_s = 1'400'000'400; // on a quarter hour

std::int64_t years() {
    const char* text = std::getenv("SALTLOFT_BENCH_YEARS");
    return text != nullptr ? std::atoi(text) : smoke() ? 1 : 10;
}
std::int64_t minutes_in_all() {
    return years() * year_s / 60;
}

/// A fridge that cycles, a day's wave, a year's wave and some noise.
model::ClimateReading reading_at(std::int64_t minute, int sensor) {
    const auto m = static_cast<double>(minute);
    const double celsius = 12 + 0.4 * std::sin(m / 9) + 0.5 * std::sin(m / 229.2 + sensor) +
                           1.5 * std::sin(m / 83'655);
    const double percent = 75 + 3 * std::cos(m / 9) + static_cast<double>(minute * 7919 % 13) / 10;
    return {Instant::from_unix_seconds(first_s + minute * 60), units::Temperature::celsius(celsius),
            units::RelativeHumidity::percent(percent)};
}

std::string new_book(const TempFolder& folder, const std::string& name) {
    const auto path = folder.file(name);
    auto book = services::Book::create(path, {.now = at_s(first_s)});
    model::Chamber chamber;
    chamber.name = "cabinet";
    const auto added = book->perform(actions::AddChamber{chamber}, context());
    for (int i = 0; i < sensors; ++i) {
        model::Sensor sensor;
        sensor.chamber = added->id<model::ChamberId>(model::EntryKind::chamber);
        sensor.name = fmt::format("logger {}", i + 1);
        (void)book->perform(actions::AddSensor{sensor}, context());
    }
    return path;
}

void fill(const std::string& path) {
    auto book = std::move(*store::Store::open(path, {.now = at_s(first_s)}));
    constexpr std::int64_t chunk = 100'000;
    for (int sensor = 1; sensor <= sensors; ++sensor) {
        model::ClimateImportId id;
        for (std::int64_t at = 0; at < minutes_in_all(); at += chunk) {
            std::vector<model::ClimateReading> readings;
            for (std::int64_t m = at; m < std::min(at + chunk, minutes_in_all()); ++m) {
                readings.push_back(reading_at(m, sensor));
            }
            const auto done = book->change([&](store::Connection& c) {
                if (!id.is_assigned()) {
                    id = store::begin_climate_import(
                        c, {.sensor = model::SensorId::from_row(sensor), .made_at = at_s(first_s)},
                        "{}");
                }
                store::append_climate(c, id, readings);
            });
            if (!done) {
                std::cerr << done.error().detail << "\n";
                std::exit(1);
            }
        }
        (void)book->change(
            [&](store::Connection& c) { store::end_climate_import(c, id, {.at = at_s(first_s)}); });
    }
}

/// The full book and an empty one, made once.
struct Books {
    TempFolder folder;
    std::string full = new_book(folder, "full.saltloft");
    std::string empty = new_book(folder, "empty.saltloft");
    Books() { fill(full); }
};
Books& books() {
    static Books made;
    return made;
}

double seconds_of(const auto& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

double cpu_now() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

/// Processor time of this process alone: what stays put while other programs compile beside it.
double cpu_seconds_of(const auto& work) {
    const double start = cpu_now();
    work();
    return cpu_now() - start;
}

double median_cpu_of(int times, const auto& work) {
    std::vector<double> took;
    for (int i = 0; i < times; ++i) {
        took.push_back(cpu_seconds_of(work));
    }
    std::sort(took.begin(), took.end());
    return took[took.size() / 2];
}

/// The baseline: the ten years of all sensors cut to pixels from the readings themselves, by a
/// stream through C++ (SQL's own GROUP BY takes several times longer).
double raw_scan_seconds() {
    static const double seconds = [] {
        sqlite3* db = nullptr;
        sqlite3_open_v2(books().full.c_str(), &db, SQLITE_OPEN_READONLY, nullptr);
        const double took = cpu_seconds_of([&] {
            sqlite3_stmt* rows = nullptr;
            sqlite3_prepare_v2(db,
                               "SELECT sensor_id, at_s, temp_centic, rh_centipct FROM"
                               " climate_reading ORDER BY sensor_id, at_s",
                               -1, &rows, nullptr);
            const std::int64_t span = minutes_in_all() * 60;
            struct Column {
                std::int64_t low = 1'000'000;
                std::int64_t high = -1'000'000;
                std::int64_t sum = 0;
            };
            std::vector<Column> columns(2 * chart_pixels + 2);
            while (sqlite3_step(rows) == SQLITE_ROW) {
                const auto pixel = static_cast<std::size_t>(
                    (sqlite3_column_int64(rows, 1) - first_s) * chart_pixels / span);
                for (int q = 0; q < 2; ++q) {
                    auto& column = columns[2 * pixel + static_cast<std::size_t>(q)];
                    const std::int64_t value = sqlite3_column_int64(rows, 2 + q);
                    column.low = std::min(column.low, value);
                    column.high = std::max(column.high, value);
                    column.sum += value;
                }
            }
            benchmark::DoNotOptimize(columns);
            sqlite3_finalize(rows);
        });
        sqlite3_close(db);
        return took;
    }();
    return seconds;
}

/// Query and decimation of `days` at the end of the ten years, for two loggers laid over each
/// other, as the chamber page draws them, and for all five. Processor time.
void window(benchmark::State& state) {
    const auto days = state.range(0);
    const auto reader = services::ClimateReader::open(books().full);
    const auto end = Instant::from_unix_seconds(first_s + minutes_in_all() * 60);
    const auto from = end - units::Duration::days(static_cast<double>(days));
    model::Sensor sensor;
    std::size_t points = 0;
    const auto chart = [&](int loggers) {
        points = 0;
        for (int i = 1; i <= loggers; ++i) {
            sensor.id = model::SensorId::from_row(i);
            points += reader->series(sensor, from, end, chart_pixels)->points.size();
        }
    };
    for (auto _ : state) {
        chart(2);
    }
    const double two = median_cpu_of(7, [&] { chart(2); });
    const double five = median_cpu_of(7, [&] { chart(sensors); });
    state.counters["two_ms"] = two * 1000;
    state.counters["five_ms"] = five * 1000;
    state.counters["raw_scan_ms"] = raw_scan_seconds() * 1000;
    state.counters["two_times_faster"] = raw_scan_seconds() / two;
    state.counters["five_times_faster"] = raw_scan_seconds() / five;
    benchmark::DoNotOptimize(points);
}
BENCHMARK(window)
    ->Arg(1)
    ->Arg(7)
    ->Arg(24)
    ->Arg(26)
    ->Arg(99)
    ->Arg(101)
    ->Arg(365)
    ->Arg(599)
    ->Arg(601)
    ->Arg(2399)
    ->Arg(3650)
    ->Unit(benchmark::kMillisecond);

void open_book(benchmark::State& state) {
    const auto open = [](const std::string& path) {
        auto book = services::Book::open(path, {.now = at_s(first_s)});
        benchmark::DoNotOptimize(book);
    };
    books();
    std::vector<double> full;
    std::vector<double> empty;
    for (auto _ : state) {
        for (int i = 0; i < 21; ++i) { // taken in turn, so that noise meets both
            full.push_back(seconds_of([&] { open(books().full); }));
            empty.push_back(seconds_of([&] { open(books().empty); }));
        }
    }
    std::sort(full.begin(), full.end());
    std::sort(empty.begin(), empty.end());
    state.counters["full_ms"] = full[full.size() / 2] * 1000;
    state.counters["empty_ms"] = empty[empty.size() / 2] * 1000;
    state.counters["ratio"] = full[full.size() / 2] / empty[empty.size() / 2];
}
BENCHMARK(open_book)->Iterations(1)->Unit(benchmark::kMillisecond);

long resident_kib() {
    std::ifstream status("/proc/self/status");
    std::string word;
    long kib = 0;
    while (status >> word && word != "VmRSS:") {
    }
    status >> kib;
    return kib;
}

const int import_rows = smoke() ? 20'000 : 1'000'000;

/// The million rows as a logger writes them, and as `.import` wants them.
void write_logs(const TempFolder& folder, int rows) {
    std::ofstream log(folder.file("log.csv"));
    std::ofstream plain(folder.file("plain.csv"));
    log << "time,temperature C,humidity %\n";
    for (int m = 0; m < rows; ++m) {
        const auto r = reading_at(m, 1);
        const auto celsius = static_cast<double>(std::llround(r.temperature->in_celsius() * 100));
        const auto percent = static_cast<double>(std::llround(r.humidity->in_percent() * 100));
        const std::chrono::sys_seconds at(std::chrono::seconds(r.at.unix_seconds()));
        const auto day = std::chrono::floor<std::chrono::days>(at);
        const std::chrono::year_month_day date(day);
        const std::chrono::hh_mm_ss time(at - day);
        log << fmt::format("{:04}-{:02}-{:02} {:02}:{:02}:{:02},{:.2f},{:.2f}\n",
                           static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                           static_cast<unsigned>(date.day()), time.hours().count(),
                           time.minutes().count(), time.seconds().count(), celsius / 100,
                           percent / 100);
        plain << fmt::format("1,{},{:.0f},{:.0f},1\n", r.at.unix_seconds(), celsius, percent);
    }
}

double our_import(const TempFolder& folder, int turn, long& grew_kib) {
    const auto path = new_book(folder, fmt::format("ours{}.saltloft", turn));
    const auto book = services::Book::open(path, {.now = at_s(first_s)});
    const auto log = folder.file("log.csv");
    const auto preview = services::preview_climate_log(log, {.zone = "Europe/Rome"});
    services::ClimateImportRequest request{
        log, model::SensorId::from_row(1), preview->detection.dialect, at_s(first_s), {}};
    long early = 0;
    long most = 0;
    std::int64_t added = 0;
    const double took = seconds_of([&] {
        const auto report =
            services::import_climate_log(path, request,
                                         [&](const auto& progress) {
                                             if (early == 0 && progress.readings > 100'000) {
                                                 early = resident_kib();
                                             }
                                             most = std::max(most, resident_kib());
                                         },
                                         {});
        added = report->import.added;
    });
    if (added < import_rows - 200) { // an hour of each spring is not in Rome's local time
        std::cerr << "only " << added << " rows were added\n";
    }
    grew_kib = most - early;
    return took;
}

double plain_import(const TempFolder& folder, int turn) {
    const auto path = new_book(folder, fmt::format("plain{}.saltloft", turn));
    const auto line = fmt::format("sqlite3 '{}' '.mode csv' '.import \"{}\" climate_reading'", path,
                                  folder.file("plain.csv"));
    return seconds_of([&] {
        if (std::system(line.c_str()) != 0) {
            std::cerr << "sqlite3 is not there\n";
        }
    });
}

void import_log(benchmark::State& state) {
    const TempFolder folder;
    write_logs(folder, import_rows);
    std::vector<double> ours;
    std::vector<double> plain;
    long grew_kib = 0;
    for (auto _ : state) {
        for (int turn = 0; turn < 5; ++turn) {
            ours.push_back(our_import(folder, turn, grew_kib));
            plain.push_back(plain_import(folder, turn));
        }
    }
    std::sort(ours.begin(), ours.end());
    std::sort(plain.begin(), plain.end());
    state.counters["ours_rows_per_s"] = import_rows / ours[2];
    state.counters["sqlite_import_rows_per_s"] = import_rows / plain[2];
    state.counters["ratio"] = plain[2] / ours[2];
    state.counters["grew_KiB"] = static_cast<double>(grew_kib);
}
BENCHMARK(import_log)->Iterations(1)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
