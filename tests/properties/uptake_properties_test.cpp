// Laws of diffusion that hold for any piece: monotone, bounded, scaling with the square of the
// thickness, conserving salt.
#include "core/uptake/cure_time.h"
#include "core/uptake/piece_uptake.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace uptake_properties_test {
namespace {

using namespace core::uptake;
using core::model::Form;
using core::units::Duration;
using core::units::Length;
using core::units::MassShare;
using core::units::Temperature;

double between(double low, double high) {
    constexpr int steps = 100000;
    return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

Body any_body() {
    return *rc::gen::element(Body::sheet, Body::cylinder, Body::sphere);
}

DiffusionSeries any_series(Body body) {
    switch (*rc::gen::inRange(0, 3)) {
    case 0:
        return DiffusionSeries::constant_surface(body);
    case 1:
        return DiffusionSeries::surface_resistance(body, std::pow(10, between(-2, 3)));
    default:
        return DiffusionSeries::limited_volume(body, std::pow(10, between(-2, 2)));
    }
}

RC_GTEST_PROP(Diffusion, UptakeRisesWithinBounds, ()) {
    const auto series = any_series(any_body());
    const double fo = std::pow(10, between(-6, 1));
    const double later = fo * between(1.0, 3.0);
    RC_ASSERT(series.uptake(fo) >= 0 && series.uptake(later) <= 1);
    RC_ASSERT(series.uptake(fo) <= series.uptake(later) + 1e-12);
}

RC_GTEST_PROP(Diffusion, CentreRisesAndNeverPassesTheMean, ()) {
    const auto body = any_body();
    const auto series = any_series(body);
    const double fo = std::pow(10, between(-3, 1));
    RC_ASSERT(series.centre(fo) <= series.centre(fo * between(1, 2)) + 1e-9);
    RC_ASSERT(series.centre(fo) <= series.uptake(fo) + 1e-9);
}

RC_GTEST_PROP(Diffusion, RootsRiseWithoutGaps, ()) {
    const auto series = any_series(any_body());
    const auto& roots = series.roots();
    RC_ASSERT(roots.front() > 0);
    for (std::size_t i = 1; i < roots.size(); ++i) {
        const double gap = roots[i] - roots[i - 1];
        // Neighbours are about pi apart; a missed root would leave 2 pi, a double one 0.
        RC_ASSERT(gap > 1.4 && gap < 1.6 * 3.14159265);
    }
}

RC_GTEST_PROP(Diffusion, RestKeepsTheMean, ()) {
    const auto body = any_body();
    const RestingSeries series(body);
    const double salted = between(0.001, 0.5);
    const double rest = between(0.01, 3);
    // The centre moves to the mean from below and stays there.
    const double centre = 1 - series.centre_deficit(salted, rest);
    const double mean = 1 - series.mean_deficit(salted);
    RC_ASSERT(centre <= mean + 1e-9);
    RC_ASSERT(centre <= 1 - series.centre_deficit(salted, rest * 2) + 1e-9);
}

CureRequest any_request() {
    CureRequest request{.form = *rc::gen::element(Form::slab, Form::cylinder, Form::round),
                        .thickness = Length::millimetres(between(10, 200))};
    request.temperature = Temperature::celsius(between(0, 12));
    request.salt = MassShare::percent(between(1.5, 4));
    request.method =
        *rc::gen::element(CureMethod::weighed, CureMethod::excess_salt, CureMethod::immersion);
    return request;
}

RC_GTEST_PROP(Cure, TimeGoesWithTheSquareOfTheThickness, ()) {
    auto request = any_request();
    const auto thin = estimate_cure(request);
    const double factor = between(1.0, 2.0);
    request.thickness = request.thickness * factor;
    const auto thick = estimate_cure(request);
    RC_ASSERT(std::abs(thick.even->best / thin.even->best / (factor * factor) - 1) < 1e-6);
    RC_ASSERT(std::abs(thick.salt_in->best / thin.salt_in->best / (factor * factor) - 1) < 1e-6);
}

RC_GTEST_PROP(Cure, WarmerIsFasterAndBoundsAreInOrder, ()) {
    auto request = any_request();
    const auto cool = estimate_cure(request);
    RC_ASSERT(cool.even->low < cool.even->best && cool.even->best < cool.even->high);
    request.temperature =
        request.temperature + core::units::TemperatureStep::kelvins(between(0.5, 10));
    RC_ASSERT(estimate_cure(request).even->best < cool.even->best);
}

RC_GTEST_PROP(Cure, SplittingTheTimeIntoSpellsChangesNothing, ()) {
    auto request = any_request();
    const auto whole = estimate_cure(request);
    request.spells = {{Duration::days(between(0, 5)), request.temperature},
                      {Duration::days(between(0, 5)), request.temperature}};
    RC_ASSERT(std::abs(estimate_cure(request).even->best / whole.even->best - 1) < 1e-9);
}

RC_GTEST_PROP(Cure, NoSaltIsMade, ()) {
    const auto request = any_request();
    const auto estimate = estimate_cure(request);
    for (const auto& point : estimate.curve) {
        if (request.method != CureMethod::excess_salt) {
            RC_ASSERT(point.mean.high <= request.salt + MassShare::ppm(1));
        }
        RC_ASSERT(point.mean.low >= MassShare::fraction(0));
    }
}

} // namespace

} // namespace uptake_properties_test
