// The chapters as compiled in: each parses, each link leads somewhere, each source that is cited
// stands in the list. Page ids are checked in tests/ui/pages/guide_page_test.cpp, commands in
// tests/cli/guide_commands_test.cpp.
#include "ui/text/guide.h"

#include "tests/support/ui/verdict_words.h"

#include <QRegularExpression>
#include <QSet>
#include <QTextBlock>
#include <QTextDocument>
#include <gtest/gtest.h>

using namespace ui::text;

namespace {

const QLocale english(QLocale::English, QLocale::UnitedKingdom);

/// English and every language that the window speaks.
const QStringList guide_languages{QStringLiteral("en_GB"), QStringLiteral("de"),
                                  QStringLiteral("it"),    QStringLiteral("es"),
                                  QStringLiteral("fr"),    QStringLiteral("zh_CN")};

/// The rules about a guide's own texts hold for each language.
class GuideIn : public ::testing::TestWithParam<QString> {
  protected:
    const Guide guide = guide_in(QLocale(GetParam()));
};

/// Commands whole, of other lines in code blocks the figures (a formula's words are translated),
/// and the marks outside of them without captions; one a line.
std::string code_and_marks(const GuideChapter& chapter) {
    static const QRegularExpression figure(QStringLiteral("\\d+(\\.\\d+)?"));
    QString kept;
    bool code = false;
    for (const QString& line : chapter.markdown.split(QLatin1Char('\n'))) {
        const bool fence = line.startsWith(QLatin1String("```"));
        if (code && line.startsWith(QLatin1String("saltloft "))) {
            kept += line.section(QLatin1String(" #"), 0, 0).trimmed();
        } else if (code && !fence) {
            for (auto it = figure.globalMatch(line); it.hasNext();) {
                kept += it.next().captured() + QLatin1Char(' ');
            }
        } else if (line.startsWith(QLatin1String("<!--"))) {
            kept += line.section(QLatin1Char('|'), 0, 0).remove(QLatin1String("-->")).trimmed();
        }
        code = code != fence;
        if (!kept.isEmpty() && !kept.endsWith(QLatin1Char('\n'))) {
            kept += QLatin1Char('\n');
        }
    }
    return kept.toStdString();
}

/// Every link of a chapter, as the Markdown reader sees it.
QStringList links_of(const GuideChapter& chapter) {
    QTextDocument document;
    document.setMarkdown(guide_markdown(chapter), QTextDocument::MarkdownDialectGitHub);
    QStringList links;
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        for (auto it = block.begin(); !it.atEnd(); ++it) {
            if (it.fragment().charFormat().isAnchor()) {
                links << it.fragment().charFormat().anchorHref();
            }
        }
    }
    return links;
}

QSet<QString> keys_in(const QString& text, const char* form) {
    QSet<QString> keys;
    const QRegularExpression key(QString::fromLatin1(form));
    for (auto it = key.globalMatch(text); it.hasNext();) {
        keys << it.next().captured(1).simplified();
    }
    return keys;
}

} // namespace

TEST_P(GuideIn, EveryChapterHasOneTitleAndHeadingsThatCanBeLinkedTo) {
    EXPECT_GE(guide.chapters.size(), 12);
    for (const auto& chapter : guide.chapters) {
        const std::string id = chapter.id.toStdString();
        QSet<QString> slugs;
        int titles = 0;
        for (const auto& section : chapter.sections) {
            titles += section.level == 1 ? 1 : 0;
            EXPECT_FALSE(section.slug.isEmpty()) << id;
            EXPECT_FALSE(slugs.contains(section.slug)) << id << ": " << section.slug.toStdString();
            slugs << section.slug;
        }
        EXPECT_EQ(titles, 1) << id;
        EXPECT_FALSE(chapter.title.isEmpty()) << id;
        // What the reader of headings sees is what the Markdown reader shows.
        QTextDocument document;
        document.setMarkdown(guide_markdown(chapter), QTextDocument::MarkdownDialectGitHub);
        QStringList shown;
        for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
            if (block.blockFormat().headingLevel() > 0) {
                shown << guide_slug(block.text());
            }
        }
        QStringList read;
        for (const auto& section : chapter.sections) {
            read << section.slug;
        }
        EXPECT_EQ(shown, read) << id;
    }
}

