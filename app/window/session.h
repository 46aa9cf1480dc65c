#pragma once

#include "core/services/book.h"
#include "ui/pages/main_window.h"
#include "ui/presenters/workspace.h"

#include <QObject>
#include <QSettings>
#include <memory>

namespace app::window {

core::units::Instant system_now();

/// One open book with its window, and the switch to another book. Lives as long as the program.
class Session : public QObject {
    Q_OBJECT
  public:
    explicit Session(QSettings& settings);
    ~Session() override;

    /// Opens the window on a book; `demo` marks it as invented. A book that does not open is told
    /// of with the ways out; false when none was taken. The window there was stays.
    bool open(const QString& path, bool demo, bool create_if_missing);
    /// A fresh invented book in a temporary place.
    bool open_demo();
    [[nodiscard]] ui::pages::MainWindow* window() const { return window_.get(); }

    /// The person's own book: in the XDG data folder, which is made if need be.
    static QString own_book();

  private:
    bool ask_open();
    bool ask_new();
    void ask_backup();
    // looking after the file: session_keeping.cpp
    void ask_restore();
    void ask_check();
    /// Lets the person choose a backup for the book at `path`, puts it in its place and opens it.
    bool restore_over(const QString& path);
    /// Carries a damaged book over, and opens the new one if the person wants to.
    bool salvage_from(const QString& path);
    bool offer_ways_out(const core::base::Error& error, const QString& path);
    void close_book();
    void end_without_window();
    [[nodiscard]] QString book_path() const;
    [[nodiscard]] ui::text::Style style() const;
    void preferences_changed();
    [[nodiscard]] std::unique_ptr<ui::pages::MainWindow>
    make_window(ui::presenters::Workspace& workspace);
    /// The same place in a new window, in the language now preferred.
    void speak_anew();
    void tell(const core::base::Error& error, const QString& path);
    /// The error, with the file as its detail where it has none.
    static core::base::Error with_place(core::base::Error error, const QString& path);

    QSettings& settings_;
    ui::presenters::Preferences preferences_;
    std::unique_ptr<ui::presenters::Workspace> workspace_;
    std::unique_ptr<ui::pages::MainWindow> window_;
};

} // namespace app::window
