#pragma once

#include <string>
#include <utility>

namespace core::base {

/// How sure we are of a fact. Anything below `verified` is shown as unverified when it is used
/// as a limit.
enum class Sureness {
    verified,             ///< the issuer's words were read
    verified_second_hand, ///< read as quoted by a third party
    computed,             ///< arithmetic from verified inputs
    derived,              ///< arithmetic from a source's own numbers
    memory,               ///< from memory; nobody has checked it against the text
    common_practice,      ///< what the trade does; no source
};

struct Source {
    std::string title;   ///< e.g. "9 CFR 424.22(b)"; for trade lore "common practice, no source"
    std::string edition; ///< year, revision or date of application; may be empty
    Sureness sureness = Sureness::memory;
    friend bool operator==(const Source&, const Source&) = default;
};

/// The source of trade lore: what the trade does, written down nowhere we could name.
inline Source common_practice() {
    return {"common practice, no source", "", Sureness::common_practice};
}

/// A value that never travels without its source.
template <class T>
struct Cited {
    T value;
    Source source;
};

} // namespace core::base
