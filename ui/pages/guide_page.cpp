#include "ui/pages/guide_page.h"

#include "ui/look/pieces.h"
#include "ui/look/theme.h"
#include "ui/pages/guide_reader.h"
#include "ui/pages/page_frame.h"
#include "ui/presenters/workspace.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QShortcut>
#include <QTextDocument>
#include <QUrl>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

constexpr double list_beside_from = 46; // line heights of width that list and text need

} // namespace

GuidePage::GuidePage(presenters::Workspace& workspace, QWidget* parent) : Page(workspace, parent) {
    build();
    load();
}

void GuidePage::build() {
    const PageFrame frame = frame_page(this, tr("Guide"));
    build_search(frame.head);
    language_ = new look::Banner("guide_language", this);
    frame.body->addWidget(language_);
    choice_ = look::named(new QComboBox(this), "guide_chapter_choice", tr("Chapter"));
    choice_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    connect(choice_, &QComboBox::activated, this, &GuidePage::ask_for);
    frame.body->addWidget(choice_);
    auto* row = new QHBoxLayout;
    row->setSpacing(look::lines(this, 0.7));
    list_ = look::named(new QListWidget(this), "guide_chapters", tr("Chapters"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setSpacing(look::lines(list_, 0.15));
    connect(list_, &QListWidget::currentRowChanged, this, &GuidePage::ask_for);
    row->addWidget(list_);
    reader_ = look::named(new GuideReader(this), "guide_text", tr("Text of the chapter"));
    connect(reader_, &QTextBrowser::anchorClicked, this,
            [this](const QUrl& url) { follow(url.toString()); });
    reader_->setMinimumHeight(look::lines(this, 10));
    row->addWidget(reader_, 1);
    frame.body->addLayout(row, 1);
}

void GuidePage::build_search(QLayout* head) {
    found_ = look::caption({}, this);
    found_->setWordWrap(false);
    found_->setObjectName(QStringLiteral("guide_found"));
    head->addWidget(found_);
    search_ = look::named(new QLineEdit(this), "guide_search", tr("Search the guide"));
    search_->setPlaceholderText(tr("Search the guide"));
    search_->setMinimumWidth(look::lines(this, 9));
    connect(search_, &QLineEdit::textChanged, this, &GuidePage::search_changed);
    connect(search_, &QLineEdit::returnPressed, this, [this] { find_next(false); });
    head->addWidget(search_);
    auto* previous = look::button("guide_previous", tr("Pre&vious"));
    connect(previous, &QPushButton::clicked, this, [this] { find_next(true); });
    head->addWidget(previous);
    auto* next = look::button("guide_next", tr("Ne&xt"));
    connect(next, &QPushButton::clicked, this, [this] { find_next(false); });
    head->addWidget(next);
    const auto key = [this](const QKeySequence& keys, auto what) {
        auto* shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, what);
    };
    key(QKeySequence::Find, [this] {
        search_->setFocus(Qt::ShortcutFocusReason);
        search_->selectAll();
    });
    key(QKeySequence(Qt::Key_F3), [this] { find_next(false); });
    key(QKeySequence(Qt::SHIFT | Qt::Key_F3), [this] { find_next(true); });
}

/// Takes the guide in the person's language, and says so where there is only the English one.
void GuidePage::load() {
    const QLocale locale = workspace_.style().locale;
    guide_ = text::guide_in(locale);
    plain_ = QVector<QString>(guide_.chapters.size());
    const bool foreign = guide_.language == QLatin1String("en") &&
                         locale.language() != QLocale::English && locale.language() != QLocale::C;
    language_->say(QStringLiteral("note"), foreign ? tr("The guide is in English.") : QString());
    const QSignalBlocker quiet(list_);
    const QSignalBlocker quiet_too(choice_);
    list_->clear();
    choice_->clear();
    for (const auto& chapter : guide_.chapters) {
        list_->addItem(chapter.title);
        choice_->addItem(chapter.title);
    }
    list_->setFixedWidth(
        std::min(list_->sizeHintForColumn(0) + look::lines(list_, 1.2), look::lines(list_, 14)));
}

void GuidePage::arrive(const Place& place) {
    text::GuidePlace there{place.detail.section(QLatin1Char('#'), 0, 0),
                           place.detail.section(QLatin1Char('#'), 1)};
    const QString prefix = QStringLiteral("for:");
    if (place.detail.startsWith(prefix)) {
        there = text::guide_for_page(guide_, place.detail.mid(prefix.size()))
                    .value_or(text::GuidePlace{});
    }
    if (guide_.chapter(there.chapter) == nullptr) {
        there = {shown_.isEmpty() ? guide_.chapters.front().id : shown_, {}};
        if (!shown_.isEmpty()) {
            return; // back on the page: where the person was reading
        }
    }
    show_chapter(there.chapter, there.slug);
}

void GuidePage::refresh() {
    const QString wanted = workspace_.style().locale.name() + QLatin1Char(' ') +
                           look::tokens().text.name() + QLatin1Char(' ') + font().toString();
    if (drawn_ != wanted) {
        const bool again = !drawn_.isEmpty();
        drawn_ = wanted;
        if (again) {
            load();
            show_chapter(row_of(shown_) < 0 ? guide_.chapters.front().id : shown_, {});
        }
    }
}

int GuidePage::row_of(const QString& id) const {
    for (int i = 0; i < guide_.chapters.size(); ++i) {
        if (guide_.chapters[i].id == id) {
            return i;
        }
    }
    return -1;
}

void GuidePage::show_chapter(const QString& id, const QString& slug) {
    const auto* chapter = guide_.chapter(id);
    if (chapter == nullptr) {
        return;
    }
    reader_->show_chapter(*chapter);
    reader_->mark(search_->text());
    shown_ = id;
    const int row = row_of(id);
    const QSignalBlocker quiet(list_);
    list_->setCurrentRow(row);
    choice_->setCurrentIndex(row);
    reader_->go_to(slug);
}

/// Through the window, so that Back returns to the chapter before.
void GuidePage::ask_for(int row) {
    if (row >= 0 && row < guide_.chapters.size() && guide_.chapters[row].id != shown_) {
        Q_EMIT go({QStringLiteral("guide"), 0, guide_.chapters[row].id});
    }
}

void GuidePage::follow(const QString& link) {
    const QString page = QStringLiteral("page:");
    if (link.startsWith(page)) {
        Q_EMIT go({link.mid(page.size()), 0, {}});
    } else if (const auto there = text::guide_link(guide_, shown_, link)) {
        Q_EMIT go({QStringLiteral("guide"), 0, there->chapter + QLatin1Char('#') + there->slug});
    }
}

const QString& GuidePage::plain(int row) {
    if (plain_[row].isNull()) {
        QTextDocument document;
        document.setMarkdown(text::guide_markdown(guide_.chapters[row]),
                             QTextDocument::MarkdownDialectGitHub);
        plain_[row] = document.toPlainText();
    }
    return plain_[row];
}

void GuidePage::search_changed() {
    reader_->mark(search_->text());
    say_found();
    // What is being typed is found from where the last find began.
    QTextCursor cursor = reader_->textCursor();
    cursor.setPosition(cursor.selectionStart());
    reader_->setTextCursor(cursor);
    if (!search_->text().isEmpty()) {
        reader_->find(search_->text());
    }
}

void GuidePage::say_found() {
    const QString words = search_->text();
    int places = 0;
    int chapters = 0;
    for (int row = 0; !words.isEmpty() && row < guide_.chapters.size(); ++row) {
        const auto here = plain(row).count(words, Qt::CaseInsensitive);
        places += int(here);
        chapters += here > 0 ? 1 : 0;
    }
    const QString number = tr("%n place(s)", nullptr, places);
    found_->setText(words.isEmpty() ? QString()
                    : chapters < 2  ? number
                                    : tr("%1 in %n chapter(s)", nullptr, chapters).arg(number));
}

void GuidePage::find_next(bool backward) {
    const QString words = search_->text();
    if (words.isEmpty()) {
        search_->setFocus();
        return;
    }
    const auto way = backward ? QTextDocument::FindBackward : QTextDocument::FindFlags();
    if (!reader_->find(words, way) && !find_elsewhere(backward)) {
        Q_EMIT said(tr("“%1” is not in the guide.").arg(words));
    }
}

/// In the chapters after (before) this one, around to this one again.
bool GuidePage::find_elsewhere(bool backward) {
    const QString words = search_->text();
    const int count = int(guide_.chapters.size());
    const int from = row_of(shown_);
    for (int i = 1; i <= count; ++i) {
        const int row = (from + (backward ? count - i : i)) % count;
        if (!plain(row).contains(words, Qt::CaseInsensitive)) {
            continue;
        }
        ask_for(row);
        reader_->moveCursor(backward ? QTextCursor::End : QTextCursor::Start);
        return reader_->find(words,
                             backward ? QTextDocument::FindBackward : QTextDocument::FindFlags());
    }
    return false;
}

void GuidePage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    const bool wide = width() >= look::lines(this, list_beside_from);
    list_->setVisible(wide);
    choice_->setVisible(!wide);
}

PageEntry guide_page() {
    return {"guide", Side::house, GuidePage::tr("Guide"),
            GuidePage::tr("How the work goes, what to do when, and the mathematics"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new GuidePage(workspace, parent);
            }};
}

} // namespace ui::pages
