#pragma once

#include "ui/pages/page.h"

#include <QHash>
#include <QMainWindow>
#include <QVector>

class QAction;
class QLabel;
class QListWidget;
class QSettings;
class QStackedWidget;

namespace ui::look {
class Banner;
}

namespace ui::pages {

/// The one window: places on the side, a page in the middle, what was just done at the foot.
/// Pages are made when first entered, so the window paints before they are.
class MainWindow : public QMainWindow {
    Q_OBJECT
  public:
    /// `settings` keeps the window's size and the last place; null (tests) keeps nothing.
    explicit MainWindow(presenters::Workspace& workspace, QSettings* settings = nullptr,
                        QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Shows a page; an unknown id goes to the first place.
    void show_place(const Place& place);
    [[nodiscard]] Page* page() const; ///< the one shown
    [[nodiscard]] const Place& place() const { return place_; }
    [[nodiscard]] Page* page_of(const QString& id); ///< made if need be; null when unknown

  Q_SIGNALS:
    /// The person asked for another book; the application opens it.
    void open_asked();
    void new_asked();
    void demo_asked();
    void backup_asked();
    void restore_asked();
    void check_asked();

  protected:
    void closeEvent(QCloseEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void build_side();
    void build_middle();
    void build_menus();
    void build_book_menu();
    [[nodiscard]] QString why_no_restore() const;
    void build_edit_menu();
    void build_go_menu();
    void build_help_menu();
    void print_page();
    QAction* action(const char* name, const QString& text, const QKeySequence& keys = {});
    void restore();
    void book_changed();
    void show_banners();
    void problem(const QString& sentence);
    void remember(const Place& place);
    void go_back();

    presenters::Workspace& workspace_;
    QSettings* settings_;
    QVector<PageEntry> entries_;
    QHash<QString, Page*> made_;
    QVector<Place> trail_;
    Place place_;
    QListWidget* side_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    look::Banner* demo_banner_ = nullptr;
    look::Banner* read_only_banner_ = nullptr;
    look::Banner* problem_banner_ = nullptr;
    QLabel* status_ = nullptr;
    QLabel* book_label_ = nullptr;
    QAction* undo_ = nullptr;
    QAction* redo_ = nullptr;
    QAction* back_ = nullptr;
};

} // namespace ui::pages
