// The migration matrix: fresh, twice, from each old version, newer, failing halfway at each step.
#include "core/store/migrations.h"

#include "core/store/fault.h"
#include "core/store/store.h"
#include "tests/support/book_dump.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <cstdint>
#include <filesystem>
#include <gtest/gtest.h>
#include <map>

using namespace core::store;
using saltloft::testing::at_s;
using saltloft::testing::dump;
using saltloft::testing::DumpOf;
using saltloft::testing::query;
using saltloft::testing::run_sql;
using saltloft::testing::TempFolder;

namespace fs = std::filesystem;

namespace {

constexpr const char* version = "test";

std::uint64_t fnv1a(std::string_view text) {
    std::uint64_t hash = 14695981039346656037ULL;
    for (const char c : text) {
        hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    }
    return hash;
}

std::vector<Migration> up_to(int number) {
    std::vector<Migration> steps;
    for (const Migration& step : migrations()) {
        if (step.number <= number) {
            steps.push_back(step);
        }
    }
    return steps;
}

/// The statements of a migration; ours have no triggers, so a semicolon at a line's end ends one.
std::vector<std::string> statements_of(std::string_view sql) {
    std::vector<std::string> statements;
    std::string text(sql);
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t end = text.find(";\n", from);
        if (end == std::string::npos) {
            break;
        }
        statements.push_back(text.substr(from, end - from + 2));
        from = end + 2;
    }
    return statements;
}

std::string schema_text(const std::string& path) {
    return query(path, "SELECT group_concat(name || coalesce(sql, ''), char(10)) FROM"
                       " (SELECT * FROM sqlite_schema ORDER BY name)");
}

core::base::Result<std::unique_ptr<Store>> open(const std::string& path) {
    return Store::open(path, {.now = at_s(saltloft::testing::test_now_s)});
}

} // namespace

TEST(Migrations, AreNumberedWithoutGapsAndFrozen) {
    // A released migration never changes: books out there were made by it. If this fails, put the
    // file back and write a new migration. Add a line here with each new one.
    static const std::map<int, std::uint64_t> frozen{
        {1, 228984956764708395ULL},
        {2, 2238844453361014132ULL},
    };
    int expected = 1;
    for (const Migration& step : migrations()) {
        EXPECT_EQ(step.number, expected++) << step.name;
        const auto known = frozen.find(step.number);
        ASSERT_NE(known, frozen.end())
            << step.name << ": add its hash " << fnv1a(step.sql) << "ULL to this test";
        EXPECT_EQ(fnv1a(step.sql), known->second) << step.name;
    }
}

TEST(Migrations, EveryTableIsStrictAndEveryLinkHasAnIndex) {
    const TempFolder folder;
    const std::string path = folder.file("book");
    {
        Connection book(path, Access::create_or_write);
        migrate(book, migrations(), version, 0);
    }
    EXPECT_EQ(query(path, "SELECT group_concat(name) FROM pragma_table_list WHERE schema = 'main'"
                          " AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite%'"),
              "");
    // A foreign key without an index makes every delete of the owner read the whole table.
    EXPECT_EQ(
        query(path,
              "SELECT group_concat(t.name || '.' || k.\"from\") FROM pragma_table_list AS t,"
              " pragma_foreign_key_list(t.name) AS k WHERE t.schema = 'main' AND t.type = 'table'"
              " AND NOT EXISTS (SELECT 1 FROM pragma_index_list(t.name) AS i,"
              " pragma_index_info(i.name) AS c WHERE c.seqno = 0 AND c.name = k.\"from\")"
              " AND NOT EXISTS (SELECT 1 FROM pragma_table_info(t.name) AS p WHERE p.pk = 1"
              " AND p.name = k.\"from\")"
              " AND t.name || '.' || k.\"from\" <> 'action_entry.action_id'"),
        ""); // the log is never deleted from
}

TEST(Migrations, FreshThenTwiceChangesNothing) {
    const TempFolder folder;
    const std::string path = folder.file("book");
    Connection book(path, Access::create_or_write);
    migrate(book, migrations(), version, 17);
    EXPECT_EQ(schema_of(book), newest_schema());
    EXPECT_EQ(schema_difference(book), "");
    const std::string once = schema_text(path);
    const auto rows = dump(path, DumpOf::all);
    migrate(book, migrations(), version, 99);
    EXPECT_EQ(schema_text(path), once);
    EXPECT_EQ(dump(path, DumpOf::all), rows);
    EXPECT_EQ(query(path, "PRAGMA application_id"), std::to_string(application_id));
}

