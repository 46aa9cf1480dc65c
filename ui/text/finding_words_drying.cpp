#include "ui/text/finding_tables.h"

#include <QtGlobal>

namespace ui::text {

std::span<const FindingSentence> drying_sentences() {
    static constexpr FindingSentence rows[] = {
        {"weighing_off_curve",
         QT_TRANSLATE_NOOP(
             "FindingWords",
             "The weighing of {at} lies off the curve by {off_by}. Was the tare right, the hook on "
             "the scale, the scale level? Weigh again or correct the entry.")},
        {"scale_shift",
         QT_TRANSLATE_NOOP(
             "FindingWords",
             "{pieces} pieces weighed on {at} stepped by {shift} the same way. That points to the "
             "scale or its zero, not to the meat: check it with a known weight.")},
        {"rate_stalled",
         QT_TRANSLATE_NOOP(
             "FindingWords",
             "The loss has nearly stopped ({rate_per_day} a day). A firm piece may be finished or "
             "fat; a soft one may have dried hard outside; a wet chamber slows all.")},
        {"surface_drying_too_fast",
         QT_TRANSLATE_NOOP(
             "FindingWords",
             "It lost {loss} in {over}: the outside is drying faster than the inside can follow. "
             "Look for a hard rim; more humidity or a rest in a bag evens it out.")},
        {"weight_gained",
         QT_TRANSLATE_NOOP("FindingWords",
                           "It weighs {gain} more than before ({at}). Was it washed, coated or "
                           "dressed? Enter that as an event, or correct the weighing.")},
        {"humidity_contradicted",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The losses speak for about {implied} in the air, the log says "
                           "{logged}. Check the hygrometer over a salt slurry.")},
        {"target_above_levelling",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The target of {target} lies beyond where this piece levels off "
                           "({levels_off}). Drier air or a lower target would change that.")},
        {"reference_missing",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The weight that the target counts from ({reference}) was never taken. "
                           "Enter it, or count from another weight.")},
        {"event_weight_missing",
         QT_TRANSLATE_NOOP("FindingWords",
                           "An event ({event}, {at}) has no weights, so the start could not be "
                           "shared out. Enter the net weight before and after.")},
        {"tare_missing",
         QT_TRANSLATE_NOOP("FindingWords", "The weighing of {at} has no tare; the last known one "
                                           "was taken. Correct it if the casing or net changed.")},
    };
    return rows;
}

} // namespace ui::text
