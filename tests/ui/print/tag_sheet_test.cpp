#include "ui/print/tag_sheet.h"

#include "tests/support/ui/printed.h"
#include "ui/print/qr_code.h"

#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <random>

namespace tag_sheet_test {
namespace {

using namespace ui::print;
using core::exchange::tag_text;

const PrintStamp stamp{core::units::Instant::from_unix_seconds(1'780'000'000),
                       QStringLiteral("saltloft test")};

Tag tag(int number) {
    return {{"K" + std::to_string(number), "B07", number % 2 == 0 ? "LOFT1" : ""},
            QStringLiteral("Coppa"),
            QStringLiteral("8 Mar 2026"),
            QStringLiteral("1140 g"),
            QStringLiteral("776 g"),
            QStringLiteral("100 g"),
            QStringLiteral("35 % of hung")};
}

/// Prints `count` tags and reads every page back: zbar must find each code, once.
void expect_all_read(int count, TagSize size, int expected_pages) {
    QTemporaryDir folder;
    std::vector<Tag> tags;
    QStringList expected;
    for (int i = 0; i < count; ++i) {
        tags.push_back(tag(i));
        expected.append(QString::fromStdString(tag_text(tags.back().code)));
    }
    const QString pdf = folder.filePath(QStringLiteral("tags.pdf"));
    const auto pages = write_tags_pdf(tags, size, pdf, stamp, {});
    ASSERT_TRUE(pages);
    EXPECT_EQ(*pages, expected_pages);
    QStringList found;
    for (const QString& page : test_support::pdf_pages(pdf, folder.path())) {
        found += test_support::codes_on(page);
    }
    found.sort();
    expected.sort();
    EXPECT_EQ(found, expected);
}

TEST(TagSheet, EveryLargeTagReadsBack) {
    expect_all_read(11, TagSize::large, 2);
}
TEST(TagSheet, EverySmallTagReadsBack) {
    expect_all_read(40, TagSize::small, 3);
}

TEST(TagSheet, SaysWhatAPersonNeedsWithoutAScanner) {
    QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("tag.pdf"));
    ASSERT_TRUE(write_tags_pdf({tag(7)}, TagSize::large, pdf, stamp, {}));
    const QString text = test_support::pdf_text(pdf);
    for (const auto* words :
         {"K7", "Coppa", "Batch B07", "1140 g", "776 g", "100 g", "8 Mar 2026", "35 % of hung"}) {
        EXPECT_TRUE(text.contains(QLatin1String(words))) << words << " in " << text.toStdString();
    }
}

// Error correction level Q recovers a quarter of the code words (ISO/IEC 18004): a thumb's worth
// of grease over one place must not stop the scanner.
TEST(TagSheet, ReadsUnderGrease) {
    const auto code = qr_code(tag_text({"K7", "B07", "LOFT1"}));
    ASSERT_TRUE(code);
    constexpr int side = 600;
    QImage picture(side, side, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    paint(*code, painter, QRectF(0, 0, side, side));
    painter.setBrush(QColor(0x80, 0x70, 0x50));
    painter.setPen(Qt::NoPen);
    painter.drawEllipse(QPointF(side * 0.55, side * 0.62), side * 0.1, side * 0.1);
    painter.end();
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("greasy.png"));
    picture.save(file);
    EXPECT_EQ(test_support::codes_on(file),
              QStringList{QString::fromStdString(tag_text({"K7", "B07", "LOFT1"}))});
    picture.fill(Qt::white);
    picture.save(file);
    EXPECT_TRUE(test_support::codes_on(file).isEmpty()); // the reader does not invent codes
}

TEST(TagSheet, RefusesWhatCannotBePrinted) {
    EXPECT_FALSE(qr_code(""));
    EXPECT_FALSE(qr_code(std::string(5000, 'x')));
    EXPECT_FALSE(write_tags_pdf({}, TagSize::large, QStringLiteral("/tmp/none.pdf"), stamp, {}));
    const auto nowhere = write_tags_pdf({tag(1)}, TagSize::large,
                                        QStringLiteral("/no/such/folder/t.pdf"), stamp, {});
    EXPECT_EQ(nowhere.error().code, core::base::ErrorCode::not_found);
}

} // namespace

} // namespace tag_sheet_test
