#pragma once

#include "core/exchange/book_document.h"
#include "core/store/connection.h"

#include <cstdint>
#include <functional>

namespace core::services {

/// Tells, for each person, chamber, sensor, instrument, check, recipe, ingredient and lot of the
/// document that the book holds already, the book's row: `found("chambers", id in the document,
/// row in the book)`. Alike means: people by name and initials; chambers by name; sensors by
/// chamber and name; instruments by kind and name; checks by instrument, moment and reading;
/// recipes by name, their versions by the document they keep; ingredients by all they say; lots by
/// ingredient and code. Throws as core/store does.
void match_registers(
    store::Connection& book, const exchange::BookDocument& document,
    const std::function<void(const char* kind, std::int64_t old, std::int64_t row)>& found);

} // namespace core::services
