#pragma once

#include "core/chamber/log_dialect.h"

#include <optional>
#include <string>
#include <string_view>

namespace core::chamber {

struct EncodingGuess {
    Encoding encoding;
    bool marked;     ///< a byte order mark says so
    double sureness; ///< 0 to 1
};

/// The encoding of the text that starts with `head`. Absent when it is no text at all: zero bytes
/// outside UTF-16's pattern, or one byte in 50 or more a control character.
std::optional<EncodingGuess> guess_encoding(std::string_view head);

/// Turns a file's bytes, in chunks of any size, into UTF-8. A character split between two chunks
/// is kept until its rest arrives; an impossible sequence becomes U+FFFD. A byte order mark at
/// the start is dropped.
class Transcoder {
  public:
    explicit Transcoder(Encoding encoding) : encoding_(encoding) {}
    /// Appends the text of `bytes` to `out`.
    void feed(std::string_view bytes, std::string& out);

  private:
    void feed_utf16(std::string_view bytes, std::string& out);
    void put_unit(char16_t unit, std::string& out);

    Encoding encoding_;
    bool at_start_ = true;
    std::string pending_; ///< start of a UTF-8 byte order mark not yet complete
    std::optional<unsigned char> half_unit_;
    std::optional<char16_t> high_surrogate_;
};

} // namespace core::chamber
