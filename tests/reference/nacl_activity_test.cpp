// Water activity of NaCl solutions at 25 C against (1) values computed with PHREEQC 3's Pitzer
// parameters, (2) PHREEQC's own printed output, (3) osmotic coefficients of Robinson & Stokes
// (1965; from memory in the table, one anchor read in an instrument manual), (4) single figures.
#include "core/doneness/salt_solution.h"
#include "tests/support/csv_table.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using core::doneness::molality_of;
using core::doneness::osmotic_coefficient;
using core::doneness::salt_solution_activity;
using tests::support::CsvTable;

TEST(SaltSolution, AgainstPhreeqc) {
    const auto table = CsvTable::reference("nacl_water_activity_25C.csv");
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const double m = table.number(row, "molality");
        const double activity = salt_solution_activity(m).as_fraction();
        EXPECT_NEAR(activity, table.number(row, "aw_PHREEQC"), 2e-6) << m; // printed to 1e-6
        EXPECT_NEAR(activity, table.number(row, "aw_PM73"), 1e-3) << m;
        if (table.has(row, "aw_phreeqc_ref")) {
            EXPECT_NEAR(activity, table.number(row, "aw_phreeqc_ref"), 1e-3) << m;
        }
        if (table.has(row, "phi_RS")) {
            const double measured = std::exp(-2 * table.number(row, "phi_RS") * m * 0.0180153);
            EXPECT_NEAR(activity, measured, 1e-3) << m;
        }
    }
}

// One molal 0.9669, saturated 0.755 (read in a handbook); phi(6 m) 1.271 (Robinson & Stokes);
// 4.5 % NaCl by weight 0.974 (USDA ARS).
TEST(SaltSolution, SingleFigures) {
    EXPECT_NEAR(salt_solution_activity(1).as_fraction(), 0.9669, 2e-4);
    EXPECT_NEAR(salt_solution_activity(core::doneness::saturated_molality).as_fraction(), 0.755,
                3.5e-3);
    EXPECT_NEAR(osmotic_coefficient(6), 1.271, 4e-3);
    EXPECT_NEAR(salt_solution_activity(molality_of(0.045 / 0.955)).as_fraction(), 0.974, 1.2e-3);
}

} // namespace
