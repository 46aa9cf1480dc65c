#pragma once

#include "core/services/book.h"
#include "core/services/keeping.h"

#include <QObject>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>

namespace ui::presenters {

/// Looks after the file of a book off the GUI thread: checks it, mends its roll-ups, carries it
/// over, says what a restore would mean. One thing at a time; its signal follows, then the result
/// is here. Each works through a door of its own on the file, so the book may stay open.
class BookKeeping : public QObject {
    Q_OBJECT
  public:
    template <class T>
    using Answer = std::optional<core::base::Result<T>>;

    explicit BookKeeping(QObject* parent = nullptr);
    /// Cancels what runs, and waits for it.
    ~BookKeeping() override;

    void check(const std::string& book);
    /// The book must be open for writing in this program.
    void rebuild_roll_ups(const std::string& book);
    void salvage(const std::string& damaged, const std::string& target, core::units::Instant now);
    /// May be asked while another is looked at: the newest one is answered.
    void preview(const std::string& book, const std::string& backup);

    void cancel(); ///< a check or the mending of roll-ups; a salvage runs to its end
    [[nodiscard]] bool is_busy() const;
    void wait(); ///< for what is under way (tests)

    [[nodiscard]] const Answer<core::services::BookCheck>& report() const { return report_; }
    [[nodiscard]] const std::optional<core::base::Status>& rebuilt() const { return rebuilt_; }
    [[nodiscard]] const Answer<core::services::SalvageReport>& salvaged() const {
        return salvaged_;
    }
    [[nodiscard]] const Answer<core::services::RestorePreview>& previewed() const {
        return previewed_;
    }

  Q_SIGNALS:
    void check_ended();
    void rebuild_ended();
    void salvage_ended();
    void preview_ended();

  private:
    /// Runs on a worker and gives what is then done on the GUI thread.
    using Work = std::function<std::function<void()>(std::stop_token)>;
    void run(Work work);

    struct Worker;
    std::unique_ptr<Worker> worker_;
    std::stop_source stop_;
    Answer<core::services::BookCheck> report_;
    std::optional<core::base::Status> rebuilt_;
    Answer<core::services::SalvageReport> salvaged_;
    Answer<core::services::RestorePreview> previewed_;
};

} // namespace ui::presenters
