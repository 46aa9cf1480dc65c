#pragma once

#include <QString>
#include <QStringList>
#include <variant>
#include <vector>

/// What a printed sheet says, as plain data: built by pure functions, painted by print_sheet.h,
/// read by tests without a printer.
namespace ui::print {

enum class Align { left, right, centre };

struct Cell {
    QString text;
    bool bold = false;
    bool struck = false; ///< no longer stands, and stays readable
    Cell() = default;
    // Not explicit: most cells are just words.
    Cell(QString words) : text(std::move(words)) {} // NOLINT(google-explicit-constructor)
    Cell(QString words, bool is_bold, bool is_struck = false)
        : text(std::move(words)), bold(is_bold), struck(is_struck) {}
};

struct Column {
    QString head;
    Align align = Align::left;
    int share = 1; ///< of the width, against the other columns
};

struct Heading {
    QString text;
    int level = 1;
};
struct Paragraph {
    QString text;
    bool small = false;
};
/// Names and values in two columns of pairs; a value not known is written as such.
struct Fields {
    std::vector<std::pair<QString, QString>> rows;
};
struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
    QString empty;   ///< written instead of a table without rows: "No deviations recorded."
    double size = 1; ///< of its text, against the sheet's
};
/// A framed caution; `kind` is its word ("Caution"), so that the frame is not the only sign.
struct Notice {
    QString kind;
    QString text;
};
/// Lines for a name, a signature and a date, one set a label.
struct Signatures {
    QStringList labels;
};
/// Empty lines for a pen.
struct WritingLines {
    QString label;
    int count = 3;
};
struct PageBreak {};

using Block =
    std::variant<Heading, Paragraph, Fields, Table, Notice, Signatures, WritingLines, PageBreak>;

struct Sheet {
    QString title;
    QString subtitle;
    QString foot; ///< at the foot of every page, left; the page number stands right
    bool landscape = false;
    double point_size = 9;
    std::vector<Block> blocks;
};

} // namespace ui::print
