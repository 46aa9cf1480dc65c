// Contrast is measured, not judged by eye: WCAG 2.1 success criteria 1.4.3 (text, 4.5 to 1) and
// 1.4.11 (edges and marks, 3 to 1).
#include "ui/look/tokens.h"

#include <gtest/gtest.h>

using namespace ui::look;

TEST(Contrast, EndsOfTheScaleAsDefined) {
    EXPECT_NEAR(contrast_ratio(Qt::white, Qt::black), 21.0, 1e-9);
    EXPECT_NEAR(contrast_ratio(Qt::white, Qt::white), 1.0, 1e-9);
    // #777777 on white is the classic near miss: 4.48.
    EXPECT_NEAR(contrast_ratio(QColor(0x77, 0x77, 0x77), Qt::white), 4.48, 0.005);
}

TEST(Contrast, EveryTextPairOfBothPalettes) {
    for (const Tokens* t : {&light_tokens(), &dark_tokens()}) {
        const struct {
            const char* what;
            QColor text, ground;
        } pairs[] = {
            {"text on window", t->text, t->window},
            {"text on side", t->text, t->side},
            {"text on surface", t->text, t->surface},
            {"text on sunk", t->text, t->sunk},
            {"text on selection", t->text, t->selection},
            {"muted on window", t->muted, t->window},
            {"muted on side", t->muted, t->side},
            {"muted on surface", t->muted, t->surface},
            {"muted on sunk", t->muted, t->sunk},
            {"accent on window", t->accent, t->window},
            {"accent on surface", t->accent, t->surface},
            {"on_accent", t->on_accent, t->accent},
            {"stop on surface", t->stop, t->surface},
            {"stop on window", t->stop, t->window},
            {"caution on surface", t->caution, t->surface},
            {"note on surface", t->note, t->surface},
            {"done on surface", t->done, t->surface},
            {"note ground", t->note, t->note_ground},
            {"caution ground", t->caution, t->caution_ground},
            {"stop ground", t->stop, t->stop_ground},
            {"done ground", t->done, t->done_ground},
        };
        for (const auto& pair : pairs) {
            EXPECT_GE(contrast_ratio(pair.text, pair.ground), 4.5)
                << (t->dark ? "dark: " : "light: ") << pair.what;
        }
    }
}

TEST(Contrast, FirstChartColoursStandOutFromTheirGround) {
    // The first three carry curves; 3 to 1 as for any mark (1.4.11).
    for (const Tokens* t : {&light_tokens(), &dark_tokens()}) {
        const auto& colours = chart_colours(t->dark);
        for (std::size_t i = 0; i < 3; ++i) {
            EXPECT_GE(contrast_ratio(colours[i], t->surface), 3.0)
                << (t->dark ? "dark " : "light ") << i;
        }
    }
}
