#include "core/mix/scale.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core::mix {
namespace {

using units::Mass;

// A count of steps that is whole but for rounding of the division (5 g / 0.1 g) stays whole.
constexpr double whole_step_slack = 1e-9;

constexpr std::array<double, 4> common_steps_grams = {1, 0.1, 0.01, 0.001};
constexpr double batch_step_grams = 50;
constexpr double largest_batch_grams = 20000;

std::optional<Mass> finer_step_for(Mass amount, Mass step) {
    for (const double grams : common_steps_grams) {
        const Mass finer = Mass::grams(grams);
        if (finer < step && half_step_error(amount, finer) <= wanted_dose_error) {
            return finer;
        }
    }
    return std::nullopt;
}

/// A batch whose parts are weighed on this scale. The worst cure's error is half a step each way
/// on its own part and half a step on the portion; rounding to the nearest step lies within that.
std::optional<PreBlend> blend_of(const std::vector<ScaleLine>& parts, Mass total, Mass step,
                                 Mass batch) {
    PreBlend blend;
    blend.batch = Mass::grams(0);
    for (const auto& part : parts) {
        blend.parts.push_back({part.line, round_to_step(part.amount * (batch / total), step)});
        blend.batch += blend.parts.back().mass;
    }
    blend.portion = round_to_step(total, step);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (!parts[i].is_cure) {
            continue;
        }
        const Mass in_batch = blend.parts[i].mass;
        if (in_batch <= Mass::grams(0)) {
            return std::nullopt;
        }
        const double share = in_batch / blend.batch;
        if (parts[i].at_most && blend.portion * share > *parts[i].at_most) {
            blend.portion = round_down_to_step(*parts[i].at_most / share, step);
        }
        blend.error = std::max(blend.error, half_step_error(in_batch, step));
    }
    if (blend.portion <= Mass::grams(0)) {
        return std::nullopt;
    }
    blend.error += half_step_error(blend.portion, step);
    return blend;
}

std::optional<PreBlend> smallest_blend(const std::vector<ScaleLine>& lines, Mass step) {
    std::vector<ScaleLine> parts;
    Mass total = Mass::grams(0);
    for (const auto& line : lines) {
        if (line.can_blend && line.amount > Mass::grams(0)) {
            parts.push_back(line);
            total += line.amount;
        }
    }
    if (parts.size() < 2 || half_step_error(total, step) > wanted_dose_error) {
        return std::nullopt;
    }
    constexpr auto batches = static_cast<int>(largest_batch_grams / batch_step_grams);
    for (int n = 1; n <= batches; ++n) {
        const Mass batch = Mass::grams(n * batch_step_grams);
        if (batch < total) {
            continue;
        }
        auto blend = blend_of(parts, total, step, batch);
        if (blend && blend->error <= wanted_dose_error) {
            return blend;
        }
    }
    return std::nullopt;
}

} // namespace

double half_step_error(Mass amount, Mass step) {
    return step / amount / 2;
}

Mass round_to_step(Mass amount, Mass step) {
    return step * std::floor(amount / step + 0.5 + whole_step_slack);
}

Mass round_down_to_step(Mass amount, Mass step) {
    return step * std::floor(amount / step + whole_step_slack);
}

std::vector<ScaleAdvice> advise_scale(const std::vector<ScaleLine>& lines, Mass step) {
    std::vector<ScaleAdvice> advice;
    std::optional<PreBlend> blend;
    bool looked = false;
    for (const auto& line : lines) {
        if (!line.is_cure || line.amount <= Mass::grams(0) ||
            half_step_error(line.amount, step) <= wanted_dose_error) {
            continue;
        }
        if (!looked) {
            blend = smallest_blend(lines, step);
            looked = true;
        }
        advice.push_back({line.line, line.amount, half_step_error(line.amount, step),
                          finer_step_for(line.amount, step),
                          line.can_blend ? blend : std::nullopt});
    }
    return advice;
}

} // namespace core::mix
