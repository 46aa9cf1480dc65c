#include "ui/text/action_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

namespace ui::text {
namespace {

struct Row {
    const char* verb;
    const char* words; ///< %1 is the subject
};

// QT_TRANSLATE_NOOP keeps the table plain data while lupdate still finds the sentences.
constexpr Row rows[] = {
    {"add_person", QT_TRANSLATE_NOOP("ActionWords", "new person %1")},
    {"change_person", QT_TRANSLATE_NOOP("ActionWords", "person %1 changed")},
    {"add_chamber", QT_TRANSLATE_NOOP("ActionWords", "new chamber %1")},
    {"change_chamber", QT_TRANSLATE_NOOP("ActionWords", "chamber %1 changed")},
    {"add_sensor", QT_TRANSLATE_NOOP("ActionWords", "new sensor %1")},
    {"change_sensor", QT_TRANSLATE_NOOP("ActionWords", "sensor %1 changed")},
    {"add_instrument", QT_TRANSLATE_NOOP("ActionWords", "new instrument %1")},
    {"change_instrument", QT_TRANSLATE_NOOP("ActionWords", "instrument %1 changed")},
    {"add_check", QT_TRANSLATE_NOOP("ActionWords", "calibration check of %1")},
    {"add_recipe", QT_TRANSLATE_NOOP("ActionWords", "new recipe %1")},
    {"add_recipe_version", QT_TRANSLATE_NOOP("ActionWords", "new version of recipe %1")},
    {"rename_recipe", QT_TRANSLATE_NOOP("ActionWords", "recipe renamed to %1")},
    {"import_document", QT_TRANSLATE_NOOP("ActionWords", "import of %1")},
    {"archive_recipe", QT_TRANSLATE_NOOP("ActionWords", "recipe %1 put away")},
    {"add_ingredient", QT_TRANSLATE_NOOP("ActionWords", "new ingredient %1")},
    {"change_ingredient", QT_TRANSLATE_NOOP("ActionWords", "ingredient %1 changed")},
    {"add_lot", QT_TRANSLATE_NOOP("ActionWords", "new lot %1")},
    {"change_lot", QT_TRANSLATE_NOOP("ActionWords", "lot %1 changed")},
    {"start_batch", QT_TRANSLATE_NOOP("ActionWords", "new batch %1")},
    {"add_batch", QT_TRANSLATE_NOOP("ActionWords", "new batch %1")},
    {"change_batch", QT_TRANSLATE_NOOP("ActionWords", "batch %1 changed")},
    {"add_piece", QT_TRANSLATE_NOOP("ActionWords", "new piece %1")},
    {"change_piece", QT_TRANSLATE_NOOP("ActionWords", "piece %1 changed")},
    {"add_ingredient_use", QT_TRANSLATE_NOOP("ActionWords", "ingredient lot noted for %1")},
    {"change_ingredient_use", QT_TRANSLATE_NOOP("ActionWords", "ingredient lot changed for %1")},
    {"add_weighing", QT_TRANSLATE_NOOP("ActionWords", "weighing of %1")},
    {"add_weighings", QT_TRANSLATE_NOOP("ActionWords", "weighings of %1")},
    {"amend_weighing", QT_TRANSLATE_NOOP("ActionWords", "correction of a weighing of %1")},
    {"withdraw_weighing", QT_TRANSLATE_NOOP("ActionWords", "a weighing of %1 taken back")},
    {"record_event", QT_TRANSLATE_NOOP("ActionWords", "event of %1")},
    {"withdraw_event", QT_TRANSLATE_NOOP("ActionWords", "an event of %1 taken back")},
    {"split_piece", QT_TRANSLATE_NOOP("ActionWords", "%1 cut into pieces")},
    {"merge_pieces", QT_TRANSLATE_NOOP("ActionWords", "pieces weighed as one: %1")},
    {"discard_piece", QT_TRANSLATE_NOOP("ActionWords", "%1 discarded")},
    {"set_stages", QT_TRANSLATE_NOOP("ActionWords", "plan of %1")},
    {"start_stage", QT_TRANSLATE_NOOP("ActionWords", "stage of %1 started")},
    {"end_stage", QT_TRANSLATE_NOOP("ActionWords", "stage of %1 ended")},
    {"tick_task", QT_TRANSLATE_NOOP("ActionWords", "task ticked for %1")},
    {"untick_task", QT_TRANSLATE_NOOP("ActionWords", "task unticked for %1")},
    {"add_note", QT_TRANSLATE_NOOP("ActionWords", "note on %1")},
    {"accept_finding", QT_TRANSLATE_NOOP("ActionWords", "caution accepted for %1")},
    {"sign_decision", QT_TRANSLATE_NOOP("ActionWords", "decision on %1")},
    {"record_outcome", QT_TRANSLATE_NOOP("ActionWords", "outcome of %1")},
    {"add_pack", QT_TRANSLATE_NOOP("ActionWords", "new pack %1")},
    {"change_pack", QT_TRANSLATE_NOOP("ActionWords", "pack %1 changed")},
    {"move_pack", QT_TRANSLATE_NOOP("ActionWords", "taken from pack %1")},
    {"set_preference", QT_TRANSLATE_NOOP("ActionWords", "setting %1")},
};

} // namespace

QString action_words(const std::string& verb, const QString& subject) {
    const auto* row = std::find_if(std::begin(rows), std::end(rows),
                                   [&](const Row& r) { return verb == r.verb; });
    if (row == std::end(rows)) {
        return QCoreApplication::translate("ActionWords", "a change of %1").arg(subject).trimmed();
    }
    return QCoreApplication::translate("ActionWords", row->words)
        .arg(subject.isEmpty() ? QCoreApplication::translate("ActionWords", "(no code)") : subject);
}

} // namespace ui::text
