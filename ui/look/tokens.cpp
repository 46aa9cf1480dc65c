#include "ui/look/tokens.h"

#include <algorithm>
#include <cmath>

namespace ui::look {
namespace {

QColor rgb(int value) {
    return QColor::fromRgb(static_cast<QRgb>(value) | 0xff000000U);
}

// WCAG 2.1, "relative luminance".
double luminance(const QColor& colour) {
    const auto channel = [](double c) {
        return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * channel(static_cast<double>(colour.redF())) +
           0.7152 * channel(static_cast<double>(colour.greenF())) +
           0.0722 * channel(static_cast<double>(colour.blueF()));
}

} // namespace

const Tokens& light_tokens() {
    static const Tokens tokens = {
        false,
        rgb(0xf3f1ec), // window: unbleached paper
        rgb(0xe7e5dd), // side
        rgb(0xfdfcfa), // surface
        rgb(0xf0eee8), // sunk
        rgb(0xcfcbbf), // line
        rgb(0x1f2628), // text
        rgb(0x555c5c), // muted
        rgb(0x1b5e5a), // accent: brine
        rgb(0xffffff), // on_accent
        rgb(0xcfe3df), // selection
        rgb(0x1a4f7a), // note
        rgb(0x7a4a00), // caution
        rgb(0x9a2a12), // stop
        rgb(0x1f5c33), // done
        rgb(0xe1ecf5), rgb(0xf8ead0), rgb(0xf9e0d9), rgb(0xdfeee2),
    };
    return tokens;
}

const Tokens& dark_tokens() {
    static const Tokens tokens = {
        true,
        rgb(0x1a1e1f), // window: slate
        rgb(0x141718), // side
        rgb(0x23282a), // surface
        rgb(0x1e2324), // sunk
        rgb(0x414a4c), // line
        rgb(0xe7e4dc), // text
        rgb(0xa9b0ae), // muted
        rgb(0x86cbc1), // accent
        rgb(0x10201e), // on_accent
        rgb(0x2b4a48), // selection
        rgb(0x9cc8ea), // note
        rgb(0xf0c46c), // caution
        rgb(0xf5a08c), // stop
        rgb(0x97d3a5), // done
        rgb(0x20313e), rgb(0x3a301b), rgb(0x40251f), rgb(0x1f3426),
    };
    return tokens;
}

const std::array<QColor, 7>& chart_colours(bool dark) {
    // Okabe-Ito without black, which is the text's colour. Yellow comes last on paper, blue last
    // on slate: each is faint there.
    static const std::array<QColor, 7> on_light = {rgb(0x0072b2), rgb(0xd55e00), rgb(0x009e73),
                                                   rgb(0xcc79a7), rgb(0xe69f00), rgb(0x56b4e9),
                                                   rgb(0xf0e442)};
    static const std::array<QColor, 7> on_dark = {rgb(0x56b4e9), rgb(0xe69f00), rgb(0x009e73),
                                                  rgb(0xcc79a7), rgb(0xf0e442), rgb(0xd55e00),
                                                  rgb(0x0072b2)};
    return dark ? on_dark : on_light;
}

double contrast_ratio(const QColor& a, const QColor& b) {
    const double first = luminance(a);
    const double second = luminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

} // namespace ui::look