TEST_P(GuideIn, TheContentsLeadToEveryChapter) {
    ASSERT_FALSE(guide.chapters.isEmpty());
    EXPECT_EQ(guide.chapters.front().id, QStringLiteral("contents"));
    QSet<QString> linked{QStringLiteral("contents")};
    for (const QString& link : links_of(guide.chapters.front())) {
        linked << link.section(QLatin1String(".md"), 0, 0);
    }
    for (const auto& chapter : guide.chapters) {
        EXPECT_TRUE(linked.contains(chapter.id)) << chapter.id.toStdString();
    }
}

TEST_P(GuideIn, EveryLinkLeadsToAChapterOrAPage) {
    int links = 0;
    for (const auto& chapter : guide.chapters) {
        for (const QString& link : links_of(chapter)) {
            ++links;
            EXPECT_TRUE(link.startsWith(QLatin1String("page:")) ||
                        guide_link(guide, chapter.id, link).has_value())
                << chapter.id.toStdString() << ": " << link.toStdString();
        }
    }
    EXPECT_GT(links, 40);
}

TEST_P(GuideIn, OnlyMarksOfOursAreHiddenInComments) {
    const QRegularExpression mark(
        QStringLiteral("^<!-- (help: [a-z_ ]+|picture: [a-z_]+ \\| .+) -->$"));
    for (const auto& chapter : guide.chapters) {
        for (const QString& line : chapter.markdown.split(QLatin1Char('\n'))) {
            if (line.contains(QLatin1String("<!--"))) {
                EXPECT_TRUE(mark.match(line).hasMatch())
                    << chapter.id.toStdString() << ": " << line.toStdString();
            }
            // A line break within a Chinese paragraph would be shown as a blank.
            EXPECT_LE(line.size(), GetParam() == QLatin1String("zh_CN") ? 1000 : 200)
                << chapter.id.toStdString() << ": a line too long to review";
        }
        EXPECT_FALSE(guide_markdown(chapter).contains(QLatin1String("<!--")))
            << chapter.id.toStdString();
    }
}

TEST_P(GuideIn, GivesNoVerdict) {
    const QRegularExpression verdict = test_support::verdict_in(GetParam());
    ASSERT_FALSE(verdict.pattern().isEmpty());
    for (const auto& chapter : guide.chapters) {
        const auto found = verdict.match(chapter.markdown);
        EXPECT_FALSE(found.hasMatch())
            << chapter.id.toStdString() << ": " << found.captured().toStdString();
    }
}

TEST_P(GuideIn, EverySourceCitedIsInTheReferencesAndTheOtherWayRound) {
    const auto* mathematics = guide.chapter(QStringLiteral("mathematics"));
    ASSERT_NE(mathematics, nullptr);
    const auto at = mathematics->markdown.lastIndexOf(QStringLiteral("\n## ")); // References
    ASSERT_GT(at, 0);
    // [Name 1975] but not the text of a link, [words](address).
    const char* const cited = "\\[([A-Z][^\\]\\[()=]*)\\](?!\\()";
    const auto used = keys_in(mathematics->markdown.left(at), cited);
    const auto listed = keys_in(mathematics->markdown.mid(at), "- \\*\\*\\[([^\\]]+)\\]\\*\\*");
    EXPECT_GT(used.size(), 20);
    for (const QString& key : used) {
        EXPECT_TRUE(listed.contains(key)) << "not in the references: " << key.toStdString();
    }
    for (const QString& key : listed) {
        EXPECT_TRUE(used.contains(key)) << "never cited: " << key.toStdString();
    }
}

