#include "core/exchange/base64.h"

#include <gtest/gtest.h>

#include <utility>

namespace {

using namespace core::exchange;

// RFC 4648, section 10: test vectors.
TEST(Base64, RfcVectors) {
    const std::pair<std::string, std::string> vectors[] = {{"", ""},
                                                           {"f", "Zg=="},
                                                           {"fo", "Zm8="},
                                                           {"foo", "Zm9v"},
                                                           {"foob", "Zm9vYg=="},
                                                           {"fooba", "Zm9vYmE="},
                                                           {"foobar", "Zm9vYmFy"}};
    for (const auto& [plain, coded] : vectors) {
        const std::vector<unsigned char> bytes(plain.begin(), plain.end());
        EXPECT_EQ(to_base64(bytes), coded);
        EXPECT_EQ(from_base64(coded), bytes);
    }
}

TEST(Base64, EveryByteComesBack) {
    std::vector<unsigned char> bytes;
    for (int i = 0; i < 256; ++i) {
        bytes.push_back(static_cast<unsigned char>(i));
        EXPECT_EQ(from_base64(to_base64(bytes)), bytes);
    }
}

TEST(Base64, RefusesOtherText) {
    for (const auto* bad :
         {"Zg", "Zg=", "Z===", "====", "Zh==", "Zm9=", "Zm9v\n", "Zm 9", "=m9v", "Zg==Zg=="}) {
        EXPECT_FALSE(from_base64(bad)) << bad;
    }
}

} // namespace
