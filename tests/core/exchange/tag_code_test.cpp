#include "core/exchange/tag_code.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>

namespace {

using namespace core::exchange;
using core::base::ErrorCode;

// ISO/IEC 7064 MOD 37,36 published example (GRid standard, IFPI, appendix on the check character;
// example from memory, and the computation agrees): the identifier A1-2425G-ABC1234002 has the
// check character M.
TEST(TagCode, CheckCharacterOfAPublishedExample) {
    EXPECT_EQ(check_character("A1-2425G-ABC1234002"), 'M');
    EXPECT_EQ(check_character("a1 2425g abc1234002"), 'M');
}

TEST(TagCode, ReadsBackWhatItWrites) {
    for (const TagCode& code :
         {TagCode{"K7", "B07", "LOFT1"}, TagCode{"K7", "", ""}, TagCode{"a/b", "50 %", "Süd\n"}}) {
        const auto back = read_tag(tag_text(code));
        ASSERT_TRUE(back) << tag_text(code);
        EXPECT_EQ(*back, code);
    }
    EXPECT_EQ(tag_text({"K7", "B07", ""}).substr(0, 8), "K7/B07//");
}

RC_GTEST_PROP(TagCode, AnyTextSurvives, (std::string batch, std::string book)) {
    const TagCode code{"K7", std::move(batch), std::move(book)};
    const auto back = read_tag(tag_text(code));
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == code);
}

// What the check is for: one character misread, or two neighbours swapped, is noticed.
TEST(TagCode, NoticesMisreadAndSwappedCharacters) {
    const std::string good = tag_text({"K7", "B07", "LOFT1"});
    for (std::size_t i = 0; i < good.size(); ++i) {
        for (const char c : std::string("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ")) {
            std::string bad = good;
            bad[i] = c;
            EXPECT_EQ(read_tag(bad).has_value(), bad == good) << bad;
        }
    }
    std::string swapped = good;
    std::swap(swapped[3], swapped[5]);
    EXPECT_FALSE(read_tag(swapped)) << swapped;
}

TEST(TagCode, RefusesOtherCodes) {
    for (const auto* other : {"", "/", "K7", "K7/B07/L", "///A", "K7/B07/L/AB", "K7/B07/L/A/B",
                              "4006381333931", "K7/%Z1//C", "K7/%4"}) {
        EXPECT_EQ(read_tag(other).error().code, ErrorCode::bad_format) << other;
    }
    EXPECT_EQ(read_tag("K7/B07//0").error().code, ErrorCode::conflict);
}

} // namespace
