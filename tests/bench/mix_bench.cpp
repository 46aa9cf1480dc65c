// A keystroke in the meat-weight field recomputes the whole sheet; the bare GLPK solve beside it
// is the yardstick. Target: under 1 ms.
#include "core/mix/mix_sheet.h"
#include "core/mix/solver.h"

#include <benchmark/benchmark.h>
#include <glpk.h>
#include <string>

namespace {

using namespace core::mix;
using core::units::Mass;

const core::facts::Facts& facts() {
    static const core::facts::Facts all = core::facts::built_in_facts();
    return all;
}

RecipeDocument recipe() {
    return read_recipe(
               R"({"saltloft_recipe":1,"method":"marinade","limits":"us-fsis-dry-cured","lines":[
        {"ingredient":"table_salt","amount":"2.2 %"},
        {"ingredient":"cure_no2","amount":"2.5 g/kg","label":{"nitrite":"6.25 %","nitrate":"4 %"}},
        {"ingredient":"white_sugar","amount":"10 g/kg"},
        {"ingredient":"soy_sauce","amount":"30 mL per 1 kg","label":{"salt":"16 %"}},
        {"ingredient":"spirit","amount":"10 mL per 1 kg","label":{"alcohol":"50 %"}},
        {"ingredient":"black_pepper","amount":"5 g/kg"},
        {"ingredient":"juniper","amount":"1 us_tablespoon per 1 kg"},
        {"ingredient":"bay_leaf","amount":"1 g/kg"}],
        "wishes":[{"what":"salt","at_least":"2.75 %","at_most":"2.75 %"},
                  {"what":"sugar","at_most":"1.2 %"}]})")
        .value();
}

/// A weight as it is typed, digit by digit.
void Keystroke(benchmark::State& state) {
    MixRequest request;
    request.recipe = recipe();
    request.scale_step = Mass::grams(0.1);
    const auto pieces = static_cast<std::size_t>(state.range(0));
    request.pieces.assign(pieces, {"A", Mass::grams(1500)});
    double grams = 1500;
    for (auto _ : state) {
        grams = grams < 9000 ? grams + 1 : 1500;
        request.pieces[0].mass = Mass::grams(grams);
        benchmark::DoNotOptimize(make_mix_sheet(request, facts()));
    }
}
BENCHMARK(Keystroke)->Arg(1)->Arg(6)->Arg(200)->Unit(benchmark::kMicrosecond);

void SolveWishes(benchmark::State& state) {
    const auto wanted = recipe();
    for (auto _ : state) {
        benchmark::DoNotOptimize(solve_mix(wanted, Mass::grams(1500), facts()));
    }
}
BENCHMARK(SolveWishes)->Unit(benchmark::kMicrosecond);

/// The yardstick: GLPK alone on a programme of the same size (8 lines, 3 goals with slacks).
void BareGlpkSolve(benchmark::State& state) {
    glp_term_out(GLP_OFF);
    for (auto _ : state) {
        glp_prob* problem = glp_create_prob();
        constexpr int columns = 11;
        constexpr int rows = 3;
        glp_add_cols(problem, columns);
        glp_add_rows(problem, rows);
        for (int j = 1; j <= columns; ++j) {
            glp_set_col_bnds(problem, j, GLP_LO, 0, 0);
            glp_set_obj_coef(problem, j, j > 8 ? 1 : 0);
        }
        for (int i = 1; i <= rows; ++i) {
            int index[columns + 1];
            double value[columns + 1];
            for (int j = 1; j <= columns; ++j) {
                index[j] = j;
                value[j] = j > 8 ? (j - 8 == i ? 1 : 0) : 1.0 / (i + j);
            }
            glp_set_row_bnds(problem, i, GLP_LO, 1, 0);
            glp_set_mat_row(problem, i, columns, index, value);
        }
        glp_smcp control;
        glp_init_smcp(&control);
        control.msg_lev = GLP_MSG_OFF;
        glp_simplex(problem, &control);
        benchmark::DoNotOptimize(glp_get_obj_val(problem));
        glp_delete_prob(problem);
    }
}
BENCHMARK(BareGlpkSolve)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
