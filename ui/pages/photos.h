#pragma once

#include "core/model/batch.h"

#include <QDialog>
#include <QImage>
#include <QListWidget>
#include <vector>

class QLabel;
class QPushButton;

namespace ui::look {
class Banner;
}
namespace ui::presenters {
class Workspace;
}

namespace ui::pages {

/// Notes that have a photo, in the order given.
std::vector<core::model::Note> with_photos(std::vector<core::model::Note> notes);

/// Small pictures of notes, one beside the other. Enter or a click opens the larger view. A photo
/// that is missing or cannot be read keeps its place and says so.
class PhotoStrip : public QListWidget {
    Q_OBJECT
  public:
    PhotoStrip(presenters::Workspace& workspace, const char* object_name, QWidget* parent);
    /// Those of the notes that have a photo; pictures already made are kept.
    void show_notes(std::vector<core::model::Note> notes);
    /// Opens the larger view of this note's photo; false when the strip has none of it.
    bool open_note(qint64 note);

  private:
    presenters::Workspace& workspace_;
    std::vector<core::model::Note> notes_;
};

/// Paints a picture as large as there is room, never larger than it is.
class PhotoView : public QWidget {
    Q_OBJECT
  public:
    explicit PhotoView(QWidget* parent);
    void show_image(QImage image);
    [[nodiscard]] bool is_empty() const { return image_.isNull(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QImage image_;
};

/// One photo large, with what was noted; Left and Right go through the others.
class PhotoDialog : public QDialog {
    Q_OBJECT
  public:
    /// `notes` all have photos; `index` is one of them.
    PhotoDialog(presenters::Workspace& workspace, std::vector<core::model::Note> notes, int index,
                QWidget* parent);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    bool step(int key); ///< false where the key is no arrow
    void show_photo(int index);
    void save_copy();

    presenters::Workspace& workspace_;
    std::vector<core::model::Note> notes_;
    std::vector<unsigned char> bytes_;
    int index_ = 0;
    PhotoView* view_;
    QLabel* words_;
    look::Banner* wrong_;
    QPushButton* before_;
    QPushButton* after_;
    QPushButton* save_;
};

} // namespace ui::pages
