#include "ui/text/finding_tables.h"

#include <QtGlobal>

namespace ui::text {

std::span<const FindingSentence> drying_sentences() {
    static constexpr FindingSentence rows[] = {
        {"weighing_off_curve",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The weighing of {at} lies off the curve. Was the tare right, the hook "
                           "on the scale, the scale level? Weigh again or correct the entry.")},
        {"scale_shift",
         QT_TRANSLATE_NOOP("FindingWords",
                           "All pieces weighed on {at} stepped the same way. That points to the "
                           "scale or its zero, not to the meat: check it with a known weight.")},
        {"rate_stalled",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The loss has nearly stopped. A firm piece may be finished or fat; a "
                           "soft one may have dried hard outside; a wet chamber slows all.")},
        {"surface_drying_too_fast",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The outside is drying faster than the inside can follow. Look for a "
                           "hard rim; more humidity or a rest in a bag evens it out.")},
        {"weight_gained",
         QT_TRANSLATE_NOOP("FindingWords",
                           "The piece weighs more than before ({at}). Was it washed, coated or "
                           "dressed? Enter that as an event, or correct the weighing.")},
    };
    return rows;
}

} // namespace ui::text
