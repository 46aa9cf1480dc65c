#pragma once

#include "ui/text/guide.h"

#include <QTextBrowser>

namespace ui::pages {

/// Shows one chapter in lines of a readable length and follows no link by itself.
class GuideReader : public QTextBrowser {
    Q_OBJECT
  public:
    explicit GuideReader(QWidget* parent = nullptr);
    /// Lays the chapter out in the colours and the font in force.
    void show_chapter(const text::GuideChapter& chapter);
    /// Brings a heading to the top; an empty slug is the chapter's head. False when not there.
    bool go_to(const QString& slug);
    /// Marks every place of `words` (none when empty).
    void mark(const QString& words);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    /// Relative names are chapters, not files: nothing is ever loaded.
    QVariant loadResource(int, const QUrl&) override { return {}; }

  private:
    void return_to_heading();
    QTextDocument* chapter_ = nullptr; ///< the one shown; null before the first
    QString heading_;                  ///< gone to last; kept at the top until the person scrolls
    bool hold_ = false;
};

} // namespace ui::pages
