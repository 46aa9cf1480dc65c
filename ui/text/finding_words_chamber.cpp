// Free of Qt on purpose, see finding_words_mix.cpp.
#include "ui/text/finding_tables.h"

#ifndef QT_TRANSLATE_NOOP
#define QT_TRANSLATE_NOOP(context, text) text
#endif

namespace ui::text {

namespace {

constexpr FindingSentence sentences[] = {
    {"sensor_flat",
     QT_TRANSLATE_NOOP(
         "FindingWords",
         "{place}: the {quantity} stood at {value} for {lasted}. A room is never that "
         "still: check the sensor's battery and contact.")},
    {"sensor_step",
     QT_TRANSLATE_NOOP("FindingWords",
                       "{place}: the humidity jumped by {by} on {at} and stayed there, while the "
                       "temperature did not. Was a battery changed, the sensor moved, or the room "
                       "set to another humidity? A salt-bag check will tell.")},
    {"sensors_disagree",
     QT_TRANSLATE_NOOP("FindingWords",
                       "{first} and {second} disagree over {hours} hours: {humidity_apart} of "
                       "humidity apart. Check both over a salt slurry before you believe either.")},
    {"meat_contradicts_sensor",
     QT_TRANSLATE_NOOP("FindingWords",
                       "{place} says {stated}, but the weight losses of {pieces} pieces speak for "
                       "{implied} ({implied_low} to {implied_high}). Check the sensor.")},
    {"load_over_capacity",
     QT_TRANSLATE_NOOP("FindingWords",
                       "{place}: the pieces give off {water_per_day} of water a day, more than the "
                       "{capacity_per_day} it can carry out. Expect damp air and slow drying.")},
    {"load_small",
     QT_TRANSLATE_NOOP("FindingWords",
                       "{place}: the pieces give off only {water_per_day} of water a day. With so "
                       "little in it the air may dry their surface too fast: watch the humidity.")},
    {"places_over",
     QT_TRANSLATE_NOOP("FindingWords", "{place}: {pieces} pieces for {places} places.")},
    {"wet_batch_joins_dry",
     QT_TRANSLATE_NOOP("FindingWords",
                       "{joining} wet pieces would hang with {nearly_dry} nearly dry ones: the "
                       "water to carry out rises from {water_now} to {water_then} a day, and the "
                       "dry ones would take some of it up. Hang them elsewhere, or a week apart.")},
};

} // namespace

std::span<const FindingSentence> chamber_sentences() {
    return sentences;
}

} // namespace ui::text
