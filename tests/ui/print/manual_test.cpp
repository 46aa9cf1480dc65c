// The manual as a file, read back with programs that are not ours (poppler).
#include "ui/print/manual.h"

#include "tests/support/ui/printed.h"

#include <QImage>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>
#include <gtest/gtest.h>

using namespace ui;

namespace manual_test {
namespace {

const print::PrintStamp stamp{core::units::Instant::from_unix_seconds(1'780'000'000),
                              QStringLiteral("saltloft test")};

text::Guide guide() {
    return text::guide_in(QLocale(QLocale::English, QLocale::UnitedKingdom));
}

QImage grey_picture(const QString&) {
    QImage image(1180, 760, QImage::Format_RGB32);
    image.fill(Qt::lightGray);
    return image;
}

} // namespace

TEST(Manual, EveryChapterIsOnThePageThatTheContentsName) {
    QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("manual.pdf"));
    const auto pages = print::write_manual_pdf(guide(), grey_picture, pdf, stamp, {});
    ASSERT_TRUE(pages.has_value());
    EXPECT_EQ(test_support::pdf_pages(pdf, folder.path(), 20).size(), *pages);
    const QString all = test_support::pdf_text(pdf);
    for (const auto& chapter : guide().chapters) {
        // The contents' line "Title 12", and the foot "· Title Page 12 of N".
        const QString title = QRegularExpression::escape(chapter.title);
        const auto line = QRegularExpression(title + QStringLiteral("\\s+(\\d+)\\b")).match(all);
        ASSERT_TRUE(line.hasMatch()) << chapter.title.toStdString();
        const auto foot =
            QRegularExpression(QStringLiteral("· ") + title + QStringLiteral("\\s+Page (\\d+) of"))
                .match(all);
        ASSERT_TRUE(foot.hasMatch()) << chapter.title.toStdString();
        EXPECT_EQ(line.captured(1), foot.captured(1)) << chapter.title.toStdString();
        EXPECT_GT(line.captured(1).toInt(), 1);
    }
    EXPECT_FALSE(all.contains(QStringLiteral("picture:"))) << "a mark was printed";
    EXPECT_TRUE(all.contains(QStringLiteral("What hangs, and what is expected by a day")));
}

TEST(Manual, ThePicturesAreOnThePaper) {
    QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("manual.pdf"));
    text::Guide one;
    one.chapters = {*guide().chapter(QStringLiteral("stock"))};
    ASSERT_TRUE(print::write_manual_pdf(one, grey_picture, pdf, stamp, {}).has_value());
    double greyest = 0;
    for (const QString& page : test_support::pdf_pages(pdf, folder.path(), 20)) {
        const QImage paper(page);
        int grey = 0;
        for (int y = 0; y < paper.height(); ++y) {
            for (int x = 0; x < paper.width(); ++x) {
                // As a JPEG in the PDF it may have moved by a shade.
                grey += std::abs(paper.pixelColor(x, y).lightness() - 192) < 4 ? 1 : 0;
            }
        }
        greyest = std::max(greyest, double(grey) / (paper.width() * paper.height()));
    }
    // 0.86 of 174 mm wide and 760/1180 as high, on 210 by 297 mm.
    EXPECT_NEAR(greyest, 149.6 * 149.6 * 760 / 1180 / (210 * 297), 0.03);
}

TEST(Manual, LinksOfTheHtmlLeadToAPlaceInIt) {
    const QString html = print::manual_html(
        guide(), [](const QString& page) { return page + QLatin1String(".png"); });
    QSet<QString> names;
    for (auto it = QRegularExpression(QStringLiteral("<a name=\"([^\"]+)\"")).globalMatch(html);
         it.hasNext();) {
        names << it.next().captured(1);
    }
    int links = 0;
    for (auto it = QRegularExpression(QStringLiteral("href=\"([^\"]+)\"")).globalMatch(html);
         it.hasNext();) {
        const QString link = it.next().captured(1);
        ++links;
        ASSERT_TRUE(link.startsWith(QLatin1Char('#'))) << link.toStdString();
        EXPECT_TRUE(names.contains(link.mid(1))) << link.toStdString();
    }
    EXPECT_GT(links, 25);
    EXPECT_TRUE(html.contains(QStringLiteral("<img src=\"hanging.png\"")));
    EXPECT_FALSE(print::manual_html(guide(), [](const QString&) {
                     return QString();
                 }).contains(QStringLiteral("<img")));
}

} // namespace manual_test
