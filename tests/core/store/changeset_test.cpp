// A changeset read back from a book may have been scribbled over: it is refused, never trusted.
#include "core/store/changeset.h"

#include "core/actions/perform.h"
#include "core/store/fault.h"
#include "core/store/store.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace core::store;
using namespace saltloft::testing;
using core::model::EntryFate;

namespace {

class ChangesetTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto opened =
            Store::open(folder.file("book.saltloft"), {.now = at_s(test_now_s), .create = true});
        ASSERT_TRUE(opened.has_value()) << opened.error().detail;
        store = std::move(*opened);
        ASSERT_TRUE(core::actions::perform(*store, start_batch("B01"), context()).has_value());
    }
    /// The changes that `sql` makes, taken back again.
    Changeset changes_of(const char* sql) {
        Connection& book = store->connection();
        Transaction transaction(book, Transaction::Kind::immediate);
        ChangeRecorder recorder(book);
        book.run(sql);
        return recorder.taken();
    }
    /// Reads and applies; neither may do more than fault. True when both went through.
    bool survives(const Changeset& changes) {
        const auto result = guarded([&] {
            Connection& book = store->connection();
            (void)rows_of(book, changes);
            Transaction transaction(book, Transaction::Kind::immediate);
            apply(book, changes, Direction::forward);
        });
        return result.has_value();
    }
    TempFolder folder;
    std::unique_ptr<Store> store;
};

} // namespace

TEST_F(ChangesetTest, NamesRowsFieldsAndFates) {
    const Changeset changes = changes_of(
        "UPDATE piece SET position = 'rail' WHERE id = 1; DELETE FROM weighing WHERE id = 2;"
        "INSERT INTO person VALUES (7, 'Ada (invented)', 'A', 1)");
    const auto rows = rows_of(store->connection(), changes);
    ASSERT_EQ(rows.size(), 3U);
    for (const RowChange& row : rows) {
        if (row.table == "piece") {
            EXPECT_EQ(row.fate, EntryFate::changed);
            ASSERT_EQ(row.fields.size(), 1U);
            EXPECT_EQ(row.fields.front().field, "position");
            EXPECT_EQ(row.fields.front().before, "");
            EXPECT_EQ(row.fields.front().after, "rail");
        } else if (row.table == "weighing") {
            EXPECT_EQ(row.fate, EntryFate::removed);
            EXPECT_EQ(row.integer("on_scale_mg"), 1200000);
        } else {
            EXPECT_EQ(row.table, "person");
            EXPECT_EQ(row.key, 7);
        }
    }
    EXPECT_TRUE(survives(changes));
}

TEST_F(ChangesetTest, CutOrScribbledItIsRefusedOrHarmless) {
    const Changeset whole = changes_of("UPDATE piece SET position = 'rail' WHERE id = 1;"
                                       "DELETE FROM weighing WHERE id = 2");
    ASSERT_TRUE(survives(whole));
    for (std::size_t length = 1; length < whole.size(); ++length) {
        const auto end = whole.begin() + static_cast<std::ptrdiff_t>(length);
        (void)survives(Changeset(whole.begin(), end));
    }
    int refused = 0;
    for (std::size_t at = 0; at < whole.size(); ++at) {
        for (const unsigned char other :
             std::initializer_list<unsigned char>{0x00, 0x01, 0x7f, 0xff}) {
            Changeset scribbled = whole;
            scribbled[at] = other;
            refused += survives(scribbled) ? 0 : 1;
        }
    }
    EXPECT_GT(refused, 20);
    // The update's key made "not in the changeset": what a fuzzer found.
    Changeset keyless = whole;
    const auto update = std::find(keyless.begin(), keyless.end(), 23); // SQLITE_UPDATE
    ASSERT_NE(update, keyless.end());
    *(update + 2) = 0;
    EXPECT_FALSE(survives(keyless));
}
