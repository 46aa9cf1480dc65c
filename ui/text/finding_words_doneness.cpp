#include "ui/text/finding_tables.h"

#include <QtGlobal>

namespace ui::text {

// Salt uptake and cure times (core/uptake), the evidence sheet and warm finishing (core/doneness).
// A table of sentences: as long as there are findings.
std::span<const FindingSentence> doneness_sentences() {
    static constexpr FindingSentence rows[] = {
        // cure time
        {"cure_rules_disagree",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The day rules for this way of curing disagree: {shortest} to "
                           "{longest}. Choose one and keep it with the batch.")},
        {"rule_of_other_method",
         QT_TRANSLATE_NOOP("FindingWords",
                           "This day rule belongs to another way of curing. Rules by weight come "
                           "from burying in salt, rules by thickness mostly from weighed cures.")},
        {"rule_far_from_diffusion",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The day rules ({shortest} to {longest}) lie outside what salt "
                           "diffusion suggests ({p10} to {p90}, half-way {p50}).")},
        {"planned_shorter_than_even",
         QT_TRANSLATE_NOOP(
             "FindingWords",
             "{planned} is planned; diffusion suggests {p50} ({p10} to {p90}). The "
             "centre may get too little: give it longer or rest it cold afterwards.")},
        {"planned_longer_than_wanted",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{planned} in more salt than it needs is longer than {p90}, when the "
                           "piece passes {wanted}. Buried in salt, time is the dose.")},
        {"cure_too_warm",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The cure is at {temperature}, warmer than {limit}. Move it to a "
                           "colder place.")},
        {"cure_too_cold",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The cure is at {temperature}, colder than {limit}: salt moves slowly "
                           "there, give it longer.")},
        {"cure_paused_frozen",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Frozen for {paused}: the cure stood still and that time is added.")},
        {"still_frozen",
         QT_TRANSLATE_NOOP("FindingWords",
                           "At {temperature} the piece is frozen and the cure stands still. No "
                           "end can be given until it is thawed.")},
        {"sides_taken_endless",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Only the thickness is known; salt coming in at the ends is not "
                           "counted. Enter width and length for a better figure.")},
        {"fat_slows_and_thins",
         QT_TRANSLATE_NOOP("FindingWords",
                           "With {fat} fat most salt goes into the lean, and more slowly than the "
                           "figures say.")},
        {"no_open_face",
         QT_TRANSLATE_NOOP("FindingWords",
                           "With skin all round no salt can get in. Take the skin off one side.")},
        {"salt_beyond_saturation",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{salt} is more than the water of the meat can hold ({most}). Ask for "
                           "less.")},
        {"thickness_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords", "The thickness must be between 1 mm and 500 mm.")},
        {"side_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Width and length must be at least the thickness, which is the "
                           "shortest side, and at most 2 m.")},
        {"salt_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The salt must be above 0 and at most 20 % of the meat.")},
        {"temperature_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The temperature of a cure must be between -40 and 45 °C.")},
        {"outside_water_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The liquid around the meat must be between none and 20 times the "
                           "meat.")},
        {"fat_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords", "The fat must be between 0 and 95 %.")},
        {"evenness_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords",
                           "\"Even\" must mean between 50 and 99 % of the mean at the centre.")},
        {"planned_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords", "The planned time must be between none and ten years.")},
        {"unknown_rule",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The day rule \"{place}\" is not known. Choose one from the list.")},
        // the evidence sheet
        {"target_reached_fast",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{loss} in {took}, {per_day} a day, is fast (up to {usual_most} a day "
                           "is usual). The inside may be behind the outside: cut one or rest it "
                           "and weigh again.")},
        {"target_reached_soft_centre",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The target is reached ({loss}), but the centre feels soft. Rest it so "
                           "that it evens out, and look again.")},
        {"flat_fatty",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Nearly flat at {loss} ({per_day} a day). With {fat} fat there is "
                           "little water left to lose: a fatty piece can be as dry as it gets "
                           "below its target.")},
        {"flat_lean_ask_humidity",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Nearly flat at {loss} ({per_day} a day), though the piece is lean. "
                           "Ask the air first: humidity {humidity}. In wet air it stops before "
                           "it is dry.")},
        {"flat_soft_centre",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Nearly flat at {loss} ({per_day} a day) with a soft centre: a dry rim "
                           "may hold the water in. Rest it in a bag, then dry on in wetter air.")},
        {"target_not_reachable",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The loss levels off near {levels_off}; the target of {target} is not "
                           "in sight in this air. Change the air or the target.")},
        {"heavier_than_start",
         QT_TRANSLATE_NOOP("FindingWords",
                           "It weighs {net}, more than at its start ({start}). Was it washed, "
                           "coated or dressed? Enter that, or correct the weighing.")},
        {"weights_contradict",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{net} is less than the dry matter of {start} at the start. Look for a "
                           "wrong weight, a tare or a cut that was not entered.")},
        {"start_weight_estimated",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The raw weight is not known; {start} is reckoned from a later weight "
                           "and a usual loss in the cure.")},
        {"salt_dose_of_excess_cure",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Buried in salt, the amount put on says little about what went in. Salt "
                           "and water activity are guesses here: have them measured.")},
        {"estimate_is_no_measurement",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The water activity is an estimate from weights and salt. A rule that "
                           "asks for it asks for a measurement.")},
        {"measured_activity_off_estimate",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Measured {measured}, estimated {low} to {high}. Look at the sample's "
                           "place, the instrument's check, the salt and the fat entered.")},
        {"weights_out_of_order",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The weighings were not in order of time; they were sorted.")},
        {"evidence_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The value of {place} cannot be. Correct it to see the evidence.")},
        // warm finishing
        {"warm_in_growth_range",
         QT_TRANSLATE_NOOP("FindingWords",
                           "At {temperature} the piece spends about {time} between {low} and "
                           "{high}, where microbes grow.")},
        {"warm_longer_than_guide",
         QT_TRANSLATE_NOOP("FindingWords",
                           "About {time} in this warmth is longer than the {guide} that a guide "
                           "(for fish) allows ready-to-eat food.")},
        {"warm_while_wet",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The piece may still be wetter than a water activity of {limit}. Dry "
                           "it further in the cold before warming it.")},
        {"warm_rim",
         QT_TRANSLATE_NOOP("FindingWords",
                           "In warm air of {humidity} a thick piece can dry hard outside and stay "
                           "wet inside.")},
        {"heat_leaves_toxin",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Warming at the end does not undo a toxin that Staphylococcus aureus "
                           "has left.")},
        {"warm_cooks",
         QT_TRANSLATE_NOOP("FindingWords",
                           "At {temperature} the piece begins to cook rather than dry.")},
        {"target_not_reachable_warm",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{target} is more than the water left can give; it levels off near "
                           "{levels_off}.")},
        {"already_there",
         QT_TRANSLATE_NOOP("FindingWords", "The loss wanted is already reached ({loss}).")},
        {"warm_value_out_of_range",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The value of {place} cannot be. Correct it to get an answer.")},
        // command line
        {"brine_saturated",
         QT_TRANSLATE_NOOP("FindingWords",
                           "This is more salt than the water can dissolve ({most} of the water "
                           "phase).")},
        {"above_growth_limit",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The wet end of the estimate is above {limit}, the lowest water "
                           "activity at which {name} grows.")},
    };
    return rows;
}

} // namespace ui::text
