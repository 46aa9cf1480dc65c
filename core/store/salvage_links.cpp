#include "core/store/salvage_links.h"

#include "core/store/climate.h"
#include "core/store/codec.h"

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace core::store {

namespace {

/// One row that names another which was lost.
struct Orphan {
    std::string table;
    std::int64_t row = 0;
    std::string parent;
    std::string column;
    std::int64_t parent_row = 0;
};

std::vector<Orphan> orphans_of(Connection& book) {
    std::vector<Orphan> orphans;
    {
        const auto statement = book.prepared(
            "SELECT bad.\"table\", bad.rowid, bad.parent, list.\"from\" FROM"
            " pragma_foreign_key_check AS bad, pragma_foreign_key_list(bad.\"table\") AS list"
            " WHERE list.id = bad.fkid");
        while (statement->executeStep()) {
            orphans.push_back({.table = statement->getColumn(0).getString(),
                               .row = statement->getColumn(1).getInt64(),
                               .parent = statement->getColumn(2).getString(),
                               .column = statement->getColumn(3).getString()});
        }
    }
    for (Orphan& orphan : orphans) {
        const auto statement = book.prepared("SELECT \"" + orphan.column + "\" FROM \"" +
                                             orphan.table + "\" WHERE rowid = ?");
        statement->bind(1, orphan.row);
        orphan.parent_row = statement->executeStep() ? statement->getColumn(0).getInt64() : 0;
    }
    return orphans;
}

/// How a stand-in for a lost owner looks, by table. `?1` is its number.
const char* stand_in_sql(const std::string& table) {
    static const std::vector<std::pair<std::string, const char*>> all{
        {"batch",
         "INSERT INTO batch VALUES (?1, 'recovered-' || ?1, 'recovered', '', '', '', '', NULL, 0,"
         " 'in_progress', NULL, NULL, NULL, 0, '')"},
        // Its batch is a stand-in too; the next round of checks makes it.
        {"piece",
         "INSERT INTO piece VALUES (?1, 1000000000, 'R' || ?1, 'recovered', 'slab', NULL, NULL,"
         " 'none', NULL, NULL, NULL, NULL, '', 0, 1, 'finished')"},
        {"person", "INSERT INTO person VALUES (?1, 'recovered ' || ?1, '', 0)"},
        {"chamber",
         "INSERT INTO chamber VALUES (?1, 'recovered ' || ?1, 'other', NULL, NULL, NULL, NULL,"
         " NULL, 0, '')"},
        {"instrument",
         "INSERT INTO instrument VALUES (?1, 'other', 'recovered ' || ?1, NULL, NULL, NULL, 0)"},
        {"recipe", "INSERT INTO recipe VALUES (?1, 'recovered ' || ?1, 1)"},
        {"ingredient", "INSERT INTO ingredient VALUES (?1, '', 'recovered ' || ?1, '')"},
        {"sensor",
         "INSERT INTO sensor VALUES (?1, 1000000000, 'recovered', '', NULL, NULL, NULL, '', 0)"},
        {"pack",
         "INSERT INTO pack VALUES (?1, 1000000000, 'recovered-' || ?1, 'whole', 0, 0, 0, NULL,"
         " NULL, '', '', 1)"},
    };
    for (const auto& [name, sql] : all) {
        if (name == table) {
            return sql;
        }
    }
    return nullptr;
}

} // namespace

void mend_links(Connection& book) {
    static constexpr int rounds = 6; // the longest chain of owners is piece -> batch -> ...
    for (int round = 0; round < rounds; ++round) {
        const auto orphans = orphans_of(book);
        if (orphans.empty()) {
            break;
        }
        for (const Orphan& orphan : orphans) {
            if (const char* sql = stand_in_sql(orphan.parent); sql != nullptr) {
                const auto statement = book.prepared(std::string(sql).replace(6, 0, " OR IGNORE"));
                statement->bind(1, orphan.parent_row);
                statement->exec();
                continue;
            }
            const auto let_go = book.prepared("UPDATE OR IGNORE \"" + orphan.table + "\" SET \"" +
                                              orphan.column + "\" = NULL WHERE rowid = ?");
            let_go->bind(1, orphan.row);
            let_go->exec();
        }
    }
    // The log: an action whose step was lost was still done, at a time nobody knows any more.
    book.run(
        "INSERT INTO step (id, action_id, kind, at_s, who_person_id, why) SELECT id, id,"
        " 'performed', 0, NULL, 'recovered' FROM action WHERE id NOT IN (SELECT id FROM step)");
    // What is left are ties of WITHOUT ROWID tables to rows that are gone.
    book.run("DELETE FROM event_piece WHERE event_id NOT IN (SELECT id FROM event)"
             " OR piece_id NOT IN (SELECT id FROM piece)");
    book.run("DELETE FROM action_entry WHERE action_id NOT IN (SELECT id FROM action)");
}

void mend_climate(Connection& book) {
    // Readings whose import is lost keep a stand-in for it, as complete as they are.
    book.run("INSERT OR IGNORE INTO climate_import (id, sensor_id, made_at_s, file_name,"
             " dialect_json, added, known, conflicts, rejected, first_s, last_s, state)"
             " SELECT import_id, sensor_id, 0, 'recovered', '{}', count(*), 0, 0, 0, min(at_s),"
             " max(at_s), 'complete' FROM climate_reading WHERE import_id NOT IN"
             " (SELECT id FROM climate_import) GROUP BY import_id");
    book.run("DELETE FROM climate_reading WHERE NOT EXISTS (SELECT 1 FROM climate_import WHERE"
             " id = import_id AND climate_import.sensor_id = climate_reading.sensor_id"
             " AND state <> 'undone')");
    rebuild_climate_roll_ups(book);
}

} // namespace core::store
