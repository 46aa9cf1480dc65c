#include "core/store/changeset_shape.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <sqlite3.h>
#include <vector>

namespace core::store {
namespace {

// Kinds of a value in a record; 1 to 5 are SQLITE_INTEGER to SQLITE_NULL.
constexpr unsigned char not_given = 0;
// SQLite's own limit on columns is far higher than any table of ours.
constexpr std::uint64_t most_columns = 200;

class Reader {
  public:
    explicit Reader(const Changeset& bytes) : bytes_(bytes) {}
    [[nodiscard]] bool at_end() const { return at_ == bytes_.size(); }
    std::optional<unsigned char> byte() {
        return at_end() ? std::nullopt : std::optional(bytes_[at_++]);
    }
    bool skip(std::uint64_t count) {
        if (count > bytes_.size() - at_) {
            return false;
        }
        at_ += static_cast<std::size_t>(count);
        return true;
    }
    /// SQLite's varint: seven bits a byte, most significant first, the ninth byte whole.
    std::optional<std::uint64_t> varint() {
        std::uint64_t value = 0;
        for (int n = 0; n < 9; ++n) {
            const auto next = byte();
            if (!next) {
                return std::nullopt;
            }
            if (n == 8) {
                return (value << 8U) | *next;
            }
            value = (value << 7U) | (*next & 0x7fU);
            if ((*next & 0x80U) == 0) {
                return value;
            }
        }
        return std::nullopt;
    }

  private:
    const Changeset& bytes_;
    std::size_t at_ = 0;
};

enum class Needs { every_value, the_key, nothing };

/// The columns that are part of the key, of the table whose head is read.
std::optional<std::vector<bool>> table_head(Reader& reader) {
    const auto columns = reader.varint();
    if (!columns || *columns == 0 || *columns > most_columns) {
        return std::nullopt;
    }
    std::vector<bool> key;
    for (std::uint64_t i = 0; i < *columns; ++i) {
        const auto part = reader.byte();
        if (!part) {
            return std::nullopt;
        }
        key.push_back(*part != 0);
    }
    for (;;) {
        const auto letter = reader.byte();
        if (!letter) {
            return std::nullopt;
        }
        if (*letter == 0) {
            return key;
        }
    }
}

bool value_is_whole(Reader& reader, unsigned char kind) {
    switch (kind) {
    case not_given:
    case SQLITE_NULL:
        return true;
    case SQLITE_INTEGER:
    case SQLITE_FLOAT:
        return reader.skip(8);
    case SQLITE_TEXT:
    case SQLITE_BLOB: {
        const auto length = reader.varint();
        return length && reader.skip(*length);
    }
    default:
        return false;
    }
}

bool record_is_whole(Reader& reader, const std::vector<bool>& key, Needs needs) {
    for (const bool is_key : key) {
        const auto kind = reader.byte();
        if (!kind || !value_is_whole(reader, *kind)) {
            return false;
        }
        const bool needed = needs == Needs::every_value || (needs == Needs::the_key && is_key);
        if (needed && *kind == not_given) {
            return false;
        }
    }
    return true;
}

bool change_is_whole(Reader& reader, unsigned char operation, const std::vector<bool>& key) {
    const auto indirect = reader.byte();
    if (!indirect || *indirect > 1) {
        return false;
    }
    switch (operation) {
    case SQLITE_INSERT:
    case SQLITE_DELETE:
        return record_is_whole(reader, key, Needs::every_value);
    case SQLITE_UPDATE:
        return record_is_whole(reader, key, Needs::the_key) &&
               record_is_whole(reader, key, Needs::nothing);
    default:
        return false;
    }
}

} // namespace

bool is_whole(const Changeset& changes) {
    Reader reader(changes);
    std::optional<std::vector<bool>> key;
    while (!reader.at_end()) {
        const unsigned char mark = *reader.byte();
        if (mark == 'T') {
            key = table_head(reader);
            if (!key) {
                return false;
            }
        } else if (!key || !change_is_whole(reader, mark, *key)) {
            return false;
        }
    }
    return true;
}

} // namespace core::store
