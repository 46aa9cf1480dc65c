#include "core/mix/linear_programme.h"

#include <cmath>
#include <glpk.h>
#include <memory>

namespace core::mix {
namespace {

struct Deleter {
    void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
};

int bound_type(double low, double high) {
    if (std::isinf(low) && std::isinf(high)) {
        return GLP_FR;
    }
    if (std::isinf(high)) {
        return GLP_LO;
    }
    if (std::isinf(low)) {
        return GLP_UP;
    }
    return low == high ? GLP_FX : GLP_DB;
}

double finite_or_zero(double bound) {
    return std::isinf(bound) ? 0 : bound;
}

} // namespace

int LinearProgramme::add_column(double low, double high, double cost) {
    columns_.push_back({low, high});
    costs_.push_back(cost);
    return static_cast<int>(columns_.size()) - 1;
}

int LinearProgramme::add_row(double low, double high, std::vector<Term> terms) {
    rows_.push_back({low, high});
    terms_.push_back(std::move(terms));
    return static_cast<int>(rows_.size()) - 1;
}

void LinearProgramme::set_cost(int column, double cost) {
    costs_[static_cast<std::size_t>(column)] = cost;
}

void LinearProgramme::set_row_bounds(int row, double low, double high) {
    rows_[static_cast<std::size_t>(row)] = {low, high};
}

base::Result<LinearProgramme::Optimum> LinearProgramme::minimise() const {
    glp_term_out(GLP_OFF); // GLPK talks to the terminal otherwise; its state is per thread
    const std::unique_ptr<glp_prob, Deleter> problem(glp_create_prob());
    glp_set_obj_dir(problem.get(), GLP_MIN);
    if (!columns_.empty()) {
        glp_add_cols(problem.get(), static_cast<int>(columns_.size()));
    }
    for (std::size_t j = 0; j < columns_.size(); ++j) {
        const int column = static_cast<int>(j) + 1;
        const auto& [low, high] = columns_[j];
        glp_set_col_bnds(problem.get(), column, bound_type(low, high), finite_or_zero(low),
                         finite_or_zero(high));
        glp_set_obj_coef(problem.get(), column, costs_[j]);
    }
    if (!rows_.empty()) {
        glp_add_rows(problem.get(), static_cast<int>(rows_.size()));
    }
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const int row = static_cast<int>(i) + 1;
        const auto& [low, high] = rows_[i];
        glp_set_row_bnds(problem.get(), row, bound_type(low, high), finite_or_zero(low),
                         finite_or_zero(high));
        std::vector<int> index{0}; // GLPK counts from 1
        std::vector<double> value{0};
        for (const auto& term : terms_[i]) {
            index.push_back(term.column + 1);
            value.push_back(term.coefficient);
        }
        glp_set_mat_row(problem.get(), row, static_cast<int>(index.size()) - 1, index.data(),
                        value.data());
    }
    glp_scale_prob(problem.get(), GLP_SF_AUTO);
    glp_smcp control;
    glp_init_smcp(&control);
    control.msg_lev = GLP_MSG_OFF;
    control.tol_bnd = 1e-10;
    control.tol_dj = 1e-10;
    if (glp_simplex(problem.get(), &control) != 0) {
        return base::fault(base::ErrorCode::no_convergence, "simplex");
    }
    const int status = glp_get_status(problem.get());
    if (status == GLP_NOFEAS || status == GLP_INFEAS) {
        return base::fault(base::ErrorCode::no_solution, "the rows contradict each other");
    }
    if (status != GLP_OPT) {
        return base::fault(base::ErrorCode::no_convergence, "unbounded");
    }
    Optimum optimum{glp_get_obj_val(problem.get()), {}};
    for (std::size_t j = 0; j < columns_.size(); ++j) {
        optimum.columns.push_back(glp_get_col_prim(problem.get(), static_cast<int>(j) + 1));
    }
    return optimum;
}

} // namespace core::mix
