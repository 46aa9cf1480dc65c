#include "ui/text/finding_tables.h"

#include <QtGlobal>

namespace ui::text {

std::span<const FindingSentence> planning_sentences() {
    static constexpr FindingSentence rows[] = {
        // dating a plan
        {"no_pieces",
         QT_TRANSLATE_NOOP("FindingWords", "No piece is entered: the days are for the usual one.")},
        {"weight_assumed",
         QT_TRANSLATE_NOOP("FindingWords", "The weight is not entered: {weight} is assumed.")},
        {"thickness_assumed",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The thickness is not entered: {thickness_mm} mm is assumed.")},
        {"stage_length_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "Nothing says how long “{place}” takes: it is planned as no time at "
                           "all. Enter a time for it.")},
        {"lengthened_to_minimum",
         QT_TRANSLATE_NOOP("FindingWords",
                           "“{place}” is made longer: the rule asks for {needed} in all, and the "
                           "stages came to {days}.")},
        {"rule_for_other_method",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The day rule of “{place}” belongs to another way of salting: days per "
                           "kilogram are for burying in salt or for brine, days per centimetre for "
                           "a weighed cure.")},
        {"cure_too_short",
         QT_TRANSLATE_NOOP("FindingWords", "“{place}” has {days}, and its rule asks for {needed}. "
                                           "Give it the time.")},
        // planning back from a date
        {"date_passed", QT_TRANSLATE_NOOP("FindingWords", "The day lies in the past.")},
        {"too_little_time",
         QT_TRANSLATE_NOOP("FindingWords",
                           "It needs {days_needed} days and there are {days_available}: "
                           "{shortfall} too few.")},
        {"stage_cannot_be_shorter",
         QT_TRANSLATE_NOOP("FindingWords", "“{place}” takes {days} days, and cannot take less.")},
        // templates
        {"stage_without_length",
         QT_TRANSLATE_NOOP("FindingWords", "Nothing says when “{place}” ends or how long it "
                                           "usually takes.")},
        {"repeat_past_end",
         QT_TRANSLATE_NOOP("FindingWords", "“{place}” repeats with more stages than follow it.")},
        {"repeats_out_of_bounds",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The number of rounds of “{place}” lies outside its own bounds.")},
        {"repeats_overlap",
         QT_TRANSLATE_NOOP("FindingWords",
                           "“{place}” repeats inside another repeat, which cannot be planned.")},
        {"same_room_unknown",
         QT_TRANSLATE_NOOP("FindingWords",
                           "“{place}” shares a room with a stage that is not in the plan.")},
        {"minimum_names_no_stage",
         QT_TRANSLATE_NOOP("FindingWords",
                           "A minimum names the stage “{place}”, which is not in the plan.")},
        {"duplicate_stage_name",
         QT_TRANSLATE_NOOP("FindingWords", "Two stages are called “{place}”.")},
        {"no_salt_stage", QT_TRANSLATE_NOOP("FindingWords", "The plan has no stage that salts.")},
        // the weigh-in round
        {"not_above_tare",
         QT_TRANSLATE_NOOP("FindingWords",
                           "{on_scale} is not more than the tare of {tare}. Weigh again.")},
        {"weight_tenfold",
         QT_TRANSLATE_NOOP("FindingWords", "Last time it was {last}: is {on_scale} a slip of the "
                                           "decimal sign?")},
        {"weight_outside_expected",
         QT_TRANSLATE_NOOP("FindingWords", "{on_scale} was not expected: between {low} and {high} "
                                           "would be. Right piece, right tare, hook on?")},
        {"weight_unchanged",
         QT_TRANSLATE_NOOP("FindingWords", "The same number as last time. That can mean done, a "
                                           "coarse scale or a damp chamber.")},
    };
    return rows;
}

} // namespace ui::text
