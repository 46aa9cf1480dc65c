#include "ui/print/manual.h"

#include "ui/print/guide_document.h"
#include "ui/print/page_painter.h"
#include "ui/print/pdf_file.h"
#include "ui/print/record_words.h"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextTable>
#include <QUrl>

#include <memory>

namespace ui::print {
namespace {

constexpr double text_points = 9.5;
constexpr double picture_width = 0.86; // of the page's
const GuideLook paper{QColor(0x70, 0x70, 0x70), QColor(0xEE, 0xEE, 0xEE), {}};
constexpr QLatin1String picture_scheme("picture:");

/// The translators' context of this file.
struct ManualText {
    Q_DECLARE_TR_FUNCTIONS(ManualText)
};

QFont text_font() {
    QFont font;
    font.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Noto Sans")});
    font.setPointSizeF(text_points);
    return font;
}

QString picture_lines(const QString& address, const QString& caption) {
    return QStringLiteral("![%2](%1)\n\n*%2*\n").arg(address, caption);
}

/// Read before it has a layout, then laid out for `device`.
std::unique_ptr<QTextDocument> paper_document(const QString& markdown, QPaintDevice& device) {
    auto document = std::make_unique<QTextDocument>();
    document->setDefaultFont(text_font());
    document->setDocumentMargin(0);
    lay_guide(*document, markdown, paper);
    document->documentLayout()->setPaintDevice(&device);
    return document;
}

/// Pictures as wide as the page allows; a document counts in the screen's pixels.
void fit_pictures(QTextDocument& document, double page_width, double device_dpi) {
    const double width =
        page_width * picture_width * QFontMetricsF(text_font()).fontDpi() / device_dpi;
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        for (auto it = block.begin(); !it.atEnd(); ++it) {
            const QTextFragment fragment = it.fragment();
            if (!fragment.charFormat().isImageFormat()) {
                continue;
            }
            QTextImageFormat format = fragment.charFormat().toImageFormat();
            const auto image = document.resource(QTextDocument::ImageResource, QUrl(format.name()))
                                   .value<QImage>();
            format.setWidth(width);
            format.setHeight(width * image.height() / std::max(1, image.width()));
            QTextCursor cursor(&document);
            cursor.setPosition(fragment.position());
            cursor.setPosition(fragment.position() + fragment.length(), QTextCursor::KeepAnchor);
            cursor.setCharFormat(format);
            break; // the block's iterator is no longer good
        }
    }
}

std::unique_ptr<QTextDocument> chapter_document(const text::GuideChapter& chapter,
                                                const ManualPictures& pictures, QPdfWriter& device,
                                                const PageRoom& room) {
    std::vector<std::pair<QString, QImage>> used;
    const QString markdown =
        text::guide_markdown(chapter, [&](const QString& page, const QString& caption) {
            const QImage image = pictures(page);
            if (image.isNull()) {
                return QString();
            }
            used.emplace_back(picture_scheme + page, image);
            return picture_lines(picture_scheme + page, caption);
        });
    auto document = paper_document(markdown, device);
    // After the text: reading Markdown clears what the document had.
    for (const auto& [name, image] : used) {
        document->addResource(QTextDocument::ImageResource, QUrl(name), image);
    }
    fit_pictures(*document, room.page.width(), device.logicalDpiX());
    document->setPageSize(QSizeF(room.page.width(), room.body_height));
    keep_guide_headings(*document, room.body_height);
    return document;
}

struct ContentsLine {
    QString title;
    int page;
};

std::unique_ptr<QTextDocument> title_document(const std::vector<ContentsLine>& lines,
                                              const PrintStamp& stamp, QPdfWriter& device,
                                              const PageRoom& room) {
    auto document = paper_document(
        QStringLiteral("# %1\n\n%2\n\n%3\n\n%4\n\n## %5\n")
            .arg(ManualText::tr("Saltloft: the manual"),
                 ManualText::tr("Plan, weigh and follow cured and air-dried meat."),
                 ManualText::tr(
                     "The pictures show an invented demonstration book; no producer, batch or "
                     "person in it exists."),
                 stamp.by, ManualText::tr("Contents")),
        device);
    QTextCursor cursor(document.get());
    cursor.movePosition(QTextCursor::End);
    QTextTableFormat format;
    format.setBorder(0);
    format.setCellPadding(3);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
    format.setColumnWidthConstraints({QTextLength(QTextLength::PercentageLength, 92),
                                      QTextLength(QTextLength::PercentageLength, 8)});
    QTextTable* table = cursor.insertTable(static_cast<int>(lines.size()), 2, format);
    for (int row = 0; row < table->rows(); ++row) {
        const auto& line = lines[static_cast<std::size_t>(row)];
        table->cellAt(row, 0).firstCursorPosition().insertText(line.title);
        QTextCursor number = table->cellAt(row, 1).firstCursorPosition();
        QTextBlockFormat right;
        right.setAlignment(Qt::AlignRight);
        number.setBlockFormat(right);
        number.insertText(QString::number(line.page));
    }
    document->setPageSize(QSizeF(room.page.width(), room.body_height));
    return document;
}

/// Links to other chapters become links within the page, links to pages of the program text.
void link_within(QTextDocument& document, const text::Guide& guide,
                 const text::GuideChapter& chapter) {
    const auto place = [](const text::GuidePlace& p) {
        return p.slug.isEmpty() ? p.chapter : p.chapter + QLatin1Char('-') + p.slug;
    };
    struct Piece {
        int from;
        int length;
        QTextCharFormat format;
    };
    std::vector<Piece> pieces;
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        const int level = block.blockFormat().headingLevel();
        for (auto it = block.begin(); !it.atEnd(); ++it) {
            QTextCharFormat format = it.fragment().charFormat();
            if (level > 0 && it == block.begin()) {
                format.setAnchor(true);
                format.setAnchorNames(
                    {place({chapter.id, level == 1 ? QString() : text::guide_slug(block.text())})});
            } else if (format.isAnchor()) {
                const auto there = text::guide_link(guide, chapter.id, format.anchorHref());
                format.setAnchor(there.has_value());
                format.setAnchorHref(there ? QLatin1Char('#') + place(*there) : QString());
                format.setFontUnderline(there.has_value());
            }
            pieces.push_back({it.fragment().position(), it.fragment().length(), format});
        }
    }
    for (const Piece& piece : pieces) {
        QTextCursor cursor(&document);
        cursor.setPosition(piece.from);
        cursor.setPosition(piece.from + piece.length, QTextCursor::KeepAnchor);
        cursor.setCharFormat(piece.format);
    }
}

