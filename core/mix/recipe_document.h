#pragma once

#include "core/facts/facts.h"
#include "core/mix/label.h"
#include "core/model/finding.h"
#include "core/model/piece.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/parse.h"
#include "core/units/time.h"
#include "core/units/volume.h"

#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <variant>
#include <vector>

/// A recipe as a person keeps it: lines in the form they were written, never turned into grams.
/// The text form is JSON (read_recipe, write_recipe):
///
///   {"saltloft_recipe": 1, "name": "Coppa", "method": "dry", "limits": "us-fsis-dry-cured",
///    "for_meat": "1 kg", "expected_loss": "35 %", "pump": "10 %", "pickup": "10 %",
///    "meat": {"skin": "one_side", "skin_share": "10 %", "moisture": "74 %", "fatty": false},
///    "ingredients": [{"id": "user:my_soy", "name": "My soy sauce", "kind": "sauce",
///                     "label": {"sodium": "5.5 g/100 g", "density": "1.16"}}],
///    "lines": [{"ingredient": "table_salt", "amount": "2.5 %", "of": "meat"},
///              {"ingredient": "cure_no2", "amount": "2.5 g/kg", "label": {"nitrate": "4 %"}},
///              {"ingredient": "user:my_soy", "amount": "100 mL", "held": true},
///              {"ingredient": "spirit", "amount": "2 us_tablespoon per 500 g",
///               "label": {"alcohol": "40 %"}, "as": "wash"}],
///    "rubs": [{"after": "0 d", "share": "60 %"}, {"after": "3 d", "share": "40 %"}],
///    "wishes": [{"what": "salt", "at_least": "2.5 %", "at_most": "3 %"}]}
namespace core::mix {

/// How the cure meets the meat, which decides what a dose is a share of.
enum class Method {
    dry,                   ///< weighed cure, all of it taken up: shares of the green weight
    box,                   ///< excess salt: what goes on is known, what goes in is not
    immersion_pickup,      ///< pickle share taken up by the meat (FSIS method one)
    immersion_equilibrium, ///< meat and pickle come to rest together (FSIS method two)
    equilibrium_brine,     ///< the same, written in shares of meat and water together
    injected,              ///< pickle pumped in, as a share of the green weight
    marinade,              ///< liquids by volume; shown half and fully taken up
    wash,                  ///< vinegar or spirit wiped on: only a film of it stays
};

/// What a line in percent or g/kg is a share of.
enum class Basis {
    meat,
    water,          ///< added water
    meat_and_water, ///< green weight and added water
    total_water,    ///< added water and the water that the meat brings
};

/// A count of a named level measure (core/facts/measures.h).
struct Spoons {
    double count = 0;
    std::string measure;
    friend bool operator==(const Spoons&, const Spoons&) = default;
};

using Portion = std::variant<units::Mass, units::Volume, Spoons>;

/// "2.5 %", "25 g/kg".
struct ShareAmount {
    units::MassShare share;
    Basis basis = Basis::meat;
    friend bool operator==(const ShareAmount&, const ShareAmount&) = default;
};
/// "1 us_teaspoon per 500 g" of meat.
struct PerMeatAmount {
    Portion portion;
    units::Mass meat;
    friend bool operator==(const PerMeatAmount&, const PerMeatAmount&) = default;
};
/// "100 mL": the same whatever the meat weighs, unless the recipe says for how much meat.
struct FixedAmount {
    Portion portion;
    friend bool operator==(const FixedAmount&, const FixedAmount&) = default;
};
using Amount = std::variant<ShareAmount, PerMeatAmount, FixedAmount>;

struct Line {
    std::string ingredient; ///< a catalogue id or an own ingredient's id
    Amount amount = ShareAmount{units::MassShare::fraction(0), Basis::meat};
    Label label;            ///< what this bag or bottle says; overrides the catalogue
    bool held = false;      ///< the solver must not change it
    bool as_wash = false;   ///< only a film stays on the meat
    std::optional<int> rub; ///< goes in with this rub only (0 is the first)
    std::string note;
    friend bool operator==(const Line&, const Line&) = default;
};

/// An ingredient that the person described from its label.
struct OwnIngredient {
    std::string id; ///< "user:..."
    std::string name;
    facts::IngredientKind kind = facts::IngredientKind::other;
    Label label;
    friend bool operator==(const OwnIngredient&, const OwnIngredient&) = default;
};

/// One of several rubs in time.
struct Rub {
    units::Duration after;  ///< since the first
    units::MassShare share; ///< of the whole cure; all shares make 100 %
    friend bool operator==(const Rub&, const Rub&) = default;
};

struct Meat {
    model::SkinSide skin = model::SkinSide::none;
    std::optional<units::MassShare> skin_share; ///< of the weighed piece; else the catalogue's
    std::optional<units::MassShare> moisture;   ///< of the raw meat; else the catalogue's bounds
    bool fatty = false;                         ///< belly or jowl: other moisture bounds
    friend bool operator==(const Meat&, const Meat&) = default;
};

/// What a wish or a target is about; shares are those of Dose (mix_sheet.h).
enum class Aim {
    salt,
    sugar,
    nitrite,
    nitrate,
    nitrite_and_nitrate, ///< the sum of both, as some laws limit it
    added_water,
    alcohol
};

/// "Salt at least 2.5 %": what the solver tries to reach.
struct Wish {
    Aim what{};
    std::optional<units::MassShare> at_least;
    std::optional<units::MassShare> at_most;
    friend bool operator==(const Wish&, const Wish&) = default;
};

struct RecipeDocument {
    std::string name;
    Method method = Method::dry;
    std::string limits;                  ///< id of a limit set; empty: none chosen
    std::optional<units::Mass> for_meat; ///< what fixed amounts were written for
    std::optional<units::MassShare> pump;
    std::optional<units::MassShare> pickup;
    std::optional<units::MassShare> expected_loss; ///< of weight until finished
    Meat meat;
    std::vector<OwnIngredient> ingredients;
    std::vector<Line> lines;
    std::vector<Rub> rubs;
    std::vector<Wish> wishes;
    friend bool operator==(const RecipeDocument&, const RecipeDocument&) = default;
};

/// Reads the JSON form. All faults are returned at once, each a stop finding whose `place` is
/// the field ("lines[2].amount") and whose values say what was found ("found") and what would do
/// ("wanted"). Codes: recipe_not_json, recipe_version, field_missing, field_unknown,
/// field_wrong_type, word_unknown, quantity_unreadable (value "reason": the ErrorCode's name).
tl::expected<RecipeDocument, model::Findings> read_recipe(std::string_view json);

/// The JSON form. Quantities are written with 15 significant digits: read_recipe(write_recipe(r))
/// equals r to the last bit where r's numbers were decimal texts of up to 15 digits.
std::string write_recipe(const RecipeDocument& recipe);

/// "2.5 %", "3 g/100 g", "40 g", "100 mL", "2 us_tablespoon", each also "... per 500 g".
base::Result<Amount> parse_amount(std::string_view text, Basis basis = Basis::meat,
                                  units::ParseStyle style = {});
/// With a decimal point, as files hold it: parse_amount reads it back in any style but `comma`.
std::string to_text(const Amount& amount);

/// The stable words of the JSON form ("immersion_pickup", "total_water", "curing_salt").
std::string_view name_of(Method method);
std::string_view name_of(Basis basis);
std::string_view name_of(Aim aim);
std::string_view name_of(facts::IngredientKind kind);

} // namespace core::mix
