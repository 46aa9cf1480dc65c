#include "core/actions/perform.h"

#include "core/actions/applying.h"
#include "core/store/climate.h"

namespace core::actions {

using base::ErrorCode;
using store::Connection;

namespace {

store::StepNote note_of(const Context& context) {
    return {context.now, context.who, context.why};
}

Performed carry_out(Connection& book, const Command& command, const Context& context) {
    Applying applying{book, context, {}, {}};
    store::ChangeRecorder recorder(book);
    std::visit([&](const auto& c) { apply(applying, c); }, command);
    const bool undoable = !std::holds_alternative<SetPreference>(command);
    const auto action = store::log_action(
        book, {verb_of(command), applying.subject, undoable, recorder.taken()}, note_of(context));
    return {action, std::move(applying.created)};
}

std::string stops_in(const model::Findings& findings, std::string& where) {
    std::string codes;
    for (const model::Finding& finding : findings) {
        if (finding.severity == model::Severity::stop) {
            codes += (codes.empty() ? "" : ", ") + finding.code;
            where += (where.empty() ? "" : ", ") + finding.place;
        }
    }
    return codes;
}

} // namespace

base::Result<Performed> perform(store::Store& store, const Command& command,
                                const Context& context) {
    std::string where;
    if (const auto stops = stops_in(check(command, context), where); !stops.empty()) {
        return base::fault(ErrorCode::not_allowed, stops, where);
    }
    return store.change([&](Connection& book) { return carry_out(book, command, context); });
}

base::Result<model::Findings> check_in_book(store::Store& store, const Command& command,
                                            const Context& context) {
    model::Findings findings = check(command, context);
    std::string where;
    if (!stops_in(findings, where).empty()) {
        return findings;
    }
    const auto rehearsed =
        store.rehearse([&](Connection& book) { return carry_out(book, command, context); });
    if (!rehearsed) {
        const base::Error& error = rehearsed.error();
        const bool by_rule = error.code == ErrorCode::conflict ||
                             error.code == ErrorCode::not_allowed ||
                             error.code == ErrorCode::no_such_entry;
        if (!by_rule) {
            return tl::unexpected<base::Error>(error);
        }
        findings.push_back(
            {.code = error.code == ErrorCode::no_such_entry ? "no_such_entry" : error.detail,
             .severity = model::Severity::stop,
             .place = error.where});
    }
    return findings;
}

base::Result<store::LoggedAction> undo(store::Store& store, const Context& context) {
    return store.change([&](Connection& book) {
        const auto action = store::next_to_undo(book);
        if (!action) {
            store::refuse(ErrorCode::nothing_to_undo);
        }
        store::step_back(book, action->id, note_of(context));
        store::take_back_climate_of(book, action->id);
        return *action;
    });
}

base::Result<store::LoggedAction> redo(store::Store& store, const Context& context) {
    return store.change([&](Connection& book) {
        const auto action = store::next_to_redo(book);
        if (!action) {
            store::refuse(ErrorCode::nothing_to_redo);
        }
        store::step_again(book, action->id, note_of(context));
        return *action;
    });
}

} // namespace core::actions
