// Changesets by hand, byte for byte as the session extension's format comment lays them out
// (sqlite3session.c, SQLite 3.40).
#include "core/store/changeset_shape.h"

#include <gtest/gtest.h>

namespace {

using core::store::Changeset;
using core::store::is_whole;

// Table "t", two columns, the first is the key; one row (7, "ab") inserted.
const Changeset insert = {'T', 2, 1, 0, 't', 0, 18, 0, 1, 0, 0, 0, 0, 0, 0, 0, 7, 3, 2, 'a', 'b'};
// The same row's second column set to NULL.
const Changeset update = {'T', 2, 1, 0, 't', 0, 23, 0,   1,   0, 0, 0,
                          0,   0, 0, 0, 7,   3, 2,  'a', 'b', 0, 5};

TEST(ChangesetShape, WholeOnesAndNone) {
    EXPECT_TRUE(is_whole({}));
    EXPECT_TRUE(is_whole(insert));
    EXPECT_TRUE(is_whole(update));
}

TEST(ChangesetShape, LengthsOfTwoBytesAreSevenBitsEach) {
    Changeset long_text(insert.begin(), insert.begin() + 18);
    long_text.push_back(0x81); // 200 = 1 * 128 + 72
    long_text.push_back(72);
    long_text.insert(long_text.end(), 200, 'x');
    EXPECT_TRUE(is_whole(long_text));
    long_text.pop_back();
    EXPECT_FALSE(is_whole(long_text));
}

TEST(ChangesetShape, EveryCutIsSeen) {
    for (const Changeset& whole : {insert, update}) {
        for (std::size_t length = 1; length < whole.size(); ++length) {
            const auto end = whole.begin() + static_cast<std::ptrdiff_t>(length);
            // A bare table head is whole: it holds no change.
            EXPECT_EQ(is_whole(Changeset(whole.begin(), end)), length == 6) << length;
        }
    }
}

TEST(ChangesetShape, WrongMarksKindsLengthsAndMissingKeys) {
    const auto with = [](Changeset changes, std::size_t at, unsigned char byte) {
        changes.at(at) = byte;
        return is_whole(changes);
    };
    EXPECT_FALSE(with(insert, 0, 'X')) << "no table named";
    EXPECT_FALSE(with(insert, 1, 0)) << "no columns";
    EXPECT_FALSE(with(insert, 1, 0xff)) << "more columns than bytes";
    EXPECT_FALSE(with(insert, 6, 1)) << "no such operation";
    EXPECT_FALSE(with(insert, 7, 2)) << "indirect is 0 or 1";
    EXPECT_FALSE(with(insert, 8, 0)) << "an insert without its key";
    EXPECT_FALSE(with(insert, 17, 6)) << "no such kind";
    EXPECT_FALSE(with(insert, 18, 3)) << "text longer than the rest";
    EXPECT_FALSE(with(update, 8, 0)) << "an update without its key";
}

} // namespace
