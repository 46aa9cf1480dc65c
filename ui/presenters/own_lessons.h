#pragma once

#include "core/drying/history.h"
#include "core/services/piece_air.h"
#include "ui/presenters/forecasts.h"

#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

namespace ui::presenters {

/// Finished pieces of one kind, and what their drying teaches the next. Immutable but for the
/// learning itself, which is done once, when it is first asked for, on whatever thread asks.
class Lesson {
  public:
    Lesson(std::vector<PieceRecord> pieces, std::string key)
        : pieces_(std::move(pieces)), key_(std::move(key)) {}
    /// Tells one lesson from another: which pieces, in which state of the book.
    [[nodiscard]] const std::string& key() const { return key_; }
    [[nodiscard]] std::size_t pieces() const { return pieces_.size(); }
    /// Slow the first time (milliseconds a piece): call it on a worker. Nothing learnt
    /// (`pieces` is 0) where the pieces say too little.
    [[nodiscard]] const core::drying::LearntPrior& learnt() const;

  private:
    std::vector<PieceRecord> pieces_;
    std::string key_;
    mutable std::once_flag once_;
    mutable core::drying::LearntPrior learnt_;
};

/// Finds the lesson for a piece: the newest finished pieces of the same product and form, of the
/// same chamber alone where enough finished there. Other products have no say. Keeps what it read
/// until the book changed; asks the book on the thread it is used on.
class OwnLessons {
  public:
    static constexpr std::size_t most = 8;         ///< pieces in a lesson; older ones add little
    static constexpr std::size_t enough_there = 3; ///< to leave other chambers out
    static constexpr std::size_t least = 2;        ///< learn_prior needs two

    /// `book` outlives it.
    explicit OwnLessons(const core::services::Book& book) : book_(book) {}

    /// Null where there is nothing to learn from, and for finished pieces, which do not teach
    /// themselves. `air` gives the finished pieces' air.
    std::shared_ptr<const Lesson> of(const core::model::Piece& piece,
                                     core::services::PieceAir& air);

  private:
    struct Kind {
        std::string product;
        core::model::Form form{};
        std::optional<core::model::ChamberId> chamber;
        auto operator<=>(const Kind&) const = default; // NOLINT(modernize-use-nullptr): none here
    };
    struct Kept {
        std::int64_t revision = 0; ///< of the book, when it was last found to hold
        std::shared_ptr<const Lesson> lesson;
    };
    bool look_again();
    [[nodiscard]] std::vector<core::model::PieceId> teachers(Kind& kind) const;
    [[nodiscard]] std::shared_ptr<const Lesson>
    make(const std::vector<core::model::PieceId>& teachers, std::string key,
         core::services::PieceAir& air) const;

    const core::services::Book& book_;
    std::int64_t revision_ = -1;
    std::map<core::model::BatchId, std::string> products_;
    std::vector<std::pair<Kind, core::model::PieceId>> finished_; ///< newest first
    std::map<Kind, Kept> lessons_;
};

} // namespace ui::presenters
