#pragma once

#include "core/model/ids.h"
#include "core/units/mass.h"
#include "core/units/time.h"

#include <optional>
#include <string>

namespace core::model {

enum class PackKind { whole, cut, vacuum, frozen };

/// Finished stock made from a piece.
struct Pack {
    PackId id;
    PieceId piece;
    std::string code;
    PackKind kind = PackKind::whole;
    units::Mass packed_weight;
    units::Mass weight_left;
    units::Day packed_on;
    std::optional<units::Day> opened_on;
    std::optional<units::Day> keep_by;
    std::string keep_by_rule; ///< stable id of the rule it came from (core/facts), may be empty
    std::string place;
    bool gone = false;
};

enum class MoveKind { used, given, sold, wasted, re_hung, counted };

/// One forward: what left a pack, how much, to whom.
struct PackMove {
    PackMoveId id;
    PackId pack;
    MoveKind kind{};
    units::Mass amount;
    units::Instant at;
    std::string to_whom;
    std::string note;
};

} // namespace core::model