// What a translation may not change: the chapters, what F1 opens, the pictures, the commands, the
// depth of the headings and the sources that are cited.
TEST_P(GuideIn, HasWhatTheEnglishHas) {
    const Guide original = guide_in(english);
    EXPECT_EQ(guide.language, GetParam().section(QLatin1Char('_'), 0, 0));
    ASSERT_EQ(guide.chapters.size(), original.chapters.size());
    for (qsizetype c = 0; c < original.chapters.size(); ++c) {
        const auto& there = original.chapters[c];
        const auto& here = guide.chapters[c];
        const std::string id = there.id.toStdString();
        EXPECT_EQ(here.id, there.id);
        EXPECT_EQ(code_and_marks(here), code_and_marks(there)) << id;
        ASSERT_EQ(here.sections.size(), there.sections.size()) << id;
        for (qsizetype s = 0; s < there.sections.size(); ++s) {
            EXPECT_EQ(here.sections[s].level, there.sections[s].level) << id;
            EXPECT_EQ(here.sections[s].help_for, there.sections[s].help_for) << id;
        }
        const char* const cited = "\\[([A-Z][A-Za-z ]* \\d{4}[a-z]?)\\](?!\\()";
        EXPECT_EQ(keys_in(here.markdown, cited), keys_in(there.markdown, cited)) << id;
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, GuideIn, ::testing::ValuesIn(guide_languages),
                         [](const auto& language) { return language.param.toStdString(); });

TEST(Guide, ReadsHeadingsMarksAndCodeApart) {
    const auto chapter = read_chapter(
        QStringLiteral("a"), QStringLiteral("<!-- help: today stock -->\n# The title\n\n"
                                            "```\n# no heading\n<!-- help: plan -->\n```\n\n"
                                            "## Part `two`, again\n<!-- picture: mix | A mix -->"));
    ASSERT_EQ(chapter.sections.size(), 2);
    EXPECT_EQ(chapter.title, QStringLiteral("The title"));
    EXPECT_EQ(chapter.sections[0].help_for,
              QStringList({QStringLiteral("today"), QStringLiteral("stock")}));
    EXPECT_EQ(chapter.sections[1].slug, QStringLiteral("part-two-again"));
    EXPECT_TRUE(chapter.sections[1].help_for.isEmpty());
    const QString shown = guide_markdown(chapter, [](const QString& page, const QString& caption) {
        return page + QLatin1Char('/') + caption;
    });
    EXPECT_TRUE(shown.contains(QLatin1String("mix/A mix")));
    EXPECT_TRUE(shown.contains(QLatin1String("<!-- help: plan -->"))) << "in code it is text";
    EXPECT_FALSE(shown.contains(QLatin1String("help: today")));
    EXPECT_FALSE(guide_markdown(chapter).contains(QLatin1String("A mix")));
}

TEST(Guide, LinksThatLeadNowhereAreAbsent) {
    Guide guide;
    guide.chapters = {read_chapter(QStringLiteral("a"), QStringLiteral("# A\n\n## Two words")),
                      read_chapter(QStringLiteral("b"), QStringLiteral("# B"))};
    const QString a = QStringLiteral("a");
    EXPECT_EQ(guide_link(guide, a, QStringLiteral("#two-words")),
              (GuidePlace{a, QStringLiteral("two-words")}));
    EXPECT_EQ(guide_link(guide, a, QStringLiteral("b.md")),
              (GuidePlace{QStringLiteral("b"), QString()}));
    EXPECT_FALSE(guide_link(guide, a, QStringLiteral("b.md#two-words")));
    EXPECT_FALSE(guide_link(guide, a, QStringLiteral("c.md")));
    EXPECT_FALSE(guide_link(guide, a, QStringLiteral("page:today")));
    EXPECT_FALSE(guide_link(guide, a, QStringLiteral("https://b.md/x")));
}

TEST(Guide, FallsBackToEnglish) {
    EXPECT_EQ(guide_in(english).language, QStringLiteral("en"));
    const Guide other = guide_in(QLocale(QLocale::Welsh));
    EXPECT_EQ(other.language, QStringLiteral("en"));
    EXPECT_EQ(other.chapters.size(), guide_in(english).chapters.size());
}
