#pragma once

#include <QKeySequence>
#include <QString>
#include <QWidget>
#include <vector>

namespace ui::presenters {
class Workspace;
}

namespace ui::print {
struct Printable;
struct TablePaper;
} // namespace ui::print

class QAbstractItemModel;

namespace ui::pages {

/// Where to go: a page by its id and, for pages about one thing, which one (a row id of the
/// book). `detail` is for the page's own use ("split", a date).
struct Place {
    QString page;
    qint64 row = 0; ///< no row is 0 or less: ids of the book start at 1
    QString detail;
    friend bool operator==(const Place&, const Place&) = default;
};

/// A page in the middle of the window. It shows what the workspace knows and asks the workspace
/// for changes; it holds no data of its own beyond what is being typed.
class Page : public QWidget {
    Q_OBJECT
  public:
    explicit Page(presenters::Workspace& workspace, QWidget* parent);
    /// The window is about to show the page at `place`. Called before refresh().
    virtual void arrive(const Place& place) { Q_UNUSED(place) }
    /// The book or the preferences changed, or the page was just entered: show what is true now.
    /// Called only while the page is the one shown. Must keep what the person is typing.
    virtual void refresh() = 0;
    /// What Print on the Book menu offers; nothing by default.
    virtual std::vector<print::Printable> printables();

  Q_SIGNALS:
    void go(const ui::pages::Place& place);
    /// A short line for the status bar: what has just been done.
    void said(const QString& sentence);

  protected:
    /// The list of `model` as it stands, for `printables()`. Sorted and filtered as on screen
    /// where the view's own model is given.
    [[nodiscard]] print::Printable list_printable(const QAbstractItemModel& model,
                                                  print::TablePaper paper) const;

    presenters::Workspace& workspace_; ///< outlives every page
};

/// The groups of places on the side, top to bottom. `inner` pages are reached from others.
enum class Side { round, book, house, inner };

/// How the window knows a page. Each page file defines one function that returns this, named in
/// ui/pages/page_list.inc.
struct PageEntry {
    const char* id; ///< stable: used in Place, in settings and as file name of rendered screens
    Side side;
    QString title; ///< as on the side
    QString hint;  ///< one line: what the page is for
    Page* (*make)(presenters::Workspace&, QWidget* parent);
};

} // namespace ui::pages

Q_DECLARE_METATYPE(ui::pages::Place)
