#include "core/actions/command.h"

#include <array>

namespace core::actions {

// In the order of the variant. The names are in every book's log: they never change.
const char* verb_of(const Command& command) {
    static constexpr std::array<const char*, std::variant_size_v<Command>> verbs{
        "add_person",     "change_person",  "add_chamber",        "change_chamber",
        "add_sensor",     "change_sensor",  "add_instrument",     "change_instrument",
        "add_check",      "add_recipe",     "add_recipe_version", "rename_recipe",
        "archive_recipe", "add_ingredient", "change_ingredient",  "add_lot",
        "change_lot",     "start_batch",    "add_batch",          "change_batch",
        "add_piece",      "change_piece",   "add_ingredient_use", "change_ingredient_use",
        "add_weighing",   "add_weighings",  "amend_weighing",     "withdraw_weighing",
        "record_event",   "withdraw_event", "split_piece",        "merge_pieces",
        "discard_piece",  "set_stages",     "start_stage",        "end_stage",
        "tick_task",      "untick_task",    "add_note",           "accept_finding",
        "sign_decision",  "record_outcome", "add_pack",           "change_pack",
        "move_pack",      "set_preference",
    };
    return verbs.at(command.index());
}

} // namespace core::actions
