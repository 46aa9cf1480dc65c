#pragma once

#include <QColor>
#include <array>

/// The colours of the window, named by use. Both palettes are our own: paper, slate and a
/// brine green. tests/ui/look measures every text/background pair (4.5 to 1 or better).
namespace ui::look {

struct Tokens {
    bool dark = false;
    QColor window;  ///< behind everything
    QColor side;    ///< behind the places on the side
    QColor surface; ///< cards, tables, fields
    QColor sunk;    ///< alternate rows, the inside of a strip
    QColor line;    ///< hairlines between things
    QColor text;    ///< what is read
    QColor muted;   ///< captions, units, hints
    QColor accent;  ///< links, the marked place, primary buttons
    QColor on_accent;
    QColor selection; ///< behind selected rows; `text` stays readable on it
    QColor note;      ///< severity colours: always beside a word or a shape
    QColor caution;
    QColor stop;
    QColor done;
    QColor note_ground; ///< behind a banner or finding of that severity
    QColor caution_ground;
    QColor stop_ground;
    QColor done_ground;
};

const Tokens& light_tokens();
const Tokens& dark_tokens();

/// Colours for series on charts, told apart by colour-blind eyes (M. Okabe and K. Ito, "Color
/// Universal Design", 2008). The order starts with the ones that stand out on that ground; a
/// chart still tells series apart by marker or dash, never by colour alone.
const std::array<QColor, 7>& chart_colours(bool dark);

/// The contrast of two opaque colours, 1 to 21, as WCAG 2.1 defines it (relative luminance).
double contrast_ratio(const QColor& a, const QColor& b);

} // namespace ui::look
