#include "ui/print/printable.h"

#include "core/services/batch_record.h"
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

/// A printable that is made from the batch's record.
template <class Make>
Printable of_record(const core::services::Book& book, core::model::BatchId batch,
                    core::units::Instant now, const QString& title, const Make& make) {
    return {title, title, [&book, batch, now, make]() -> Result<Paper> {
                const auto record = core::services::batch_record(book, batch, now);
                if (!record) {
                    return tl::unexpected<core::base::Error>(record.error());
                }
                return Paper(make(*record));
            }};
}

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

std::vector<Printable> batch_printables(const core::services::Book& book,
                                        core::model::BatchId batch, core::units::Instant now,
                                        const text::Style& style) {
    const auto found = book.batch(batch);
    if (!found) {
        return {};
    }
    const QString code = QString::fromStdString(found->code);
    const auto sheet = [&](const QString& title,
                           Sheet (*make)(const BatchRecord&, const text::Style&)) {
        return of_record(book, batch, now, title,
                         [make, style](const BatchRecord& record) { return make(record, style); });
    };
    const auto tags = [&](const QString& title, TagSize size) {
        return of_record(book, batch, now, title, [size, style](const BatchRecord& record) {
            return TagPages{tags_of(record, style), size};
        });
    };
    return {sheet(PrintText::tr("Record of batch %1").arg(code), batch_record_sheet),
            sheet(PrintText::tr("Mix sheet of batch %1").arg(code), mix_bench_sheet),
            tags(PrintText::tr("Tags of batch %1").arg(code), TagSize::large),
            tags(PrintText::tr("Small tags of batch %1").arg(code), TagSize::small),
            sheet(PrintText::tr("Trace of batch %1").arg(code), trace_sheet),
            sheet(PrintText::tr("Mass balance of batch %1").arg(code), mass_balance_sheet)};
}

std::vector<Printable> calibration_printables(const core::services::Book& book,
                                              core::units::Day today, const text::Style& style) {
    const auto sheet = [&](core::units::Day month, const QString& title) {
        return Printable{
            title, title, [&book, month, style]() -> Result<Paper> {
                const auto instruments = book.instruments();
                const auto checks = book.all_checks();
                const auto people = book.people();
                if (!instruments || !checks || !people) {
                    return tl::unexpected<core::base::Error>(!instruments ? instruments.error()
                                                             : !checks    ? checks.error()
                                                                          : people.error());
                }
                return Paper(calibration_sheet({*instruments, *checks, *people, month}, style));
            }};
    };
    const auto month = [&](core::units::Day day) {
        return style.locale.toString(QDate(1970, 1, 1).addDays(day.days_since_epoch()),
                                     QStringLiteral("MMMM yyyy"));
    };
    const auto first = today + (1 - static_cast<int>(static_cast<unsigned>(today.date().day())));
    const auto before = first + -1;
    return {sheet(today, PrintText::tr("Calibration sheet, %1").arg(month(today))),
            sheet(before, PrintText::tr("Calibration sheet, %1").arg(month(before)))};
}

} // namespace ui::print
