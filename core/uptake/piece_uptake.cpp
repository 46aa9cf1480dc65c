#include "core/uptake/piece_uptake.h"

#include "core/numeric/root.h"

#include <algorithm>

namespace core::uptake {

namespace {

Axis sheet(units::Length thickness) {
    return {Body::sheet, thickness.in_metres() / 2};
}

void add_side(std::vector<Axis>& axes, const std::optional<units::Length>& side) {
    if (side) {
        axes.push_back(sheet(*side));
    }
}

} // namespace

std::vector<Axis> axes_of(const CureRequest& request) {
    if (request.skin == model::SkinSide::all_round) {
        return {};
    }
    std::vector<Axis> axes;
    const double radius = request.thickness.in_metres() / 2;
    switch (request.form) {
    case model::Form::slab:
    case model::Form::block:
        axes.push_back(sheet(request.thickness));
        add_side(axes, request.width);
        add_side(axes, request.length);
        break;
    case model::Form::cylinder:
        axes.push_back({Body::cylinder, radius});
        add_side(axes, request.length);
        break;
    case model::Form::round:
        axes.push_back({Body::sphere, radius});
        break;
    }
    if (request.skin == model::SkinSide::one_side) {
        axes.front().reach_m *= 2;
    }
    return axes;
}

double PieceUptake::longest_path() const {
    double reach = 0;
    for (const auto& axis : axes_) {
        reach = std::max(reach, axis.reach_m);
    }
    return 1000 * reach * reach; // Fo 1000: exp(-1000 q^2) is nothing for any root
}

std::optional<double> PieceUptake::path_at_mean(double level) const {
    if (mean(1e-12 * longest_path()) >= level) {
        return 0.0; // a dry rub counts as in the piece from the start
    }
    const auto root = numeric::find_root([&](double path) { return mean(path) - level; }, 0.0,
                                         longest_path(), 1e-12);
    return root ? std::optional(*root) : std::nullopt;
}

std::optional<double> PieceUptake::path_at_centre(double level) const {
    const auto root = numeric::find_root([&](double path) { return centre(path) - level; }, 0.0,
                                         longest_path(), 1e-12);
    return root ? std::optional(*root) : std::nullopt;
}

ExcessSaltUptake::ExcessSaltUptake(std::vector<Axis> axes) : PieceUptake(std::move(axes)) {
    for (const auto& axis : axes_) {
        salting_.push_back(DiffusionSeries::constant_surface(axis.body));
        resting_.emplace_back(axis.body);
    }
}

double ExcessSaltUptake::mean(double path_m2) const {
    double deficit = 1;
    for (std::size_t i = 0; i < axes_.size(); ++i) {
        deficit *= 1 - salting_[i].uptake(path_m2 / (axes_[i].reach_m * axes_[i].reach_m));
    }
    return 1 - deficit;
}

double ExcessSaltUptake::centre(double path_m2) const {
    double deficit = 1;
    for (std::size_t i = 0; i < axes_.size(); ++i) {
        deficit *= 1 - salting_[i].centre(path_m2 / (axes_[i].reach_m * axes_[i].reach_m));
    }
    return 1 - deficit;
}

double ExcessSaltUptake::rested_centre(double salting_m2, double rest_m2) const {
    double deficit = 1;
    for (std::size_t i = 0; i < axes_.size(); ++i) {
        const double square = axes_[i].reach_m * axes_[i].reach_m;
        deficit *= resting_[i].centre_deficit(salting_m2 / square, rest_m2 / square);
    }
    return std::max(1 - deficit, 0.0);
}

std::optional<double> ExcessSaltUptake::rest_until_even(double salting_m2, double share) const {
    const double wanted = share * mean(salting_m2);
    const auto gap = [&](double rest) { return rested_centre(salting_m2, rest) - wanted; };
    if (gap(0.0) >= 0) {
        return 0.0;
    }
    const auto root = numeric::find_root(gap, 0.0, longest_path(), 1e-10);
    return root ? std::optional(*root) : std::nullopt;
}

LimitedSaltUptake::LimitedSaltUptake(std::vector<Axis> axes, double outside_ratio)
    : PieceUptake(std::move(axes)) {
    if (axes_.size() == 1) {
        exact_ = DiffusionSeries::limited_volume(axes_.front().body, outside_ratio);
        return;
    }
    const ExcessSaltUptake step(axes_);
    double shortest = axes_.front().reach_m;
    for (const auto& axis : axes_) {
        shortest = std::min(shortest, axis.reach_m);
    }
    table_.emplace([&](double path) { return step.mean(path); },
                   [&](double path) { return step.centre(path); }, shortest * shortest,
                   outside_ratio);
}

double LimitedSaltUptake::mean(double path_m2) const {
    return exact_ ? exact_->uptake(path_m2 / (axes_.front().reach_m * axes_.front().reach_m))
                  : table_->mean(path_m2);
}

double LimitedSaltUptake::centre(double path_m2) const {
    return exact_ ? exact_->centre(path_m2 / (axes_.front().reach_m * axes_.front().reach_m))
                  : table_->centre(path_m2);
}

} // namespace core::uptake
