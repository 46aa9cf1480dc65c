#include "ui/text/finding_tables.h"

namespace ui::text {

std::span<const FindingSentence> planning_sentences() {
    return {};
}

} // namespace ui::text
