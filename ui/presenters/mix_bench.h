#pragma once

#include "core/mix/mix_sheet.h"
#include "core/mix/solver.h"
#include "ui/text/style.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

/// What the mix page shows, without widgets. The bench holds texts as they are typed; the pure
/// functions below turn them into a recipe and a sheet, and say for each text what is wrong.
namespace ui::presenters {

/// One line of the recipe as it is being typed.
struct MixLineEntry {
    QString ingredient; ///< catalogue id or own ingredient's id
    QString amount;     ///< "2.5 %", "100 mL", "2 us_tablespoon per 500 g"
    core::mix::Basis basis = core::mix::Basis::meat;
    QString label; ///< "nitrite 6.25 %; nitrate 4 %", "40 %", "sodium 5.5 g/100 g"
    bool held = false;
    bool as_wash = false;
    /// Parts of a loaded line that the form does not show; kept untouched.
    std::string note = {};
    std::optional<int> rub = {};
    friend bool operator==(const MixLineEntry&, const MixLineEntry&) = default;
};

/// The whole form.
struct MixEntry {
    QString name;
    core::mix::Method method = core::mix::Method::dry;
    QString limits;
    QString uptake; ///< pump or pick-up, for the methods that need one
    QString loss;   ///< expected loss, may be empty
    bool skin_on = false;
    bool fatty = false;
    std::vector<core::mix::OwnIngredient> own;
    std::vector<MixLineEntry> lines;
    QString meat; ///< one weight, or several with a semicolon between
    std::optional<core::units::Mass> scale_step;
    QString salt_wish; ///< share of the meat, may be empty
    QString nitrite_wish;
    /// Parts of a loaded recipe that the form does not show; kept untouched.
    std::vector<core::mix::Rub> rubs;
    std::vector<core::mix::Wish> other_wishes;
    std::optional<core::units::Mass> for_meat;
    std::optional<core::units::MassShare> moisture;
    std::optional<core::units::MassShare> skin_share;
};

/// A text that cannot be read, and where.
struct MixFault {
    QString field; ///< "meat", "amount", "label", "uptake", "loss", "salt_wish", "nitrite_wish"
    int line = -1; ///< of "amount" and "label"
    QString sentence;
};

struct MixReading {
    core::mix::RecipeDocument recipe; ///< of what could be read
    std::vector<core::mix::MeatPiece> pieces;
    std::vector<MixFault> faults;
};

MixReading read_entry(const MixEntry& entry, const text::Style& style);
MixEntry entry_of(const core::mix::RecipeDocument& recipe, const text::Style& style);

/// A first recipe to change: salt and a labelled curing salt on whole muscle.
MixEntry starting_entry(const text::Style& style);

/// What a label says, as text: pairs divided by semicolons, the same words as the recipe document
/// (nitrite, nitrate, alcohol, salt, sodium, sugar, density); a lone strength of a spirit or wine
/// needs no word.
core::base::Result<core::mix::Label>
parse_label(const QString& text, core::facts::IngredientKind kind, const text::Style& style);
QString label_words(const core::mix::Label& label, const text::Style& style);
/// What to read off this kind's label, as a placeholder.
QString label_hint(core::facts::IngredientKind kind);

struct IngredientChoice {
    QString id;
    QString name;
    core::facts::IngredientKind kind;
};
std::vector<IngredientChoice> ingredient_choices(const std::vector<core::mix::OwnIngredient>& own);

struct NamedChoice {
    QString id;
    QString name;
};
std::vector<NamedChoice> mix_limit_choices();

/// The facts compiled into the program, read once.
const core::facts::Facts& mix_facts();

} // namespace ui::presenters