TEST(Migrations, ABookOfEachReleasedVersionComesUpToDateWithItsContent) {
    const fs::path books = fs::path(SALTLOFT_SOURCE_DIR) / "tests/data/books";
    int seen = 0;
    for (const auto& entry : fs::directory_iterator(books)) {
        const TempFolder folder;
        const std::string path = folder.file(entry.path().filename().string());
        fs::copy_file(entry.path(), path);
        const int from = std::stoi(query(path, "PRAGMA user_version"));
        const auto weighings = query(path, "SELECT count(*) || ' ' || sum(on_scale_mg)"
                                           " FROM weighing");
        EXPECT_NE(weighings.substr(0, 2), "0 ");
        {
            const auto store = open(path);
            ASSERT_TRUE(store.has_value()) << entry.path() << ": " << store.error().detail;
            EXPECT_FALSE((*store)->is_read_only());
            if (from < newest_schema()) {
                ASSERT_EQ((*store)->opening_findings().size(), 1U);
                EXPECT_EQ((*store)->opening_findings().at(0).code, "book_migrated");
                const auto kept =
                    std::get<std::string>((*store)->opening_findings().at(0).values.at("backup"));
                EXPECT_EQ(query(kept, "PRAGMA user_version"), std::to_string(from))
                    << "the copy made before is of the old version";
            }
        }
        EXPECT_EQ(query(path, "PRAGMA user_version"), std::to_string(newest_schema()));
        EXPECT_EQ(query(path, "SELECT count(*) || ' ' || sum(on_scale_mg) FROM weighing"),
                  weighings);
        EXPECT_EQ(query(path, "PRAGMA integrity_check"), "ok");
        EXPECT_EQ(query(path, "SELECT written_by FROM about"), SALTLOFT_VERSION);
        ++seen;
    }
    EXPECT_GE(seen, 1);
}

TEST(Migrations, ANewerBookIsRefusedWithTheVersionThatWroteIt) {
    const TempFolder folder;
    const std::string path = folder.file("book.saltloft");
    ASSERT_TRUE(Store::open(path, {.now = at_s(0), .create = true}).has_value());
    run_sql(path, "UPDATE about SET written_by = '9.4.1'; PRAGMA user_version = 999");
    const auto rows = dump(path, DumpOf::all);
    const auto refused = open(path);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, core::base::ErrorCode::newer_book);
    EXPECT_EQ(refused.error().detail, "9.4.1");
    EXPECT_EQ(dump(path, DumpOf::all), rows) << "and it is not touched";
    // One so new that even "about" is elsewhere.
    run_sql(path, "ALTER TABLE about RENAME TO somewhere_else");
    EXPECT_EQ(open(path).error().code, core::base::ErrorCode::newer_book);
}

TEST(Migrations, AStepThatFailsHalfwayLeavesTheVersionBefore) {
    int broken = 0;
    for (const Migration& step : migrations()) {
        const auto statements = statements_of(step.sql);
        ASSERT_FALSE(statements.empty());
        for (std::size_t cut = 0; cut <= statements.size(); ++cut) {
            const TempFolder folder;
            const std::string path = folder.file("book");
            Connection book(path, Access::create_or_write);
            migrate(book, up_to(step.number - 1), version, 5);
            const std::string schema = schema_text(path);
            const auto rows = dump(path, DumpOf::all);
            std::string half;
            for (std::size_t i = 0; i < cut; ++i) {
                half += statements[i];
            }
            half += "INSERT INTO no_such_table VALUES (1);\n";
            const std::vector<Migration> steps{{step.number, step.name, half}};
            EXPECT_ANY_THROW(migrate(book, steps, version, 6));
            EXPECT_EQ(schema_of(book), step.number - 1);
            EXPECT_EQ(schema_text(path), schema);
            EXPECT_EQ(dump(path, DumpOf::all), rows);
            // And the real one still goes through afterwards.
            migrate(book, up_to(step.number), version, 7);
            EXPECT_EQ(schema_of(book), step.number);
            ++broken;
        }
    }
    std::printf("migrations broken halfway: %d points\n", broken);
}
