#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace core::base {

/// A row's identity in the book, typed by what it identifies so that a piece's id cannot be
/// passed for a batch's. Ids are given by the store, are positive and never reused. A value that
/// is not in the book yet has an unassigned id (the default), which the store replaces.
template <class Tag>
class Id {
  public:
    constexpr Id() = default;
    static constexpr Id from_row(std::int64_t row) { return Id(row); }
    [[nodiscard]] constexpr bool is_assigned() const { return row_ > 0; }
    /// Only meaningful when assigned.
    [[nodiscard]] constexpr std::int64_t row() const { return row_; }
    // clang-tidy 14 takes what this compares with for a null pointer.
    friend constexpr auto operator<=>(Id, Id) = default; // NOLINT(modernize-use-nullptr)

  private:
    explicit constexpr Id(std::int64_t row) : row_(row) {}
    std::int64_t row_ = 0;
};

} // namespace core::base

template <class Tag>
struct std::hash<core::base::Id<Tag>> {
    std::size_t operator()(core::base::Id<Tag> id) const noexcept {
        return std::hash<std::int64_t>{}(id.row());
    }
};
