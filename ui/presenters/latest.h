#pragma once

#include "ui/presenters/background.h"

#include <QCoreApplication>
#include <QFutureWatcher>

#include <functional>
#include <optional>

namespace ui::presenters {

/// Computes off the GUI thread for what keeps being asked anew: while one answer is under way only
/// the newest question waits, and only an answer to the newest question is handed out.
template <class T>
class Latest {
  public:
    explicit Latest(std::function<void(T)> answered) : answered_(std::move(answered)) {
        QObject::connect(&watcher_, &QFutureWatcherBase::finished, &watcher_, [this] { finish(); });
    }
    ~Latest() {
        watcher_.disconnect();
        watcher_.waitForFinished();
    }
    Latest(const Latest&) = delete;
    Latest& operator=(const Latest&) = delete;

    /// `question` holds all it needs by value.
    void ask(std::function<T()> question) {
        if (busy_) {
            waiting_ = std::move(question);
            return;
        }
        busy_ = true;
        watcher_.setFuture(in_background(std::move(question)));
    }
    [[nodiscard]] bool is_busy() const { return busy_; }
    /// For tests and pictures.
    void wait() {
        while (busy_) {
            watcher_.waitForFinished();
            QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
        }
    }

  private:
    void finish() {
        busy_ = false;
        if (waiting_) {
            auto next = std::move(*waiting_);
            waiting_.reset();
            ask(std::move(next));
            return;
        }
        answered_(watcher_.result());
    }

    std::function<void(T)> answered_;
    std::optional<std::function<T()>> waiting_;
    QFutureWatcher<T> watcher_;
    bool busy_ = false;
};

} // namespace ui::presenters
