#pragma once

#include "core/model/forecast.h"
#include "core/services/book.h"
#include "ui/text/style.h"

#include <QString>
#include <optional>
#include <vector>

namespace ui::presenters {

/// A loss of net weight counted from one named weight.
struct NamedLoss {
    core::model::ReferenceWeight reference{};
    core::units::Mass start; ///< net; rebased by cuts since
    core::units::MassShare loss;
};

/// A standing weighing in terms of the piece as it is now: cuts since are rebased, so that net
/// weights and losses of a piece that was trimmed stay on one curve.
struct NetPoint {
    core::model::WeighingId weighing;
    core::units::Instant at;
    core::units::Mass net;
    bool aside = false; ///< wet, or before the reference: shown, not fitted
};

/// What of other pieces bears on this one's numbers.
struct Kin {
    std::vector<core::services::PieceHistory> ancestors; ///< by split: parent first
    std::vector<core::services::PieceHistory> members;   ///< of a bundle: the pieces in it
};
Kin kin_of(const core::services::Book& book, const core::services::PieceHistory& history);

/// One piece as lists, the round and its own page show it: the arithmetic of core/drying over
/// its history, without a forecast.
struct PieceLine {
    core::services::PieceHistory history;
    Kin kin;
    std::vector<NetPoint> points;         ///< by time
    std::optional<core::units::Mass> net; ///< by the last standing weighing
    std::optional<core::units::Instant> weighed_at;
    core::units::Mass tare = core::units::Mass::grams(0); ///< on it now
    core::units::Mass coat = core::units::Mass::grams(0); ///< lard or paste on it now
    std::vector<NamedLoss> losses;                        ///< every reference that is known
    std::optional<NamedLoss> towards_target; ///< of the reference the target is bound to
    std::optional<core::units::Mass> target_net;
    std::optional<core::units::Mass> target_scale; ///< tare and coat on
    std::optional<core::units::Instant> hung_at;
    core::model::Findings findings; ///< of the history itself: a missing reference, say
    std::optional<core::model::Forecast> forecast; ///< filled in when it has been computed

    [[nodiscard]] const core::model::Piece& piece() const { return history.piece; }
    [[nodiscard]] std::optional<core::units::Mass> target_on_scale() const { return target_scale; }
};

PieceLine line_of(core::services::PieceHistory history, Kin kin = {});
/// With its kin read from the book.
PieceLine line_in(const core::services::Book& book, core::services::PieceHistory history);

/// What would be on the scale now: as at the last weighing, unless it was dressed, coated, washed
/// or hung since.
core::model::WeighedState state_now(const core::services::PieceHistory& history);

/// "18.4 % of 35 %" and the like, for lists; a dash where nothing is known.
QString progress_words(const PieceLine& line, const text::Style& style);
/// "14 to 20 Mar 2026", "at its target", "too few weighings", "out of reach": the ready column.
QString ready_words(const std::optional<core::model::Forecast>& forecast, const text::Style& style,
                    core::units::Instant now);
/// Where it hangs: "Cellar, hook 4". `chamber` is the chamber's name.
QString place_words(const core::model::Piece& piece, const QString& chamber);

} // namespace ui::presenters
