// A whole cure estimate (three diffusivities, roots, curve) beside the bare cost of 200 roots of
// its boundary equation, which is the least any answer from the series needs.
#include "core/uptake/cure_time.h"
#include "core/uptake/diffusion_series.h"

#include <benchmark/benchmark.h>

namespace {

using namespace core::uptake;
using core::model::Form;
using core::units::Length;

void bare_roots(benchmark::State& state) {
    for (auto _ : state) {
        benchmark::DoNotOptimize(DiffusionSeries::limited_volume(Body::sheet, 0.04));
    }
}
BENCHMARK(bare_roots);

void estimate(benchmark::State& state, Form form, CureMethod method, bool with_sides) {
    CureRequest request{.form = form, .thickness = Length::millimetres(60)};
    request.method = method;
    if (with_sides) {
        request.width = Length::millimetres(90);
        request.length = Length::millimetres(200);
    }
    for (auto _ : state) {
        benchmark::DoNotOptimize(estimate_cure(request));
    }
}
BENCHMARK_CAPTURE(estimate, weighed_slab, Form::slab, CureMethod::weighed, false);
BENCHMARK_CAPTURE(estimate, weighed_cylinder, Form::cylinder, CureMethod::weighed, false);
BENCHMARK_CAPTURE(estimate, excess_slab, Form::slab, CureMethod::excess_salt, false);
BENCHMARK_CAPTURE(estimate, weighed_block, Form::block, CureMethod::weighed, true);
BENCHMARK_CAPTURE(estimate, excess_block, Form::block, CureMethod::excess_salt, true);

} // namespace

BENCHMARK_MAIN();
