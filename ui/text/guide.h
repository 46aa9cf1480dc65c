#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>
#include <QVector>

#include <functional>
#include <optional>

/// The guide: the chapters of resources/guide, compiled in. `contents.md` is the first chapter; the
/// others follow in the order in which it links to them.
///
/// A chapter is plain Markdown with two marks of our own, each a comment on a line of its own:
///   <!-- help: weigh_in hanging -->       the next heading is what F1 opens on these pages
///   <!-- picture: hanging | What hangs --> a picture of that page, in the printed manual only
/// Links between chapters are `chapter.md` or `chapter.md#heading`; `page:ID` opens a page.
namespace ui::text {

struct GuideSection {
    QString title;
    QString slug; ///< as a link names it: lower case, words joined by "-"
    int level = 1;
    QStringList help_for; ///< ids of the pages that F1 leads here from
};

struct GuideChapter {
    QString id;       ///< file name without ".md"
    QString title;    ///< its first heading
    QString markdown; ///< as in the file
    QVector<GuideSection> sections;
};

struct Guide {
    QString language; ///< of the texts: "en", or a folder of resources/guide
    QVector<GuideChapter> chapters;
    [[nodiscard]] const GuideChapter* chapter(const QString& id) const;
};

/// A place in the guide; an empty slug is the chapter's head.
struct GuidePlace {
    QString chapter;
    QString slug;
    friend bool operator==(const GuidePlace&, const GuidePlace&) = default;
};

/// The guide in the locale's language where there is one, else in English.
Guide guide_in(const QLocale& locale);

/// Reads one chapter.
GuideChapter read_chapter(const QString& id, const QString& markdown);

/// What F1 opens on a page.
std::optional<GuidePlace> guide_for_page(const Guide& guide, const QString& page);

/// What a link of `chapter` ("#a", "stock.md", "stock.md#a") leads to; absent for any other link
/// and for a chapter or heading that is not there.
std::optional<GuidePlace> guide_link(const Guide& guide, const QString& chapter,
                                     const QString& link);

/// The chapter's Markdown without marks; `picture` (page id, caption) gives what stands in the
/// place of a picture mark.
QString
guide_markdown(const GuideChapter& chapter,
               const std::function<QString(const QString&, const QString&)>& picture = nullptr);

QString guide_slug(const QString& heading);

} // namespace ui::text
