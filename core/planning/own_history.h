#pragma once

#include "core/base/interval.h"
#include "core/model/batch.h"
#include "core/model/finding.h"
#include "core/model/piece.h"
#include "core/planning/stage_length.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

namespace core::planning {

/// A finished piece, as far as the next plan can learn from it.
struct FinishedPiece {
    model::PieceId piece;
    model::BatchId batch;
    std::string product;
    model::Form form = model::Form::slab;
    std::optional<units::Length> thickness;
    std::optional<model::ChamberId> chamber;
    units::Day hung;
    units::Day finished;
    std::optional<units::MassShare> loss;      ///< at the end, from the target's reference
    std::optional<units::MassShare> target;    ///< that was asked for
    std::optional<units::MassShare> salt_dose; ///< of the raw weight
    [[nodiscard]] units::Duration dried_for() const {
        return units::Duration::days(finished - hung);
    }
};

/// Which pieces to compare with. The product must agree; the rest narrows while enough are left.
struct Likeness {
    std::string product;
    std::optional<model::Form> form;
    std::optional<model::ChamberId> chamber;
    std::optional<units::Day> hung_on; ///< for the time of year
};

/// "The last three took 9 to 11 weeks here."
struct HistorySummary {
    std::vector<model::PieceId> pieces;                            ///< that were used, newest first
    base::Interval<units::Duration> took;                          ///< shortest, median, longest
    std::optional<base::Interval<units::MassShare>> loss_per_week; ///< over the whole drying
    bool same_form = false; ///< what they have in common besides the product
    bool same_chamber = false;
    bool same_time_of_year = false; ///< hung within 45 days of the same date
};

/// The newest `most` pieces most like the one asked for; absent below `least`.
std::optional<HistorySummary> summarise(const std::vector<FinishedPiece>& finished,
                                        const Likeness& likeness, std::size_t most = 3,
                                        std::size_t least = 2);

/// Own drying times as a length source for the planner: from three pieces of the product on, the
/// 80 % prediction interval of one more piece (log-normal, Student's t), each scaled to the asked
/// thickness (see scaled_to_thickness). Few pieces give a wide interval: that is the slack.
std::function<LengthSources::Answer(const PieceSpec&)>
own_drying(std::vector<FinishedPiece> finished, std::string product);

/// What an outcome suggests for the next plan. Shown as a proposal; never applied by itself.
struct Proposal {
    model::BatchId batch;   ///< whose outcome speaks
    units::Day finished_on; ///< its newest piece
    std::optional<units::MassShare> target_now;
    std::optional<units::MassShare> target_next; ///< absent: leave it
    /// Finished salt = dose / (1 - loss): what "too salty" was said about.
    std::optional<units::MassShare> finished_salt;
    /// The dose that keeps that finished share at the proposed target; for comparison only.
    std::optional<units::MassShare> same_salt_dose;
    std::optional<units::MassShare> salt_now;  ///< dose of the raw weight
    std::optional<units::MassShare> salt_next; ///< of the raw weight; absent: leave it
    std::optional<int> salt_score;
    std::optional<int> texture_score;
    std::string words; ///< the user's own: what to change next time
};

/// From the newest finished batch of the product that has an outcome; absent when there is none.
/// Each texture point moves the target by 2.5 points of loss away from what was reached, to the
/// nearest half point within 5 to 70 %. Each salt point moves the salt of the finished piece by a
/// tenth of itself; the dose for it is rounded to 0.05 % and kept within 2 to 4 % of the raw
/// weight, so that a taste never talks anyone into a dose outside what is usual (common practice,
/// no source). Both steps are our own.
std::optional<Proposal> propose_next(const std::vector<FinishedPiece>& finished,
                                     const std::vector<model::Outcome>& outcomes,
                                     const std::string& product);
/// The same from these batches alone, such as those made from one recipe.
std::optional<Proposal> propose_next(const std::vector<FinishedPiece>& finished,
                                     const std::vector<model::Outcome>& outcomes,
                                     const std::vector<model::BatchId>& batches);

/// dose / (1 - loss): the salt stays, the water leaves.
units::MassShare finished_salt(units::MassShare dose, units::MassShare loss);

} // namespace core::planning
