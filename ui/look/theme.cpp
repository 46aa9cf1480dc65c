#include "ui/look/theme.h"

#include <QApplication>
#include <QPalette>
#include <QStyleFactory>

namespace ui::look {
namespace {

const Tokens*& in_force() {
    static const Tokens* tokens = &light_tokens();
    return tokens;
}

bool desktop_is_dark() {
    // Read once, before our own palette replaces the desktop's.
    static const bool dark = [] {
        return QApplication::palette().color(QPalette::Window).lightness() < 128;
    }();
    return dark;
}

QPalette palette_of(const Tokens& t) {
    QPalette p;
    p.setColor(QPalette::Window, t.window);
    p.setColor(QPalette::WindowText, t.text);
    p.setColor(QPalette::Base, t.surface);
    p.setColor(QPalette::AlternateBase, t.sunk);
    p.setColor(QPalette::Text, t.text);
    p.setColor(QPalette::PlaceholderText, t.muted);
    p.setColor(QPalette::Button, t.surface);
    p.setColor(QPalette::ButtonText, t.text);
    p.setColor(QPalette::BrightText, t.stop);
    p.setColor(QPalette::ToolTipBase, t.surface);
    p.setColor(QPalette::ToolTipText, t.text);
    p.setColor(QPalette::Highlight, t.selection);
    p.setColor(QPalette::HighlightedText, t.text);
    p.setColor(QPalette::Link, t.accent);
    p.setColor(QPalette::LinkVisited, t.accent);
    p.setColor(QPalette::Light, t.surface);
    p.setColor(QPalette::Midlight, t.sunk);
    p.setColor(QPalette::Mid, t.line);
    p.setColor(QPalette::Dark, t.line);
    p.setColor(QPalette::Shadow, t.line);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        p.setColor(QPalette::Disabled, role, t.muted);
    }
    return p;
}

} // namespace

