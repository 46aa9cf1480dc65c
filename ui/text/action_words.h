#pragma once

#include <QString>
#include <string>

namespace ui::text {

/// What an action did, for the Undo item, the status line and the log: "weighing P07". `verb` is
/// the action's stable name (core/actions/command.h verb_of); an unknown one reads "a change".
QString action_words(const std::string& verb, const QString& subject);

} // namespace ui::text
