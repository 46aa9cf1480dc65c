#include "ui/print/printable.h"

#include "ui/print/batch_record_sheet.h"
#include "ui/print/calibration_sheet.h"
#include "ui/print/mix_bench_sheet.h"
#include "ui/print/record_tags.h"
#include "ui/text/date_words.h"

#include <QCoreApplication>

namespace ui::print {

namespace {

struct PrintText {
    Q_DECLARE_TR_FUNCTIONS(PrintText)
};

using core::base::Result;
using core::services::BatchRecord;

} // namespace

QPageLayout layout_of(const Paper& paper, const text::Style& style) {
    const auto* sheet = std::get_if<Sheet>(&paper);
    return page_layout(style, sheet != nullptr && sheet->landscape, sheet != nullptr ? 15 : 10);
}

int print_paper(const Paper& paper, QPagedPaintDevice& device, const PrintStamp& stamp,
                const text::Style& style) {
    if (const auto* sheet = std::get_if<Sheet>(&paper)) {
        return print_sheet(*sheet, device, stamp, style);
    }
    const auto& pages = std::get<TagPages>(paper);
    return print_tags(pages.tags, pages.size, device);
}

Result<int> write_paper(const Paper& paper, const QString& path, const PrintStamp& stamp,
                        const text::Style& style) {
    if (const auto* sheet = std::get_if<Sheet>(&paper)) {
        return write_pdf(*sheet, path, stamp, style);
    }
    const auto& pages = std::get<TagPages>(paper);
    return write_tags_pdf(pages.tags, pages.size, path, stamp, style);
}

Paper batch_paper(const BatchRecord& record, BatchPaper which, const text::Style& style) {
    switch (which) {
    case BatchPaper::mix:
        return mix_bench_sheet(record, style);
    case BatchPaper::tags:
        return TagPages{tags_of(record, style), TagSize::large};
    case BatchPaper::small_tags:
        return TagPages{tags_of(record, style), TagSize::small};
    case BatchPaper::trace:
        return trace_sheet(record, style);
    case BatchPaper::balance:
        return mass_balance_sheet(record, style);
    case BatchPaper::record:
        break;
    }
    return batch_record_sheet(record, style);
}

std::vector<Printable> batch_printables(const core::services::Book& book,
                                        core::model::BatchId batch, core::units::Instant now,
                                        const text::Style& style) {
    const auto found = book.batch(batch);
    if (!found) {
        return {};
    }
    const auto paper = [&](const QString& words, BatchPaper which) {
        const QString title = words.arg(QString::fromStdString(found->code));
        return Printable{title, title, [&book, batch, now, which, style] {
                             return core::services::batch_record(book, batch, now)
                                 .map([&](const BatchRecord& record) {
                                     return batch_paper(record, which, style);
                                 });
                         }};
    };
    return {paper(PrintText::tr("Record of batch %1"), BatchPaper::record),
            paper(PrintText::tr("Mix sheet of batch %1"), BatchPaper::mix),
            paper(PrintText::tr("Tags of batch %1"), BatchPaper::tags),
            paper(PrintText::tr("Small tags of batch %1"), BatchPaper::small_tags),
            paper(PrintText::tr("Trace of batch %1"), BatchPaper::trace),
            paper(PrintText::tr("Mass balance of batch %1"), BatchPaper::balance)};
}

Result<Paper> calibration_paper(const core::services::Book& book, core::units::Day month,
                                const text::Style& style) {
    const auto instruments = book.instruments();
    const auto checks = book.all_checks();
    const auto people = book.people();
    if (!instruments || !checks || !people) {
        return tl::unexpected<core::base::Error>(!instruments ? instruments.error()
                                                 : !checks    ? checks.error()
                                                              : people.error());
    }
    return Paper(calibration_sheet({*instruments, *checks, *people, month}, style));
}

std::vector<Printable> calibration_printables(const core::services::Book& book,
                                              core::units::Day today, const text::Style& style) {
    const auto sheet = [&](core::units::Day month) {
        const QString title =
            PrintText::tr("Calibration sheet, %1").arg(text::month_words(month, style));
        return Printable{title, title,
                         [&book, month, style] { return calibration_paper(book, month, style); }};
    };
    const int into = static_cast<int>(static_cast<unsigned>(today.date().day()));
    return {sheet(today), sheet(today + -into)};
}

} // namespace ui::print
