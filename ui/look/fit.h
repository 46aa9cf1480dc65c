#pragma once

class QScrollArea;
class QString;
class QVBoxLayout;
class QWidget;

namespace ui::look {

/// Makes a window as large as so many line heights of its font, but never larger than its screen
/// has room for: with a doubled font on a small laptop the buttons at the foot would be out of
/// reach. What does not fit must scroll inside.
void resize_in_lines(QWidget* window, double wide, double high);

/// Lets `inside` scroll in `area` when there is too little room for it, and fill it otherwise. Its
/// fields are reached one by one, the area itself is not.
void let_scroll(QScrollArea* area, QWidget* inside);

/// A column for a form's fields that scrolls where the window is too low for it; where it is too
/// narrow the window is widened as it is shown, as far as the screen allows. Put between a title
/// and buttons, which stay; it takes the room that is left in `outer`.
QVBoxLayout* add_scrolled_column(QVBoxLayout* outer, const char* object_name, const QString& title);

} // namespace ui::look
