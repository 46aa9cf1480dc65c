#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace core::exchange {

/// What the square code on a tag says. It names the piece within its book; no address and no
/// program is named, so that any scanner shows something a person can look up.
struct TagCode {
    std::string piece; ///< "K7"; not empty
    std::string batch; ///< "B07"
    std::string book;  ///< the book's own short name where several are in use; may be empty
    friend bool operator==(const TagCode&, const TagCode&) = default;
};

/// "K7/B07/LOFT1/C": piece, batch, book, and a check character (ISO/IEC 7064 MOD 37,36 over the
/// letters and digits before it, upper case). Characters other than letters, digits, space and
/// "$*+-.:" are written as %XX (RFC 3986), so that a tag whose codes are upper case fits the
/// alphanumeric mode of ISO/IEC 18004 and prints coarse enough to read when greasy.
std::string tag_text(const TagCode& code);

/// Reads what `tag_text` writes. Fails with bad_format (not four fields, no piece, a bad %XX) or
/// conflict (the check character does not fit: misread or mistyped).
base::Result<TagCode> read_tag(std::string_view text);

/// ISO/IEC 7064 MOD 37,36 check character of `text`; letters of either case and digits count,
/// everything else is passed over.
char check_character(std::string_view text);

} // namespace core::exchange
