// 200 pieces x 12 weighings: a full posterior (fit, bad-weighing search, sampling, band) beside one
// bare GSL least-squares fit of the same physical curve in the same run. The ratio is the figure;
// the aim is 20 or less. Peak memory is printed after one and after ten rounds: it must not grow.
#include "core/drying/piece_fit.h"
#include "core/drying/posterior.h"
#include "core/numeric/least_squares.h"
#include "tests/bench/smoke.h"
#include "tests/support/forecast_trial.h"

#include <benchmark/benchmark.h>
#include <cstdio>
#include <ctime>
#include <sys/resource.h>

namespace {

using namespace core::drying;
using namespace tests::support;

std::vector<ForecastRequest> requests() {
    std::vector<ForecastRequest> out;
    for (std::uint64_t i = 1; out.size() < (smoke() ? 2 : 200); ++i) {
        VirtualPiece piece = make_piece(usual_pieces(), i);
        piece.spec.weigh_interval_d = 0.75 * piece.ready_day / 11.5;
        piece.spec.interval_jitter = 0;
        std::mt19937_64 rng(i);
        piece.weighings = weigh(piece.spec, piece.course, 0.75 * piece.ready_day, rng);
        auto r = request_for(piece, {.fraction = 0.75, .with_log = true});
        r->band_points = 40;
        out.push_back(std::move(*r));
    }
    return out;
}

/// Ordinary least squares on the eight parameters of the curve, held together by the prior.
double bare_fit(const PreparedPiece& piece) {
    const FitInput& in = piece.input;
    const PhysicalModel model(in.prior.body, in.air);
    LossCurve curve;
    core::numeric::LeastSquaresProblem problem;
    problem.residual_count = in.points.size() + parameter_count;
    problem.start.assign(parameter_count, 0.0);
    problem.residuals = [&](std::span<const double> x, std::span<double> r) {
        const double hung = in.prior.hung_grams(x);
        model.run(in.prior.kinetics(x), {}, in.air.now_day, 0, 0, curve);
        for (std::size_t i = 0; i < in.points.size(); ++i) {
            r[i] = (in.points[i].grams - hung * (1 - curve.at(in.points[i].day))) / 2.5;
        }
        std::copy(x.begin(), x.end(), r.begin() + static_cast<std::ptrdiff_t>(in.points.size()));
        return true;
    };
    const auto fit = core::numeric::fit_least_squares(
        problem, {.max_iterations = 100, .step_tolerance = 1e-6, .gradient_tolerance = 1e-10});
    return fit.rss.value_or(0);
}

void bare(benchmark::State& state) {
    static const auto all = requests();
    std::vector<PreparedPiece> pieces;
    for (const auto& r : all) {
        pieces.push_back(*prepare(r));
    }
    for (auto _ : state) {
        double sum = 0;
        for (const auto& p : pieces) {
            sum += bare_fit(p);
        }
        benchmark::DoNotOptimize(sum);
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(pieces.size()));
}

void posterior(benchmark::State& state) {
    static const auto all = requests();
    for (auto _ : state) {
        for (const auto& r : all) {
            benchmark::DoNotOptimize(forecast(r));
        }
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(all.size()));
}

BENCHMARK(bare)->Name("drying/bare_gsl_fit_200x12")->Unit(benchmark::kMillisecond);
BENCHMARK(posterior)->Name("drying/full_posterior_200x12")->Unit(benchmark::kMillisecond);

double cpu_seconds() {
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}
long peak_kilobytes() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return usage.ru_maxrss;
}

/// Processor time, so that other work on the machine does not count; three turns, best of each.
void print_ratio() {
    const auto all = requests();
    std::vector<PreparedPiece> pieces;
    for (const auto& r : all) {
        pieces.push_back(*prepare(r));
    }
    double bare_best = 1e9, full_best = 1e9;
    long after_one = 0;
    for (int turn = 0; turn < 10; ++turn) {
        const double t0 = cpu_seconds();
        if (turn < 3) {
            double sum = 0;
            for (const auto& p : pieces) {
                sum += bare_fit(p);
            }
            benchmark::DoNotOptimize(sum);
        }
        const double t1 = cpu_seconds();
        for (const auto& r : all) {
            benchmark::DoNotOptimize(forecast(r));
        }
        const double t2 = cpu_seconds();
        bare_best = turn < 3 ? std::min(bare_best, t1 - t0) : bare_best;
        full_best = std::min(full_best, t2 - t1);
        after_one = turn == 0 ? peak_kilobytes() : after_one;
    }
    std::printf("a piece: bare GSL fit %.2f ms, full posterior with band %.2f ms, ratio %.1f (aim "
                "20); peak memory %ld kB after one round of 200, %ld kB after ten\n",
                5 * bare_best, 5 * full_best, full_best / bare_best, after_one, peak_kilobytes());
}

} // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    print_ratio();
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
