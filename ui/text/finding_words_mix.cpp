// Free of Qt on purpose: the command line of a build without a window prints these sentences
// too (app/CMakeLists.txt). lupdate finds them by the macro's name.
#include "ui/text/finding_tables.h"

#ifndef QT_TRANSLATE_NOOP
#define QT_TRANSLATE_NOOP(context, text) text
#endif

namespace ui::text {

// One table, longer than a function ought to be: it is data, a row a code.
std::span<const FindingSentence> mix_sentences() {
    static constexpr FindingSentence rows[] = {
        {"recipe_not_json",
         QT_TRANSLATE_NOOP("FindingWords", "This is not a recipe file: it is no JSON text.")},
        {"recipe_version",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The recipe says version \"{found}\"; this program reads {wanted}. Was "
                           "it written by a newer Saltloft?")},
        {"field_missing", QT_TRANSLATE_NOOP("FindingWords", "{place} is missing: {wanted}.")},
        {"field_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{place} means nothing here. Known are: {wanted}. Mend the spelling, "
                           "so that nothing is left out.")},
        {"field_wrong_type",
         QT_TRANSLATE_NOOP("FindingWords", "{place} is {found}; needed is: {wanted}.")},
        {"word_unknown",
         QT_TRANSLATE_NOOP("FindingWords", "{place} says \"{found}\"; known are: {wanted}.")},
        {"quantity_unreadable",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{place} says \"{found}\", which cannot be read as a quantity "
                           "({reason}). Write it like this: {wanted}.")},
        // ingredients, labels and amounts
        {"no_lines",
         QT_TRANSLATE_NOOP("FindingWords", "The recipe has no ingredients yet. Add the first.")},
        {"ingredient_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "\"{found}\" is not in the catalogue. Choose another, or describe your "
                           "own from its label.")},
        {"ingredient_twice",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient} stands in the recipe twice. Both count: is that meant?")},
        {"own_ingredient_twice",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Two ingredients of your own share the id {found}. Rename one.")},
        {"strength_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: how strong is it? Enter the nitrite and nitrate from "
                           "its label. Curing salts differ tenfold.")},
        {"strength_as_proportion",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: a strength of {found} looks like a proportion typed as "
                           "percent. 0.0625 on a sheet is 6.25 %. Enter what the label says.")},
        {"strength_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: no curing salt is sold at {found}; labels run from {low} "
                           "to {high}. Read the label again.")},
        {"cure_strength_assumed",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: reckoned at {strength} nitrite, from its name only. "
                           "Enter the strength from the label in your hand.")},
        {"alcohol_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: how strong is it? Enter the percent by volume from the "
                           "label.")},
        {"alcohol_too_strong",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: {found} % by volume is stronger than distilling goes. Is "
                           "it proof?")},
        {"alcohol_may_be_proof",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: {found} % by volume is rare. If the label says proof, "
                           "enter it as proof with its country.")},
        {"wine_too_strong",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: {found} % by volume is a spirit's strength, not a "
                           "wine's.")},
        {"sodium_impossible",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: {found} is more than pure salt holds. Milligrams taken "
                           "for grams?")},
        {"sodium_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: how salty is it? Enter salt or sodium from its label.")},
        {"sodium_assumed",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: reckoned at {low} to {high} salt. Enter the sodium from "
                           "the label to narrow that.")},
        {"composition_over_whole",
         QT_TRANSLATE_NOOP(
             "FindingWords",
             "{ingredient}: the parts add up to {found}. Check the label's figures.")},
        {"density_implausible",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: nothing in a kitchen weighs {found} g to the "
                           "millilitre.")},
        {"density_missing",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: no density is known, so a volume cannot be turned into "
                           "weight. Please weigh it.")},
        {"label_needs_density",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: its label counts by volume. Enter its density, or weigh "
                           "100 mL of it.")},
        {"measure_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "\"{found}\" is no measure with a known size. Spoons differ by country: "
                           "choose one from the list, or weigh.")},
        {"amount_zero",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: the amount is nothing. Enter it or take the line out.")},
        {"water_missing",
         QT_TRANSLATE_NOOP("FindingWords",
                           "There is no water to count from. Add the water of the brine.")},
        {"basis_circular",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Water cannot be a share of itself. Enter it by weight, by volume or "
                           "as a share of the meat.")},
        {"fixed_amount_does_not_scale",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Some amounts are fixed and stay the same for any weight of meat. Say "
                           "for how much meat they were written, and they follow.")},
        // methods, meat, scale, wishes
        {"pump_missing",
         QT_TRANSLATE_NOOP("FindingWords",
                           "How much pickle is pumped in? Enter it as a share of the meat.")},
        {"pickup_missing",
         QT_TRANSLATE_NOOP("FindingWords",
                           "How much pickle does the meat take up? Weigh a piece before and after, "
                           "or use the method at equilibrium.")},
        {"uptake_as_proportion",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{found} looks like a proportion typed as percent: 0.1 on a sheet is "
                           "10 %.")},
        {"uptake_implausible",
         QT_TRANSLATE_NOOP("FindingWords", "Meat does not take up {found} of its weight.")},
        {"uptake_large",
         QT_TRANSLATE_NOOP("FindingWords", "{found} of the meat's weight is a lot of pickle.")},
        {"uptake_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Buried in salt, what goes on is known and what goes in is not: the "
                           "doses here are what you put on.")},
        {"rubs_not_whole",
         QT_TRANSLATE_NOOP("FindingWords", "The rubs add up to {found}, not to the whole.")},
        {"rubs_out_of_order",
         QT_TRANSLATE_NOOP("FindingWords", "The rubs must follow each other in time.")},
        {"rub_unknown",
         QT_TRANSLATE_NOOP("FindingWords", "{place}: there is no such rub in the recipe.")},
        {"moisture_implausible",
         QT_TRANSLATE_NOOP("FindingWords", "Raw meat seldom holds {found} of water.")},
        {"skin_share_implausible",
         QT_TRANSLATE_NOOP("FindingWords", "Skin is seldom {found} of a piece.")},
        {"loss_implausible",
         QT_TRANSLATE_NOOP("FindingWords", "No meat loses {found} of its weight by drying.")},
        {"no_meat", QT_TRANSLATE_NOOP("FindingWords", "Enter the weight of the meat.")},
        {"meat_weight_missing",
         QT_TRANSLATE_NOOP("FindingWords", "A piece without a weight cannot be dosed.")},
        {"meat_weight_small",
         QT_TRANSLATE_NOOP("FindingWords", "A piece of {found}: grams, or kilograms?")},
        {"meat_weight_large",
         QT_TRANSLATE_NOOP("FindingWords", "A piece of {found}: kilograms, or grams?")},
        {"scale_too_coarse",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{amount} of {ingredient} on a {step} scale is wrong by up to {error}. "
                           "Use a finer scale, or blend a larger batch first.")},
        {"scale_rounds_to_nothing",
         QT_TRANSLATE_NOOP("FindingWords",
                           "On a {step} scale a piece's cure would show as nothing. Use a finer "
                           "scale, or blend a larger batch first.")},
        {"wish_unmet",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Your wish for {what} ({asked}) cannot be met with what you hold: it "
                           "comes to {found}, short by {by}.")},
        {"limit_unmet",
         QT_TRANSLATE_NOOP("FindingWords",
                           "What you hold brings more {what} than the limit of {asked}: {found}.")},
        // doses and limits
        {"tenfold_high",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: {found} of the meat is about ten times what is usual. A "
                           "slipped decimal?")},
        {"tenfold_low",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: {found} of the meat is about a tenth of what is usual. A "
                           "slipped decimal?")},
        {"share_as_proportion",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: {found} looks like a proportion typed as percent. 0.025 "
                           "on a sheet is 2.5 %.")},
        {"cure_taken_for_salt",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient} at {found} of the meat: that is an amount for salt, not "
                           "for a strong curing salt. It would be {nitrite} nitrite.")},
        {"spoon_swap",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient}: with tablespoons the dose is {found}. Teaspoons would be "
                           "usual. Please weigh it.")},
        {"cure_by_spoon",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient} is measured by the spoon. Spoons differ by a quarter: "
                           "weigh it.")},
        {"undiluted_cure",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient} is undiluted. A gram too much is a poisonous dose: a "
                           "ready-mixed curing salt forgives more.")},
        {"weak_cure_taken_for_strong",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{ingredient} holds {strength} nitrite, so this gives {found} only. Is "
                           "the amount meant for a strong curing salt?")},
        {"nitrite_above_any_limit",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Nitrite comes to {found}. No limit on file for any product allows more "
                           "than {limit}.")},
        {"nitrate_above_any_limit",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Nitrate comes to {found}. No limit on file for any product allows more "
                           "than {limit}.")},
        {"nitrite_high",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Nitrite comes to {found}; above {limit} is allowed for few products. "
                           "Choose the limits that apply to you.")},
        {"no_nitrite",
         QT_TRANSLATE_NOOP("FindingWords", "There is no nitrite or nitrate in this recipe.")},
        {"no_limit_set",
         QT_TRANSLATE_NOOP("FindingWords",
                           "No limits are chosen, so the dose is checked against none. Choose the "
                           "ones that apply to you.")},
        {"salt_low",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Salt comes to {found} of the meat; whole muscle is seldom cured with "
                           "less than {limit} (common practice).")},
        {"salt_high",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Salt comes to {found} of the meat; above {limit} few people eat it "
                           "(common practice).")},
        {"salt_impossible",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Salt comes to {found} of the meat. With weighed salt that is a slip; "
                           "for burying in salt choose that method.")},
        {"sugar_high",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Sugar comes to {found} of the meat; more than {limit} is unusual.")},
        {"accelerator_high",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Accelerator comes to {found}; usual is about half a gram to the "
                           "kilogram.")},
        {"limit_exceeded",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{set}: {substance} comes to {found}, above the limit of {limit}.")},
        {"limit_not_permitted",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{set}: {substance} is not permitted; the recipe brings {found}.")},
        {"limit_within_spread",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{set}: {substance} keeps the limit of {limit}, but with the spread of "
                           "what you measure it may come to {found}.")},
        {"limit_minimum",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{set}: {substance} comes to {found}, below the minimum of {limit}.")},
        {"limit_residual",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{set}: the limit of {limit} for {substance} is on what a laboratory "
                           "finds in the product. No sum can show it; {found} goes in.")},
        {"limit_needs_loss",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{set}: the limit for {substance} is on the finished product. Enter the "
                           "expected loss, or the dose is judged too low.")},
        {"limit_unverified",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{set}: unverified. The issuer's own text was not read for all of it.")},
        {"limit_not_in_force", QT_TRANSLATE_NOOP("FindingWords", "{set}: not in force today.")},
        {"limit_other_route",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{set}: made for another way of curing than this recipe's.")},
        {"limit_set_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "There are no limits called \"{found}\". Choose from the list.")},
        {"skin_taken_off",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Skin on: {share} of the weight is taken off before the sum.")},
    };
    return rows;
}

} // namespace ui::text
