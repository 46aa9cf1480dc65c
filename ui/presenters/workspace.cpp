#include "ui/presenters/workspace.h"

#include "core/services/piece_air.h"
#include "ui/presenters/own_lessons.h"
#include "ui/presenters/piece_forecast.h"
#include "ui/text/action_words.h"
#include "ui/text/error_words.h"

namespace ui::presenters {
namespace {

QString label_words(const core::services::UndoLabel& label, bool undo) {
    const QString what = text::action_words(label.verb, QString::fromStdString(label.subject));
    return undo ? Workspace::tr("Undo: %1").arg(what) : Workspace::tr("Redo: %1").arg(what);
}

} // namespace

Workspace::Workspace(core::services::Book book, Preferences preferences, const QLocale& desktop,
                     Clock clock, QObject* parent)
    : QObject(parent), book_(std::move(book)), preferences_(std::move(preferences)),
      desktop_(desktop), style_(style_of(preferences_, desktop_)), clock_(std::move(clock)),
      lessons_(std::make_unique<OwnLessons>(book_)),
      forecasts_(std::make_unique<Forecasts>(forecast_pieces)) {}

Workspace::~Workspace() = default;

void Workspace::set_preferences(const Preferences& preferences) {
    if (preferences == preferences_) {
        return;
    }
    preferences_ = preferences;
    style_ = style_of(preferences_, desktop_);
    Q_EMIT changed();
}

void Workspace::ask_forecasts(std::vector<PieceRecord> records) {
    core::services::PieceAir air(book_, now());
    for (auto& record : records) {
        record.air = air.around(record.history);
        record.lesson = lesson_of(record.history.piece, air);
    }
    forecasts_->ask(std::move(records), now());
}

std::shared_ptr<const Lesson> Workspace::lesson_of(const core::model::Piece& piece,
                                                   core::services::PieceAir& air) const {
    return lessons_->of(piece, air);
}

std::optional<core::model::PersonId> Workspace::who() const {
    if (preferences_.person.isEmpty()) {
        return {};
    }
    const auto people = book_.people();
    if (people) {
        for (const auto& person : *people) {
            if (person.active && person.initials == preferences_.person.toStdString()) {
                return person.id;
            }
        }
    }
    return {};
}

core::actions::Context Workspace::context(const std::string& why) const {
    return {who(), now(), why};
}

std::optional<core::actions::Performed> Workspace::perform(const core::actions::Command& command,
                                                           const std::string& why) {
    auto performed = book_.perform(command, context(why));
    if (!performed) {
        report(performed.error());
        return {};
    }
    const auto label = book_.undo_label();
    Q_EMIT changed();
    if (label && label->action == performed->action) {
        Q_EMIT done(
            tr("Kept: %1.")
                .arg(text::action_words(label->verb, QString::fromStdString(label->subject))));
    }
    return std::move(*performed);
}

core::model::Findings Workspace::check(const core::actions::Command& command,
                                       const std::string& why) const {
    auto findings = book_.check(command, context(why));
    if (!findings) {
        report(findings.error());
        return {};
    }
    return std::move(*findings);
}

bool Workspace::undo() {
    const auto undone = book_.undo(context({}));
    if (!undone) {
        report(undone.error());
        return false;
    }
    Q_EMIT changed();
    Q_EMIT done(
        tr("Undone: %1.")
            .arg(text::action_words(undone->verb, QString::fromStdString(undone->subject))));
    return true;
}

bool Workspace::redo() {
    const auto redone = book_.redo(context({}));
    if (!redone) {
        report(redone.error());
        return false;
    }
    Q_EMIT changed();
    Q_EMIT done(
        tr("Done again: %1.")
            .arg(text::action_words(redone->verb, QString::fromStdString(redone->subject))));
    return true;
}

std::optional<QString> Workspace::undo_words() const {
    const auto label = book_.undo_label();
    return label ? std::optional(label_words(*label, true)) : std::nullopt;
}

std::optional<QString> Workspace::redo_words() const {
    const auto label = book_.redo_label();
    return label ? std::optional(label_words(*label, false)) : std::nullopt;
}

void Workspace::report(const core::base::Error& error) const {
    Q_EMIT problem(text::error_words(error));
}

} // namespace ui::presenters
