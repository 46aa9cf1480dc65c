#pragma once

#include "core/services/book.h"
#include "ui/pages/main_window.h"
#include "ui/presenters/workspace.h"

#include <QObject>
#include <QSettings>
#include <memory>

namespace app::window {

/// One open book with its window, and the switch to another book. Lives as long as the program.
class Session : public QObject {
    Q_OBJECT
  public:
    explicit Session(QSettings& settings);
    ~Session() override;

    /// Opens the window on a book; `demo` marks it as invented. False after telling the person
    /// why it could not be opened; the window there was stays.
    bool open(const QString& path, bool demo, bool create_if_missing);
    /// A fresh invented book in a temporary place.
    bool open_demo();
    [[nodiscard]] ui::pages::MainWindow* window() const { return window_.get(); }

    /// The person's own book: in the XDG data folder, which is made if need be.
    static QString own_book();

  private:
    void ask_open();
    void ask_new();
    void ask_backup();
    void preferences_changed();
    [[nodiscard]] std::unique_ptr<ui::pages::MainWindow>
    make_window(ui::presenters::Workspace& workspace);
    /// The same place in a new window, in the language now preferred.
    void speak_anew();
    void tell(const core::base::Error& error, const QString& path);

    QSettings& settings_;
    ui::presenters::Preferences preferences_;
    std::unique_ptr<ui::presenters::Workspace> workspace_;
    std::unique_ptr<ui::pages::MainWindow> window_;
};

} // namespace app::window