/// What stands between <body ...> and </body>.
QString body_of(const QString& html) {
    const auto from = html.indexOf(QLatin1Char('>'), html.indexOf(QStringLiteral("<body"))) + 1;
    return html.mid(from, html.lastIndexOf(QStringLiteral("</body>")) - from);
}

} // namespace

core::base::Result<int> write_manual_pdf(const text::Guide& guide, const ManualPictures& pictures,
                                         const QString& path, const PrintStamp& stamp,
                                         const text::Style& style) {
    const QString title = ManualText::tr("Saltloft: the manual");
    return write_pdf_file(path, title, stamp.by, [&](QPdfWriter& writer) {
        writer.setPageLayout(page_layout(style, false, 18));
        QPainter painter;
        if (!painter.begin(&writer)) {
            return 0;
        }
        const PageRoom room = page_room(painter, writer);
        std::vector<std::unique_ptr<QTextDocument>> documents;
        std::vector<ContentsLine> contents;
        int pages = 1; // the title's; its contents fit one page
        for (const auto& chapter : guide.chapters) {
            documents.push_back(chapter_document(chapter, pictures, writer, room));
            contents.push_back({chapter.title, pages + 1});
            pages += documents.back()->pageCount();
        }
        documents.insert(documents.begin(), title_document(contents, stamp, writer, room));
        int page = 0;
        for (std::size_t d = 0; d < documents.size(); ++d) {
            const QString foot =
                d == 0 ? title : title + QStringLiteral(" · ") + contents[d - 1].title;
            const int here = d == 0 ? 1 : documents[d]->pageCount();
            for (int i = 0; i < here; ++i) {
                if (page > 0 && !writer.newPage()) {
                    return 0;
                }
                paint_page_body(painter, *documents[d], i, room);
                paint_page_foot(painter, room, foot, ++page, pages);
            }
        }
        return painter.end() ? pages : 0;
    });
}

QString manual_html(const text::Guide& guide,
                    const std::function<QString(const QString& page)>& picture_name) {
    QString body;
    for (const auto& chapter : guide.chapters) {
        QTextDocument document;
        document.setDefaultFont(text_font());
        const QString markdown =
            text::guide_markdown(chapter, [&](const QString& page, const QString& caption) {
                const QString name = picture_name(page);
                return name.isEmpty() ? QString() : picture_lines(name, caption);
            });
        lay_guide(document, markdown, {paper.line, paper.sunk, QColor(0x1F, 0x5E, 0x54)});
        link_within(document, guide, chapter);
        body += QStringLiteral("<section>") + body_of(document.toHtml()) +
                QStringLiteral("</section>\n");
    }
    return QStringLiteral("<!DOCTYPE html>\n<html lang=\"%1\"><head><meta charset=\"utf-8\">"
                          "<title>%2</title><style>body{font-family:sans-serif;max-width:46em;"
                          "margin:2em auto;padding:0 1em;line-height:1.4}img{max-width:100%}"
                          "section{border-top:1px solid #707070;padding-top:1em}"
                          "td{vertical-align:top}</style></head>\n<body>\n%3</body></html>\n")
        .arg(guide.language, ManualText::tr("Saltloft: the manual").toHtmlEscaped(), body);
}

} // namespace ui::print
