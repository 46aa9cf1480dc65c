#pragma once

#include "core/base/result.h"
#include "core/services/book.h"

#include <cstdint>
#include <string>

namespace core::services {

struct DemoOptions {
    units::Instant now;     ///< the story ends here: its last batch was started two days ago
    std::uint64_t seed = 7; ///< the same seed and `now` give the same book
};

/// Fills a new, empty book with an invented producer: two chambers, a dozen batches at all stages
/// over eight months, some thirty pieces with their weighings, events, notes, decisions, packs,
/// instruments and climate. Every name is invented and says so; preference `demo` is "1" and
/// `title` names the book as invented. The numbers come from a drying curve of the story's own,
/// not from the forecast's model. Meant for a file that can be made again: entries are not forced
/// to the disk one by one.
base::Status fill_demo_book(Book& book, const DemoOptions& options);

} // namespace core::services
