#include "ui/text/guide.h"

#include "core/base/embedded.h"

#include <QRegularExpression>

#include <span>
#include <utility>

namespace ui::text {

/// Made from resources/guide by packaging/cmake/SaltloftEmbed.cmake.
std::span<const core::base::EmbeddedFile> guide_files();

namespace {

constexpr QLatin1String contents_id("contents");

/// "<!-- KIND: value -->" on a line of its own.
std::optional<QString> mark(const QString& line, const char* kind) {
    static const QRegularExpression form(QStringLiteral("^<!-- ([a-z]+): (.*) -->$"));
    const auto match = form.match(line.trimmed());
    if (!match.hasMatch() || match.captured(1) != QLatin1String(kind)) {
        return std::nullopt;
    }
    return match.captured(2).trimmed();
}

/// Calls `visit` with each line and whether it stands in a code block.
void each_line(const QString& markdown, const std::function<void(const QString&, bool)>& visit) {
    bool code = false;
    for (const QString& line : markdown.split(QLatin1Char('\n'))) {
        const bool fence = line.startsWith(QLatin1String("```"));
        visit(line, code || fence);
        code = code != fence;
    }
}

/// Ids of the chapters that the contents link to, in order.
QStringList order_in(const QString& contents) {
    static const QRegularExpression link(QStringLiteral("\\]\\(([a-z-]+)\\.md\\)"));
    QStringList ids{contents_id};
    for (auto it = link.globalMatch(contents); it.hasNext();) {
        const QString id = it.next().captured(1);
        if (!ids.contains(id)) {
            ids << id;
        }
    }
    return ids;
}

/// The chapters whose file names begin with `folder` ("" or "de/").
QVector<GuideChapter> chapters_in(const QString& folder) {
    QVector<GuideChapter> found;
    for (const auto& file : guide_files()) {
        const QString name = QString::fromUtf8(file.name.data(), int(file.name.size()));
        const QString id = name.mid(folder.size()).chopped(3); // ".md"
        if (name.startsWith(folder) && !id.contains(QLatin1Char('/'))) {
            found.push_back(
                read_chapter(id, QString::fromUtf8(file.text.data(), int(file.text.size()))));
        }
    }
    QStringList order;
    for (const GuideChapter& chapter : found) {
        if (chapter.id == contents_id) {
            order = order_in(chapter.markdown);
        }
    }
    const auto rank = [&](const GuideChapter& c) {
        const auto at = order.indexOf(c.id);
        return at < 0 ? order.size() : at;
    };
    std::stable_sort(found.begin(), found.end(), [&](const GuideChapter& a, const GuideChapter& b) {
        return rank(a) < rank(b);
    });
    return found;
}

} // namespace

const GuideChapter* Guide::chapter(const QString& id) const {
    for (const GuideChapter& c : chapters) {
        if (c.id == id) {
            return &c;
        }
    }
    return nullptr;
}

Guide guide_in(const QLocale& locale) {
    const QString language = locale.name().section(QLatin1Char('_'), 0, 0);
    auto chapters = chapters_in(language + QLatin1Char('/'));
    if (!chapters.isEmpty()) {
        return {language, chapters};
    }
    return {QStringLiteral("en"), chapters_in(QString())};
}

GuideChapter read_chapter(const QString& id, const QString& markdown) {
    GuideChapter chapter{id, {}, markdown, {}};
    QStringList help;
    each_line(markdown, [&](const QString& line, bool code) {
        if (code) {
            return;
        }
        if (const auto pages = mark(line, "help")) {
            help += pages->split(QLatin1Char(' '), Qt::SkipEmptyParts);
        }
        static const QRegularExpression heading(QStringLiteral("^(#{1,4}) (.+)$"));
        const auto match = heading.match(line);
        if (!match.hasMatch()) {
            return;
        }
        const QString title = match.captured(2).trimmed();
        chapter.sections.push_back(
            {title, guide_slug(title), int(match.captured(1).size()), std::exchange(help, {})});
        if (chapter.title.isEmpty()) {
            chapter.title = title;
        }
    });
    return chapter;
}

std::optional<GuidePlace> guide_for_page(const Guide& guide, const QString& page) {
    for (const GuideChapter& chapter : guide.chapters) {
        for (const GuideSection& section : chapter.sections) {
            if (section.help_for.contains(page)) {
                return GuidePlace{chapter.id, section.level == 1 ? QString() : section.slug};
            }
        }
    }
    return std::nullopt;
}

std::optional<GuidePlace> guide_link(const Guide& guide, const QString& chapter,
                                     const QString& link) {
    QString file = link.section(QLatin1Char('#'), 0, 0);
    const QString slug = link.section(QLatin1Char('#'), 1);
    if (file.isEmpty()) {
        file = chapter + QStringLiteral(".md");
    }
    const auto* there =
        file.endsWith(QLatin1String(".md")) ? guide.chapter(file.chopped(3)) : nullptr;
    if (there == nullptr) {
        return std::nullopt;
    }
    const bool known =
        slug.isEmpty() || std::any_of(there->sections.begin(), there->sections.end(),
                                      [&](const GuideSection& s) { return s.slug == slug; });
    return known ? std::optional(GuidePlace{there->id, slug}) : std::nullopt;
}

QString guide_markdown(const GuideChapter& chapter,
                       const std::function<QString(const QString&, const QString&)>& picture) {
    QStringList lines;
    each_line(chapter.markdown, [&](const QString& line, bool code) {
        if (code || !(mark(line, "help") || mark(line, "picture"))) {
            lines << line;
            return;
        }
        if (const auto shown = mark(line, "picture"); shown && picture) {
            lines << picture(shown->section(QLatin1Char('|'), 0, 0).trimmed(),
                             shown->section(QLatin1Char('|'), 1).trimmed());
        }
    });
    return lines.join(QLatin1Char('\n'));
}

QString guide_slug(const QString& heading) {
    QString slug;
    const QString small = heading.toLower();
    for (const QChar c : small) {
        if (c.isLetterOrNumber()) {
            slug += c;
        } else if ((c == QLatin1Char(' ') || c == QLatin1Char('-')) && !slug.isEmpty()) {
            slug += QLatin1Char('-');
        }
    }
    return slug;
}

} // namespace ui::text
