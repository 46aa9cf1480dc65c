#include "core/chamber/text_encoding.h"

#include <gtest/gtest.h>

namespace {

using namespace core::chamber;

std::string decoded(Encoding encoding, std::string_view bytes, std::size_t chunk) {
    Transcoder transcoder(encoding);
    std::string out;
    for (std::size_t at = 0; at < bytes.size(); at += chunk) {
        transcoder.feed(bytes.substr(at, chunk), out);
    }
    return out;
}

// The Unicode Standard 15.0, table 3-4: U+004D, U+0430, U+4E8C, U+10302 in the three forms.
TEST(Transcoder, ReadsTheStandardsExamplesInChunksOfAnySize) {
    const std::string utf8 = "\x4D\xD0\xB0\xE4\xBA\x8C\xF0\x90\x8C\x82";
    const std::string be("\x00\x4D\x04\x30\x4E\x8C\xD8\x00\xDF\x02", 10);
    const std::string le("\x4D\x00\x30\x04\x8C\x4E\x00\xD8\x02\xDF", 10);
    for (std::size_t chunk = 1; chunk <= 11; ++chunk) {
        EXPECT_EQ(decoded(Encoding::utf16_be, be, chunk), utf8);
        EXPECT_EQ(decoded(Encoding::utf16_le, le, chunk), utf8);
        EXPECT_EQ(decoded(Encoding::utf16_le, "\xFF\xFE" + le, chunk), utf8);
        EXPECT_EQ(decoded(Encoding::utf8, "\xEF\xBB\xBF" + utf8, chunk), utf8);
        EXPECT_EQ(decoded(Encoding::utf8, utf8, chunk), utf8);
    }
}

TEST(Transcoder, ASurrogateAloneBecomesTheReplacementCharacter) {
    EXPECT_EQ(decoded(Encoding::utf16_be, std::string("\xD8\x00\x00\x41", 4), 1),
              "\xEF\xBF\xBD\x41");
    EXPECT_EQ(decoded(Encoding::utf16_be, std::string("\xDC\x00\x00\x41", 4), 2),
              "\xEF\xBF\xBD\x41");
}

TEST(Transcoder, LatinOneIsItsOwnCodePoints) {
    EXPECT_EQ(decoded(Encoding::latin1, "12 \xB0\x43", 1), "12 \xC2\xB0\x43");
}

TEST(GuessEncoding, KnowsTextFromOtherFiles) {
    EXPECT_EQ(guess_encoding("time,temp\n")->encoding, Encoding::utf8);
    EXPECT_EQ(guess_encoding("T \xB0\x43")->encoding, Encoding::latin1);
    EXPECT_TRUE(guess_encoding("\xEF\xBB\xBFx")->marked);
    EXPECT_FALSE(guess_encoding(std::string("PK\x03\x04\0\0\0\0\0\0", 10)).has_value());
    EXPECT_FALSE(guess_encoding("\x01\x02\x03").has_value());
    // A character cut by the sample's end does not make UTF-8 Latin-1.
    EXPECT_EQ(guess_encoding("Temp\xC3\xA9rature \xC2")->encoding, Encoding::utf8);
}

} // namespace
