#pragma once

#include "core/services/book_types.h"
#include "core/store/backup.h"

namespace core::services {

/// Internal to core/services: what the store found out about a file, as the screens are told.
BookSummary summary_of(const store::BookFacts& facts);

} // namespace core::services