QString style_sheet(const Tokens& t) {
    // Sizes in em follow the person's font size.
    QString sheet = QStringLiteral(R"(
QMainWindow, QDialog { background: %window; }
QToolTip { background: %surface; color: %text; border: 1px solid %line; padding: 0.2em; }
#side { background: %side; border: none; border-right: 1px solid %line; outline: 0; padding: 0.4em 0; }
#side::item { padding: 0.35em 1em; color: %text; border-left: 0.25em solid transparent; }
#side::item:selected { background: %selection; color: %text; border-left: 0.25em solid %accent; }
#side::item:hover:!selected { background: %sunk; }
#side::item:disabled { color: %muted; }
QFrame[look="card"] { background: %surface; border: 1px solid %line; border-radius: 0.4em; }
QFrame[look="line"] { background: %line; border: none; max-height: 1px; }
QLabel[look="muted"] { color: %muted; }
QLabel[look="error"] { color: %stop; }
QFrame[look="note"] { background: %note_ground; border: none; border-left: 0.3em solid %note; }
QFrame[look="caution"] { background: %caution_ground; border: none; border-left: 0.3em solid %caution; }
QFrame[look="stop"] { background: %stop_ground; border: none; border-left: 0.3em solid %stop; }
QFrame[look="done"] { background: %done_ground; border: none; border-left: 0.3em solid %done; }
QFrame[look="note"] QLabel { color: %note; } QFrame[look="caution"] QLabel { color: %caution; }
QFrame[look="stop"] QLabel { color: %stop; } QFrame[look="done"] QLabel { color: %done; }
QLineEdit, QPlainTextEdit, QTextEdit {
  background: %surface; color: %text; border: 1px solid %edge; border-radius: 0.25em; padding: 0.25em 0.4em;
  selection-background-color: %accent; selection-color: %on_accent; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus { border: 2px solid %accent; padding: 0.2em 0.35em; }
QLineEdit[wrong="true"] { border: 2px solid %stop; }
QLineEdit:disabled { color: %muted; background: %sunk; }
QComboBox QAbstractItemView { background: %surface; color: %text; border: 1px solid %edge; }
QPushButton { background: %surface; color: %text; border: 1px solid %edge; border-radius: 0.3em; padding: 0.35em 0.9em; }
QPushButton:hover { background: %sunk; } QPushButton:pressed, QPushButton:checked { background: %selection; }
QPushButton:focus { border: 2px solid %accent; padding: 0.3em 0.85em; }
QPushButton::menu-indicator { subcontrol-position: right center; right: 0.3em; }
QPushButton[menu="true"] { padding-right: 1.6em; }
QPushButton:disabled { color: %muted; background: %window; border: 1px solid %line; }
QPushButton[look="primary"] { background: %accent; color: %on_accent; border: 1px solid %accent; }
QPushButton[look="primary"]:focus { border: 2px solid %text; }
QPushButton[look="primary"]:disabled { background: %sunk; color: %muted; border: 1px solid %line; }
QPushButton[look="plain"] { background: transparent; color: %accent; border: 1px solid transparent; text-align: left; }
QPushButton[look="plain"]:hover { text-decoration: underline; }
QPushButton[look="plain"]:focus { border: 2px solid %accent; }
QRadioButton::indicator { width: 0.9em; height: 0.9em; border: 1px solid %edge; border-radius: 0.5em; background: %surface; }
QRadioButton::indicator:checked { border: 0.3em solid %accent; width: 0.35em; height: 0.35em; }
QTableView, QTreeView, QListView { background: %surface; alternate-background-color: %sunk; color: %text;
  border: 1px solid %line; border-radius: 0.3em; gridline-color: %line; outline: 0;
  selection-background-color: %selection; selection-color: %text; }
QTableView:focus, QTreeView:focus, QListView:focus { border: 2px solid %accent; }
QListView::indicator { width: 0.9em; height: 0.9em; border: 1px solid %edge; border-radius: 0.15em; background: %surface; }
QListView::indicator:checked { border: 0.3em solid %accent; width: 0.35em; height: 0.35em; }
QTableView::item { border: 0; padding: 0 0.3em; }
QHeaderView::section { background: %window; color: %muted; border: none; border-bottom: 1px solid %line;
  padding: 0.35em 0.5em; }
QTabBar::tab { background: transparent; color: %muted; padding: 0.4em 1em; border: none; border-bottom: 3px solid transparent; }
QTabBar::tab:selected { color: %text; border-bottom: 3px solid %accent; }
QTabWidget::pane { border: none; border-top: 1px solid %line; }
QStatusBar { background: %side; color: %muted; border-top: 1px solid %line; } QStatusBar QLabel { color: %muted; padding: 0 0.6em; }
QMenuBar { background: %side; color: %text; border-bottom: 1px solid %line; }
QMenuBar::item { padding: 0.3em 0.7em; background: transparent; } QMenuBar::item:selected { background: %selection; color: %text; }
QMenu { background: %surface; color: %text; border: 1px solid %line; }
QMenu::item { padding: 0.3em 1.6em; } QMenu::item:selected { background: %selection; color: %text; }
QMenu::item:disabled { color: %muted; }
QScrollArea { border: none; background: transparent; }
QScrollArea > QWidget > QWidget[look="scrolled"] { background: transparent; }
)");
    // The edge of a field must be seen on its own (3 to 1, WCAG 1.4.11), a hairline need not.
    const QColor edge = t.muted;
    const std::pair<const char*, QColor> names[] = {
        {"%on_accent", t.on_accent},
        {"%note_ground", t.note_ground},
        {"%caution_ground", t.caution_ground},
        {"%stop_ground", t.stop_ground},
        {"%done_ground", t.done_ground},
        {"%window", t.window},
        {"%surface", t.surface},
        {"%selection", t.selection},
        {"%accent", t.accent},
        {"%muted", t.muted},
        {"%caution", t.caution},
        {"%note", t.note},
        {"%stop", t.stop},
        {"%done", t.done},
        {"%side", t.side},
        {"%sunk", t.sunk},
        {"%text", t.text},
        {"%line", t.line},
        {"%edge", edge},
    };
    for (const auto& [name, colour] : names) {
        sheet.replace(QLatin1String(name), colour.name());
    }
    return sheet;
}

void apply_theme(QApplication& application, Mode mode) {
    const bool dark = mode == Mode::dark || (mode == Mode::system && desktop_is_dark());
    in_force() = dark ? &dark_tokens() : &light_tokens();
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setPalette(palette_of(*in_force()));
    application.setStyleSheet(style_sheet(*in_force()));
}

const Tokens& tokens() {
    return *in_force();
}

} // namespace ui::look
