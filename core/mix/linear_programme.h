#pragma once

#include "core/base/result.h"

#include <limits>
#include <utility>
#include <vector>

namespace core::mix {

/// A small linear programme, minimised by GLPK's simplex. Columns and rows are counted from 0.
/// The only place that knows GLPK.
class LinearProgramme {
  public:
    static constexpr double unbounded = std::numeric_limits<double>::infinity();

    struct Term {
        int column;
        double coefficient;
    };

    LinearProgramme() = default;

    /// A column with low <= x <= high (either may be infinite) and its cost.
    int add_column(double low, double high, double cost);
    /// A row with low <= sum of terms <= high. At most one term a column.
    int add_row(double low, double high, std::vector<Term> terms);
    void set_cost(int column, double cost);
    void set_row_bounds(int row, double low, double high);

    struct Optimum {
        double cost;
        std::vector<double> columns;
    };
    /// no_solution: the rows contradict each other; no_convergence: unbounded, or the simplex
    /// gave up.
    [[nodiscard]] base::Result<Optimum> minimise() const;

  private:
    struct Bounded {
        double low;
        double high;
    };
    std::vector<Bounded> columns_;
    std::vector<double> costs_;
    std::vector<Bounded> rows_;
    std::vector<std::vector<Term>> terms_;
};

} // namespace core::mix
