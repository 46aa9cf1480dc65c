#include "core/exchange/tag_code.h"

#include <array>
#include <cctype>
#include <optional>

namespace core::exchange {
namespace {

using base::ErrorCode;

constexpr std::string_view digits = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
constexpr std::string_view plain_marks = " $*+-.:";
constexpr std::string_view hex = "0123456789ABCDEF";

bool is_letter_or_digit(char c) {
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

char upper(char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

std::string escaped(std::string_view field) {
    std::string out;
    for (const char c : field) {
        if (is_letter_or_digit(c) || plain_marks.find(c) != std::string_view::npos) {
            out.push_back(c);
            continue;
        }
        const auto byte = static_cast<unsigned char>(c);
        out.push_back('%');
        out.push_back(hex[byte >> 4U]);
        out.push_back(hex[byte & 0x0FU]);
    }
    return out;
}

std::optional<std::string> unescaped(std::string_view field) {
    std::string out;
    for (std::size_t i = 0; i < field.size(); ++i) {
        if (field[i] != '%') {
            out.push_back(field[i]);
            continue;
        }
        const auto digit = [&](std::size_t at) {
            return at < field.size() ? hex.find(upper(field[at])) : std::string_view::npos;
        };
        const std::size_t high = digit(i + 1);
        const std::size_t low = digit(i + 2);
        if (high == std::string_view::npos || low == std::string_view::npos) {
            return {};
        }
        out.push_back(static_cast<char>(high * 16 + low));
        i += 2;
    }
    return out;
}

} // namespace

char check_character(std::string_view text) {
    // ISO/IEC 7064, hybrid system MOD 37,36: p starts at 36; for each character s = p + value,
    // reduced mod 36 (0 counts as 36), then doubled mod 37.
    std::size_t p = 36;
    for (const char c : text) {
        if (!is_letter_or_digit(c)) {
            continue;
        }
        std::size_t s = (p + digits.find(upper(c))) % 36;
        s = s == 0 ? 36 : s;
        p = s * 2 % 37;
    }
    return digits[(37 - p) % 36];
}

std::string tag_text(const TagCode& code) {
    std::string text = escaped(code.piece) + "/" + escaped(code.batch) + "/" + escaped(code.book);
    text += "/";
    text.push_back(check_character(text));
    return text;
}

base::Result<TagCode> read_tag(std::string_view text) {
    std::array<std::string, 4> fields;
    std::size_t count = 0;
    for (std::string_view rest = text;; ++count) {
        const std::size_t slash = rest.find('/');
        const auto field = unescaped(rest.substr(0, slash));
        if (count == fields.size() || !field) {
            return base::fault(ErrorCode::bad_format, std::string(text));
        }
        fields[count] = *field;
        if (slash == std::string_view::npos) {
            break;
        }
        rest.remove_prefix(slash + 1);
    }
    if (count != 3 || fields[0].empty() || fields[3].size() != 1) {
        return base::fault(ErrorCode::bad_format, std::string(text));
    }
    const std::size_t last = text.rfind('/');
    if (upper(text[last + 1]) != check_character(text.substr(0, last))) {
        return base::fault(ErrorCode::conflict, std::string(text));
    }
    return TagCode{fields[0], fields[1], fields[2]};
}

} // namespace core::exchange
