#pragma once

#include "core/exchange/book_document.h"

namespace test_support {

/// An invented document with at least one entry of each kind and every field filled in.
core::exchange::BookDocument sample_document();

} // namespace test_support
