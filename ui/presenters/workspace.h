#pragma once

#include "core/services/book.h"
#include "ui/presenters/forecasts.h"
#include "ui/presenters/preferences.h"

#include <QObject>
#include <functional>
#include <memory>
#include <optional>

namespace core::services {
class PieceAir;
}

namespace ui::presenters {

class OwnLessons;

/// What all pages share: the open book, the person's preferences, the clock. The one place where
/// a page asks for a change; it turns every failure into a sentence and tells every page when
/// the book moved.
class Workspace : public QObject {
    Q_OBJECT
  public:
    using Clock = std::function<core::units::Instant()>;

    /// `clock` is the system's in the program and a fixed one in tests.
    Workspace(core::services::Book book, Preferences preferences, const QLocale& desktop,
              Clock clock, QObject* parent = nullptr);
    ~Workspace() override;

    [[nodiscard]] const core::services::Book& book() const { return book_; }
    [[nodiscard]] const text::Style& style() const { return style_; }
    [[nodiscard]] const Preferences& preferences() const { return preferences_; }
    /// Takes effect at once and is announced through changed(). Saving is the caller's.
    void set_preferences(const Preferences& preferences);

    [[nodiscard]] core::units::Instant now() const { return clock_(); }
    [[nodiscard]] core::units::Day today() const { return style_.zone.day_of(now()); }

    [[nodiscard]] bool is_demo() const { return demo_; }
    void set_demo(bool demo) { demo_ = demo; }
    [[nodiscard]] bool is_read_only() const { return book_.is_read_only(); }

    /// Forecasts of the book's pieces, computed in the background.
    [[nodiscard]] Forecasts& forecasts() { return *forecasts_; }
    /// Asks for forecasts of these pieces in the air they hung in and with what own finished pieces
    /// teach; both are read here.
    void ask_forecasts(std::vector<PieceRecord> records);
    /// What own finished pieces teach about the piece; null: nothing. `air` is of this book.
    [[nodiscard]] std::shared_ptr<const Lesson> lesson_of(const core::model::Piece& piece,
                                                          core::services::PieceAir& air) const;

    /// Who works at this desk, by the initials in the preferences; absent until chosen.
    [[nodiscard]] std::optional<core::model::PersonId> who() const;

    /// Performs one change. On failure nothing changed, problem() has been emitted with the
    /// sentence, and the result is empty. `why` is for amendments and withdrawals.
    std::optional<core::actions::Performed> perform(const core::actions::Command& command,
                                                    const std::string& why = {});
    /// Everything wrong with a command before it is performed.
    [[nodiscard]] core::model::Findings check(const core::actions::Command& command,
                                              const std::string& why = {}) const;
    /// True when something was undone or redone.
    bool undo();
    bool redo();
    /// "Undo weighing P07", or absent when there is nothing.
    [[nodiscard]] std::optional<QString> undo_words() const;
    [[nodiscard]] std::optional<QString> redo_words() const;

    /// The rows of a read, or none after telling problem().
    template <class T>
    std::vector<T> rows(core::base::Result<std::vector<T>> result) const {
        if (!result) {
            report(result.error());
            return {};
        }
        return std::move(*result);
    }
    template <class T>
    std::optional<T> one(core::base::Result<T> result) const {
        if (!result) {
            report(result.error());
            return {};
        }
        return std::move(*result);
    }

  Q_SIGNALS:
    /// The book or the preferences are no longer what was shown.
    void changed();
    /// Something did not work: one sentence that says what and how to mend it. Reading may fail
    /// too, and reads through a const workspace.
    void problem(const QString& sentence) const; // clazy:exclude=const-signal-or-slot
    /// Something was done: for the status line.
    void done(const QString& sentence);

  private:
    void report(const core::base::Error& error) const;
    [[nodiscard]] core::actions::Context context(const std::string& why) const;

    core::services::Book book_;
    Preferences preferences_;
    QLocale desktop_;
    text::Style style_;
    Clock clock_;
    bool demo_ = false;
    std::unique_ptr<OwnLessons> lessons_;
    std::unique_ptr<Forecasts> forecasts_;
};

} // namespace ui::presenters
