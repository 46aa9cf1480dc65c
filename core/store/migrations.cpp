#include "core/store/migrations.h"

#include "core/base/embedded.h"
#include "core/store/fault.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <charconv>
#include <map>
#include <span>

namespace core::store {

std::span<const base::EmbeddedFile> migration_files();

const std::vector<Migration>& migrations() {
    static const std::vector<Migration> all = [] {
        std::vector<Migration> steps;
        for (const base::EmbeddedFile& file : migration_files()) {
            Migration& step = steps.emplace_back();
            std::from_chars(file.name.data(), file.name.data() + file.name.size(), step.number);
            step.name = std::string(file.name.substr(0, file.name.rfind('.')));
            step.sql = file.text;
        }
        return steps;
    }();
    return all;
}

int newest_schema() {
    return migrations().back().number;
}

int schema_of(Connection& book) {
    return static_cast<int>(book.integer("PRAGMA user_version"));
}

namespace {

void set_about(Connection& book, const std::string& program_version, std::int64_t at_s) {
    const auto statement = book.prepared(
        "INSERT INTO about (id, made_by, written_by, made_at_s) VALUES (1, ?1, ?1, ?2)"
        " ON CONFLICT (id) DO UPDATE SET written_by = ?1");
    statement->bind(1, program_version);
    statement->bind(2, at_s);
    statement->exec();
}

using Objects = std::map<std::string, std::string>;

/// Every object of the schema by kind and name, with the text that made it.
Objects objects_of(Connection& book) {
    const auto statement =
        book.prepared("SELECT type || ' ' || name, coalesce(sql, '') FROM sqlite_schema"
                      " WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\'");
    Objects objects;
    while (statement->executeStep()) {
        objects.emplace(statement->getColumn(0).getString(), statement->getColumn(1).getString());
    }
    return objects;
}

} // namespace

void migrate(Connection& book, const std::vector<Migration>& steps,
             const std::string& program_version, std::int64_t at_s) {
    for (const Migration& step : steps) {
        if (step.number <= schema_of(book)) {
            continue;
        }
        Transaction transaction(book, Transaction::Kind::immediate);
        book.run(std::string(step.sql));
        set_about(book, program_version, at_s);
        // The number is our own constant; a pragma takes no bound parameter.
        book.run("PRAGMA user_version=" + std::to_string(step.number));
        transaction.commit();
    }
}

std::string schema_difference(Connection& book) {
    const int number = schema_of(book);
    Connection model(":memory:", Access::create_or_write);
    std::vector<Migration> steps;
    for (const Migration& step : migrations()) {
        if (step.number <= number) {
            steps.push_back(step);
        }
    }
    migrate(model, steps, "", 0);
    const Objects expected = objects_of(model);
    const Objects found = objects_of(book);
    for (const auto& [name, sql] : expected) {
        const auto other = found.find(name);
        if (other == found.end()) {
            return "missing " + name;
        }
        if (other->second != sql) {
            return "changed " + name;
        }
    }
    for (const auto& [name, sql] : found) {
        if (expected.find(name) == expected.end()) {
            return "unknown " + name;
        }
    }
    return {};
}

} // namespace core::store
