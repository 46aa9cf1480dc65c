#pragma once

#include "core/model/ids.h"
#include "core/units/length.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

namespace core::model {

/// The simplest solid that dries like the piece. Thickness is measured across it.
enum class Form {
    slab,     ///< flat, dries from both faces: thickness is face to face
    cylinder, ///< long and round: thickness is the diameter
    round,    ///< as thick as it is long: thickness is the diameter
    block,    ///< brick: thickness is the shortest side
};

/// What is on the scale. Losses are only comparable between weighings of a known state.
enum class WeighedState { raw, trimmed, cured, rinsed, cased, netted, coated };

/// Which weight a loss is counted from. A target is bound to exactly one of them.
enum class ReferenceWeight { raw, trimmed, cured, hung };

enum class SkinSide { none, one_side, all_round };

/// What a piece is doing now, as shown in lists. Derived from stages, events and decisions; kept
/// so that a list of thousands needs no recomputation.
enum class PieceState {
    planned,
    curing,
    resting,
    drying,
    finished,
    discarded,
    merged_away, ///< weighed as part of another piece from now on
    split_up,    ///< cut into children, which carry on under their own codes
};

/// The target of a drying: a loss of net weight from a named reference.
struct Target {
    units::MassShare loss;
    ReferenceWeight reference = ReferenceWeight::hung;
    friend bool operator==(const Target&, const Target&) = default;
};

struct Piece {
    PieceId id;
    BatchId batch;
    std::string code; ///< two or three characters, readable when greasy; unique among open pieces
    std::string name; ///< cut or description in the user's words
    Form form = Form::slab;
    std::optional<units::Length> thickness; ///< at the thickest point
    std::optional<units::MassShare> fat;    ///< fat as a share of the raw piece
    SkinSide skin = SkinSide::none;
    std::optional<Target> target;
    std::optional<PieceId> parent; ///< the piece it was split from
    std::optional<ChamberId> chamber;
    std::string position; ///< hook, rail or shelf; sorts the weigh-in round
    int hanging_order = 0;
    int count = 1; ///< pieces weighed as one lump ("bundle of 4")
    PieceState state = PieceState::planned;
};

/// One number read off a scale. Never overwritten: a correction is a new weighing with `amends`.
struct Weighing {
    WeighingId id;
    PieceId piece;
    units::Instant taken_at;
    units::Mass on_scale; ///< as shown, tare included
    units::Mass tare;     ///< casing, net, hook and string on the scale with it; zero when bare
    WeighedState state = WeighedState::raw;
    std::optional<units::Mass> scale_step; ///< the scale's resolution
    bool wet_surface = false;              ///< just washed, misted or wiped: not for the curve
    std::string note;
    std::optional<WeighingId> amends;     ///< the entry this one corrects
    std::optional<WeighingId> amended_by; ///< set when a later entry corrects this one
    bool withdrawn = false;               ///< taken back by an amendment that removes it
    [[nodiscard]] units::Mass net() const { return on_scale - tare; }
    [[nodiscard]] bool stands() const { return !withdrawn && !amended_by.has_value(); }
};

/// What happened to a piece that changes the meaning of the numbers after it.
enum class EventKind {
    dressed,    ///< casing or net put on: tare starts
    re_dressed, ///< tare changes: last net before = first net after
    coated,     ///< weight added (lard, spice paste)
    trimmed,    ///< part cut off and not kept
    sampled,    ///< a wedge taken
    split,      ///< cut into children
    merged,     ///< several pieces weighed as one from now on
    pressed,
    frozen, ///< the cure clock stops
    thawed, ///< and runs again
    washed, ///< rinsed or soaked; the next weighing may be wet
    hung,   ///< drying starts: the hung net weight is taken here
    moved,  ///< to another chamber or place
};

struct PieceEvent {
    EventId id;
    PieceId piece;
    EventKind kind{};
    units::Instant at;
    std::optional<units::Mass> net_before; ///< net weight just before, where it was taken
    std::optional<units::Mass> net_after;  ///< net weight just after
    std::optional<units::Mass> tare_after; ///< tare from now on
    /// The user's own new start weight where the proportional rule would mislead (dry ends cut
    /// off, say); otherwise new start = old start x net_after / net_before.
    std::optional<units::Mass> start_override;
    std::vector<PieceId> others; ///< children of a split, members of a merge
    std::optional<ChamberId> chamber;
    std::string note;
    bool withdrawn = false;
};

} // namespace core::model
