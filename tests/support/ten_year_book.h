#pragma once

#include <string>

namespace saltloft::testing {

struct BookSize {
    int batches = 2000;
    int pieces_per_batch = 10;
    int weighings_per_piece = 20;
    int pieces_drying = 200; ///< of the last batches
};
/// A small producer's ten years: 2,000 batches, 20,000 pieces, 400,000 weighings.
inline constexpr BookSize ten_years{};

/// Makes a new book of that size at `path` through the ordinary actions: a batch an action, a
/// weigh-in round (one weighing of each of a batch's pieces) an action. Throws when it cannot.
void make_ten_year_book(const std::string& path, const BookSize& size);

} // namespace saltloft::testing
