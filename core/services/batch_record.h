#pragma once

#include "core/base/result.h"
#include "core/chamber/band_time.h"
#include "core/exchange/book_document.h"
#include "core/mix/label.h"
#include "core/mix/mix_sheet.h"
#include "core/mix/recipe_document.h"
#include "core/model/climate.h"
#include "core/services/book.h"

#include <optional>
#include <string>
#include <vector>

/// Everything an inspector may ask about one batch, gathered and computed in one go; the printed
/// record (ui/print/batch_record_sheet.h) and its siblings only word it.
namespace core::services {

/// The air of one stage that has begun, by one sensor of its chamber, offsets applied.
struct StageClimate {
    model::StageId stage;
    model::SensorId sensor;
    std::optional<model::Spread<units::Temperature>> temperature;
    std::optional<model::Spread<units::RelativeHumidity>> humidity;
    /// Against the stage's own band where it has one, else the chamber's. Excursions of an hour
    /// or longer.
    chamber::BandTime out_of_band;
};

/// Losses of one piece from named references. Absent where a reference was never weighed.
struct PieceLoss {
    model::PieceId piece;
    std::optional<units::Mass> raw;     ///< net, of the first standing weighing marked raw
    std::optional<units::Mass> trimmed; ///< net, of the first one marked trimmed
    std::optional<units::Mass> hung;    ///< net, at the hanging or the first weighing after it
    std::optional<units::Mass> latest;
    std::optional<units::Instant> latest_at;
    /// Something was cut off, put on or joined after the reference: the plain loss would mix the
    /// two up and is left out.
    bool green_changed = false;
    bool hung_changed = false;
    /// The meat as it went into the cure: trimmed where it was weighed so, else raw.
    [[nodiscard]] std::optional<units::Mass> green() const { return trimmed ? trimmed : raw; }
    [[nodiscard]] std::optional<units::MassShare> loss_from_green() const;
    [[nodiscard]] std::optional<units::MassShare> loss_from_hung() const;
};

/// Where the batch's mass went. Masses in grams of what was weighed; absent where not weighed.
struct MassBalance {
    std::optional<units::Mass> bought;
    std::optional<units::Mass> trimmed_off;
    std::optional<units::Mass> green; ///< sum over pieces that were not cut from others
    std::optional<units::Mass> dried; ///< latest net of pieces not discarded, cut up or merged
    units::Mass packed = units::Mass::grams(0);
    units::Mass used = units::Mass::grams(0);
    units::Mass given = units::Mass::grams(0);
    units::Mass sold = units::Mass::grams(0);
    units::Mass wasted = units::Mass::grams(0);
    units::Mass re_hung = units::Mass::grams(0);
    units::Mass left = units::Mass::grams(0); ///< in packs
    /// packed less all that left and what is left; zero when every gram is accounted for.
    [[nodiscard]] units::Mass unaccounted() const {
        return packed - used - given - sold - wasted - re_hung - left;
    }
};

struct BatchRecord {
    exchange::BookDocument entries; ///< of the batch, with what it refers to
    std::optional<mix::RecipeDocument> recipe;
    std::optional<mix::MixSheet> mix; ///< the recipe on the raw weights; absent when either lacks
    std::vector<mix::ResolvedIngredient> ingredients; ///< the recipe's lines, label over catalogue
    std::string limit_set_name;
    std::vector<StageClimate> climate;
    std::vector<PieceLoss> losses; ///< in the order of entries.pieces
    MassBalance balance;
    units::Instant made_at;
    [[nodiscard]] const model::Batch& batch() const { return entries.batches.front().value; }
};

base::Result<BatchRecord> batch_record(const Book& book, model::BatchId batch, units::Instant now);

/// Pure parts, for tests.
PieceLoss piece_loss(const model::Piece& piece, const std::vector<model::Weighing>& weighings,
                     const std::vector<model::PieceEvent>& events);
MassBalance mass_balance(const exchange::BookDocument& entries,
                         const std::vector<PieceLoss>& losses);

} // namespace core::services
