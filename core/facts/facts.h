#pragma once

#include "core/base/result.h"
#include "core/facts/catalogue.h"
#include "core/facts/limits.h"
#include "core/facts/measures.h"

#include <string_view>

namespace core::facts {

/// Single values that arithmetic leans on.
struct Constants {
    /// Share of a skin-on piece's weight that is taken for skin before the ppm sum.
    base::Cited<units::MassShare> skin_share;
    /// Water of raw lean muscle, and of a fatty cut (belly, jowl), as a share of its weight.
    base::Cited<ShareInterval> lean_moisture;
    base::Cited<ShareInterval> fatty_moisture;
    /// Weight of a spirit or vinegar that stays on a washed piece, as a share of the meat.
    base::Cited<ShareInterval> wash_pickup;
};

/// Everything that the mix arithmetic knows about the world.
struct Facts {
    Catalogue catalogue;
    LimitSets limit_sets;
    Measures measures;
    Constants constants;
};

/// The four files' JSON texts (resources/facts/*.json).
struct FactTexts {
    std::string_view ingredients;
    std::string_view limits;
    std::string_view measures;
    std::string_view constants;
};

/// Reads and checks the files. The first fault found is returned, `where` naming the file, the
/// entry and the field: bad_format (no JSON, wrong type, unknown word), missing_column (field
/// missing), out_of_range (a share below 0 or above 1, bounds not in order), conflict (an id
/// used twice).
base::Result<Facts> load_facts(const FactTexts& texts);

/// The files as they were when the program was built, compiled in so that no data path is
/// needed. Our own files, held good by a test: a fault in them is a defect of ours.
Facts built_in_facts();
FactTexts built_in_fact_texts();

} // namespace core::facts
