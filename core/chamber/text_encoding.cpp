#include "core/chamber/text_encoding.h"

#include <algorithm>

namespace core::chamber {
namespace {

constexpr std::string_view utf8_mark = "\xEF\xBB\xBF";

unsigned char byte_at(std::string_view text, std::size_t i) {
    return static_cast<unsigned char>(text[i]);
}

/// Bytes after the first in a UTF-8 sequence, or none when `lead` cannot start one.
std::optional<std::size_t> tail_length(unsigned char lead) {
    if (lead < 0x80) {
        return 0;
    }
    if (lead >= 0xC2 && lead <= 0xDF) {
        return 1;
    }
    if ((lead & 0xF0U) == 0xE0U) {
        return 2;
    }
    return lead >= 0xF0 && lead <= 0xF4 ? std::optional<std::size_t>(3) : std::nullopt;
}

/// A sequence cut off by the end of the sample is not held against it.
bool is_utf8(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const auto tail = tail_length(byte_at(text, i));
        if (!tail) {
            return false;
        }
        for (std::size_t k = 1; k <= *tail && i + k < text.size(); ++k) {
            if ((byte_at(text, i + k) & 0xC0U) != 0x80U) {
                return false;
            }
        }
        i += *tail + 1;
    }
    return true;
}

void put_code_point(char32_t c, std::string& out) {
    const auto tail = [&](int shift) {
        out.push_back(static_cast<char>(0x80U | ((c >> shift) & 0x3FU)));
    };
    if (c < 0x80) {
        out.push_back(static_cast<char>(c));
    } else if (c < 0x800) {
        out.push_back(static_cast<char>(0xC0U | (c >> 6U)));
        tail(0);
    } else if (c < 0x10000) {
        out.push_back(static_cast<char>(0xE0U | (c >> 12U)));
        tail(6);
        tail(0);
    } else {
        out.push_back(static_cast<char>(0xF0U | (c >> 18U)));
        tail(12);
        tail(6);
        tail(0);
    }
}

constexpr char32_t replacement = 0xFFFD;

/// Zero bytes at even and at odd places.
std::pair<std::size_t, std::size_t> zeros(std::string_view head) {
    std::size_t even = 0;
    std::size_t odd = 0;
    for (std::size_t i = 0; i < head.size(); ++i) {
        if (head[i] == '\0') {
            ++(i % 2 == 0 ? even : odd);
        }
    }
    return {even, odd};
}

} // namespace

std::optional<EncodingGuess> guess_encoding(std::string_view head) {
    if (head.starts_with(utf8_mark)) {
        return EncodingGuess{Encoding::utf8, true, 1.0};
    }
    if (head.starts_with("\xFF\xFE")) {
        return EncodingGuess{Encoding::utf16_le, true, 1.0};
    }
    if (head.starts_with("\xFE\xFF")) {
        return EncodingGuess{Encoding::utf16_be, true, 1.0};
    }
    const auto [even, odd] = zeros(head);
    if (even + odd > 0) {
        // A log in UTF-16 is nearly all ASCII: nearly every unit has one zero byte, on one side.
        const std::size_t units = head.size() / 2;
        if (odd * 10 >= units * 8 && even * 20 <= units) {
            return EncodingGuess{Encoding::utf16_le, false, 0.95};
        }
        if (even * 10 >= units * 8 && odd * 20 <= units) {
            return EncodingGuess{Encoding::utf16_be, false, 0.95};
        }
        return std::nullopt;
    }
    const auto controls = std::count_if(head.begin(), head.end(), [](char c) {
        const auto b = static_cast<unsigned char>(c);
        return (b < 0x20 && b != '\t' && b != '\n' && b != '\r' && b != '\f') || b == 0x7F;
    });
    if (static_cast<std::size_t>(controls) * 50 >= std::max<std::size_t>(head.size(), 50)) {
        return std::nullopt;
    }
    if (is_utf8(head)) {
        return EncodingGuess{Encoding::utf8, false, 0.99};
    }
    return EncodingGuess{Encoding::latin1, false, 0.9};
}

void Transcoder::feed(std::string_view bytes, std::string& out) {
    if (encoding_ == Encoding::utf16_le || encoding_ == Encoding::utf16_be) {
        feed_utf16(bytes, out);
        return;
    }
    if (encoding_ == Encoding::latin1) {
        for (const char c : bytes) {
            put_code_point(static_cast<unsigned char>(c), out);
        }
        return;
    }
    if (!at_start_) {
        out.append(bytes);
        return;
    }
    pending_.append(bytes);
    if (pending_.size() < utf8_mark.size() && utf8_mark.starts_with(pending_)) {
        return; // may still become a mark
    }
    at_start_ = false;
    const std::string_view text = pending_;
    out.append(text.starts_with(utf8_mark) ? text.substr(utf8_mark.size()) : text);
    pending_.clear();
}

void Transcoder::feed_utf16(std::string_view bytes, std::string& out) {
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        if (!half_unit_) {
            half_unit_ = byte;
            continue;
        }
        const unsigned low = encoding_ == Encoding::utf16_le ? *half_unit_ : byte;
        const unsigned high = encoding_ == Encoding::utf16_le ? byte : *half_unit_;
        half_unit_.reset();
        const auto unit = static_cast<char16_t>(high << 8U | low);
        if (!(at_start_ && unit == 0xFEFF)) {
            put_unit(unit, out);
        }
        at_start_ = false;
    }
}

void Transcoder::put_unit(char16_t unit, std::string& out) {
    const bool is_high = unit >= 0xD800 && unit <= 0xDBFF;
    const bool is_low = unit >= 0xDC00 && unit <= 0xDFFF;
    if (high_surrogate_) {
        const char32_t high = *high_surrogate_;
        high_surrogate_.reset();
        if (is_low) {
            put_code_point(0x10000 + ((high - 0xD800) << 10U) + (unit - 0xDC00U), out);
            return;
        }
        put_code_point(replacement, out);
    }
    if (is_high) {
        high_surrogate_ = unit;
    } else {
        put_code_point(is_low ? replacement : unit, out);
    }
}

} // namespace core::chamber
