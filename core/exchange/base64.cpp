#include "core/exchange/base64.h"

#include <cstdint>

namespace core::exchange {
namespace {

constexpr std::string_view alphabet =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

} // namespace

std::string to_base64(const std::vector<unsigned char>& bytes) {
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const auto at = [&](std::size_t k) {
            return i + k < bytes.size() ? std::uint32_t{bytes[i + k]} : 0U;
        };
        const std::uint32_t group = (at(0) << 16U) | (at(1) << 8U) | at(2);
        for (unsigned k = 0; k < 4; ++k) {
            const bool padding = i + k > bytes.size();
            out.push_back(padding ? '=' : alphabet[(group >> (18U - 6U * k)) & 0x3FU]);
        }
    }
    return out;
}

std::optional<std::vector<unsigned char>> from_base64(std::string_view text) {
    if (text.size() % 4 != 0) {
        return {};
    }
    std::size_t padding = 0;
    while (padding < 2 && padding < text.size() && text[text.size() - 1 - padding] == '=') {
        ++padding;
    }
    std::vector<unsigned char> out;
    out.reserve(text.size() / 4 * 3);
    for (std::size_t i = 0; i < text.size(); i += 4) {
        std::uint32_t group = 0;
        for (std::size_t k = 0; k < 4; ++k) {
            const bool padded = i + k >= text.size() - padding;
            const std::size_t digit = padded ? 0 : alphabet.find(text[i + k]);
            if (digit == std::string_view::npos) {
                return {};
            }
            group = (group << 6U) | static_cast<std::uint32_t>(digit);
        }
        const std::size_t kept = i + 4 == text.size() ? 3 - padding : 3;
        for (std::size_t k = 0; k < kept; ++k) {
            out.push_back(static_cast<unsigned char>((group >> (16U - 8U * k)) & 0xFFU));
        }
        if (kept < 3 && (group & ((1U << (8U * (3U - kept))) - 1U)) != 0) {
            return {}; // bits beyond the last byte: two texts would mean the same bytes
        }
    }
    return out;
}

} // namespace core::exchange
