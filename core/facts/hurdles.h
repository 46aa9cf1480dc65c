#pragma once

#include "core/base/cited.h"
#include "core/base/result.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What keeps microbes from growing, as cited data: the ranges in which named organisms grow and
/// the figures that rules and guides attach to finished dried meat. They are shown beside a
/// piece's figures; none of them is a verdict, and one that was not read in its issuer's text is
/// shown as unverified (core/base/cited.h).
namespace core::facts {

/// The range in which an organism grows when everything else suits it.
struct GrowthRange {
    std::string id;   ///< "staphylococcus_aureus"
    std::string name; ///< "Staphylococcus aureus"
    std::optional<units::Temperature> lowest;
    std::optional<units::Temperature> highest;
    std::optional<double> lowest_ph;
    std::optional<double> highest_ph;
    std::optional<units::WaterActivity> lowest_activity; ///< grows above it
    base::Source source;
};

/// A figure that a rule or guide names for a finished product.
struct Hurdle {
    enum class Quantity {
        water_activity_at_most,
        water_phase_salt_at_least, ///< salt / (salt + water)
        salt_at_least,             ///< of the finished product
        loss_at_least,             ///< of the fresh, uncured weight
    };
    std::string id; ///< "us_country_ham_activity"
    std::string name;
    Quantity quantity{};
    double value = 0; ///< water activity, or a share (0.18)
    base::Source source;
    std::string note;
};

struct Hurdles {
    std::vector<GrowthRange> organisms;
    std::vector<Hurdle> hurdles;
    [[nodiscard]] const GrowthRange* organism(std::string_view id) const;
};

/// Reads and checks resources/facts/hurdles.json. The first fault is returned, `where` naming
/// the entry and the field: bad_format, missing_column, out_of_range, conflict (id used twice).
base::Result<Hurdles> load_hurdles(std::string_view text);

/// The file as it was when the program was built.
Hurdles built_in_hurdles();

} // namespace core::facts
