#pragma once

#include "core/base/result.h"
#include "core/services/batch_record.h"
#include "core/services/book.h"
#include "ui/print/print_sheet.h"
#include "ui/print/tag_sheet.h"

#include <QString>
#include <functional>
#include <variant>
#include <vector>

class QAbstractItemModel;

namespace ui::print {

/// What goes on paper: a sheet, or tags.
struct TagPages {
    std::vector<Tag> tags;
    TagSize size = TagSize::large;
};
using Paper = std::variant<Sheet, TagPages>;

/// Something a page can print. `make` reads the book when it is wanted, not before.
struct Printable {
    QString title;     ///< as in the list of what can be printed
    QString file_name; ///< without a suffix
    std::function<core::base::Result<Paper>()> make;
};

/// The orientation and margins a paper wants.
QPageLayout layout_of(const Paper& paper, const text::Style& style);
/// Pages painted; 0 when the device refused or there was nothing.
int print_paper(const Paper& paper, QPagedPaintDevice& device, const PrintStamp& stamp,
                const text::Style& style);
/// As write_pdf of print_sheet.h.
core::base::Result<int> write_paper(const Paper& paper, const QString& path,
                                    const PrintStamp& stamp, const text::Style& style);

/// What is printed of a batch: its record, the mix sheet for the bench, tags in two sizes, one step
/// back and forward, the mass balance.
enum class BatchPaper { record, mix, tags, small_tags, trace, balance };
Paper batch_paper(const core::services::BatchRecord& record, BatchPaper which,
                  const text::Style& style);
/// All of them. `book` outlives them.
std::vector<Printable> batch_printables(const core::services::Book& book,
                                        core::model::BatchId batch, core::units::Instant now,
                                        const text::Style& style);
/// The calibration sheet of the month that `month` lies in. Fails as reading the book does.
core::base::Result<Paper> calibration_paper(const core::services::Book& book,
                                            core::units::Day month, const text::Style& style);
/// This month's and last month's calibration sheets of the house. `book` outlives them.
std::vector<Printable> calibration_printables(const core::services::Book& book,
                                              core::units::Day today, const text::Style& style);

/// A list as it stands on screen, for the wall or a walk round the chambers.
struct TablePaper {
    QString title;
    QString subtitle;
    bool boxes = false;        ///< a box to tick before each line
    QStringList pen_columns{}; ///< empty columns at the end, to write into
    QString empty;             ///< said instead of a list without lines
};
/// Columns without a heading are left out. Of a tree, each upper row is a heading over a table of
/// its children.
Sheet table_sheet(const QAbstractItemModel& model, const TablePaper& paper);

} // namespace ui::print
