#pragma once

#include <string>

namespace core::exchange {

/// The JSON Schema (draft 2020-12) of the exchange document, made from the same field lists that
/// write and read it. The published copy is resources/schema/book-exchange.schema.json; a test
/// holds the two together.
std::string book_document_schema();

} // namespace core::exchange
