#pragma once

#include "ui/look/tokens.h"

#include <QString>

class QApplication;

namespace ui::look {

enum class Mode { system, light, dark };

/// Gives the whole program one of our palettes, on the toolkit's own plain style so that it
/// looks the same on every desktop. Font family and size stay the desktop's. `system` follows
/// the desktop's light or dark setting as it was when the program started.
void apply_theme(QApplication& application, Mode mode);

/// The palette in force; light before apply_theme was called.
const Tokens& tokens();

/// The style sheet of the palette: only what the palette itself cannot say (cards, banners, the
/// side). Exposed for the tests.
QString style_sheet(const Tokens& tokens);

} // namespace ui::look
