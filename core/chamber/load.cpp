#include "core/chamber/load.h"

#include <algorithm>
#include <cmath>

namespace core::chamber {
namespace {

using units::Duration;
using units::Mass;
using units::MassShare;

constexpr double small_load = 0.1;
constexpr double nearly_dry = 0.8;
constexpr std::size_t most_swaps = 3;
constexpr double uneven_pace = 1.5; ///< a corner's effect worth a swap

PieceLoad load_of_piece(const LoadPiece& piece) {
    if (piece.water_per_day) {
        return {piece, std::max(*piece.water_per_day, Mass::grams(0)), true};
    }
    return {piece, usual_loss_per_day(piece.hung).part_of(piece.net), false};
}

bool is_nearly_dry(const LoadPiece& piece) {
    return piece.loss && piece.target_loss && *piece.target_loss > MassShare::fraction(0) &&
           *piece.loss / *piece.target_loss >= nearly_dry;
}

double pace(const PieceLoad& load) {
    return load.water_per_day / load.piece.net;
}

/// Pieces hung within a week of each other, measured, and drying unevenly.
std::vector<ChamberLoad::Swap> swaps(const std::vector<PieceLoad>& loads) {
    std::vector<const PieceLoad*> measured;
    for (const auto& load : loads) {
        if (load.measured && load.piece.net > Mass::grams(0)) {
            measured.push_back(&load);
        }
    }
    std::sort(measured.begin(), measured.end(),
              [](const auto* a, const auto* b) { return pace(*a) > pace(*b); });
    std::vector<ChamberLoad::Swap> found;
    std::vector<const PieceLoad*> used;
    const auto is_free = [&](const PieceLoad* p) {
        return std::find(used.begin(), used.end(), p) == used.end();
    };
    for (const auto* fast : measured) {
        const auto slow = std::find_if(measured.rbegin(), measured.rend(), [&](const auto* s) {
            return s != fast && is_free(s) &&
                   std::fabs((s->piece.hung - fast->piece.hung).in_days()) <= 7 &&
                   pace(*fast) >= uneven_pace * pace(*s);
        });
        if (!is_free(fast) || slow == measured.rend()) {
            continue;
        }
        found.push_back({fast->piece.piece, (*slow)->piece.piece});
        used.push_back(fast);
        used.push_back(*slow);
        if (found.size() == most_swaps) {
            break;
        }
    }
    return found;
}

model::Finding finding(std::string code, model::Severity severity, const model::Chamber& chamber) {
    model::Finding f;
    f.code = std::move(code);
    f.severity = severity;
    f.place = chamber.name;
    f.source = base::common_practice();
    return f;
}

void check_capacity(const model::Chamber& chamber, std::size_t pieces, ChamberLoad& load) {
    if (chamber.places > 0 && static_cast<int>(pieces) > chamber.places) {
        auto f = finding("places_over", model::Severity::caution, chamber);
        f.values = {{"pieces", static_cast<double>(pieces)},
                    {"places", static_cast<double>(chamber.places)}};
        load.findings.push_back(std::move(f));
    }
    if (!load.share_of_capacity || pieces == 0) {
        return;
    }
    const bool over = *load.share_of_capacity > 1.0;
    if (over || *load.share_of_capacity < small_load) {
        auto f = over ? finding("load_over_capacity", model::Severity::caution, chamber)
                      : finding("load_small", model::Severity::note, chamber);
        f.values = {{"water_per_day", load.water_per_day},
                    {"capacity_per_day", *chamber.water_capacity_per_day}};
        load.findings.push_back(std::move(f));
    }
}

} // namespace

MassShare usual_loss_per_day(Duration hung) {
    if (hung < Duration::weeks(1)) {
        return MassShare::percent(2.0);
    }
    return hung < Duration::weeks(4) ? MassShare::percent(0.9) : MassShare::percent(0.3);
}

ChamberLoad load_of(const model::Chamber& chamber, std::span<const LoadPiece> pieces) {
    ChamberLoad load;
    for (const auto& piece : pieces) {
        load.pieces.push_back(load_of_piece(piece));
        load.water_per_day += load.pieces.back().water_per_day;
    }
    std::stable_sort(load.pieces.begin(), load.pieces.end(), [](const auto& a, const auto& b) {
        return a.water_per_day > b.water_per_day;
    });
    if (chamber.water_capacity_per_day && *chamber.water_capacity_per_day > Mass::grams(0)) {
        load.share_of_capacity = load.water_per_day / *chamber.water_capacity_per_day;
    }
    if (chamber.places > 0) {
        load.free_places = std::max(0, chamber.places - static_cast<int>(pieces.size()));
    }
    load.rotation = swaps(load.pieces);
    check_capacity(chamber, pieces.size(), load);
    return load;
}

model::Findings before_hanging(const model::Chamber& chamber, std::span<const LoadPiece> there,
                               std::span<const LoadPiece> joining) {
    std::vector<LoadPiece> all(there.begin(), there.end());
    all.insert(all.end(), joining.begin(), joining.end());
    const auto now = load_of(chamber, there);
    const auto then = load_of(chamber, all);
    auto findings = then.findings;
    const auto dry = std::count_if(there.begin(), there.end(), is_nearly_dry);
    if (dry > 0 && then.water_per_day > now.water_per_day * 2.0) {
        auto f = finding("wet_batch_joins_dry", model::Severity::caution, chamber);
        f.values = {{"nearly_dry", static_cast<double>(dry)},
                    {"joining", static_cast<double>(joining.size())},
                    {"water_now", now.water_per_day},
                    {"water_then", then.water_per_day}};
        findings.insert(findings.begin(), std::move(f));
    }
    return findings;
}

} // namespace core::chamber
