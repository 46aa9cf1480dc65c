#pragma once

#include "ui/pages/page.h"
#include "ui/text/guide.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;

namespace ui::look {
class Banner;
}

namespace ui::pages {

class GuideReader;

/// The guide, chapter by chapter. A place's detail is "chapter", "chapter#heading", or
/// "for:PAGE" for what belongs to a page (F1).
class GuidePage : public Page {
    Q_OBJECT
  public:
    GuidePage(presenters::Workspace& workspace, QWidget* parent);
    void arrive(const Place& place) override;
    void refresh() override;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void build();
    void build_search(class QLayout* head);
    void load();
    void show_chapter(const QString& id, const QString& slug);
    void follow(const QString& link);
    void ask_for(int row);
    void search_changed();
    void find_next(bool backward);
    bool find_elsewhere(bool backward);
    void say_found();
    [[nodiscard]] int row_of(const QString& id) const;
    [[nodiscard]] const QString& plain(int row);

    text::Guide guide_;
    QVector<QString> plain_; ///< text of each chapter, read when first searched
    QString shown_;          ///< chapter id
    QString drawn_;          ///< what the text was laid out for: language, colours, font
    QListWidget* list_ = nullptr;
    QComboBox* choice_ = nullptr; ///< instead of the list in a narrow window
    GuideReader* reader_ = nullptr;
    QLineEdit* search_ = nullptr;
    QLabel* found_ = nullptr;
    look::Banner* language_ = nullptr;
};

} // namespace ui::pages
