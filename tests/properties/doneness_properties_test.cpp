// Laws of composition that hold for any piece: bounds in order, shares that add up, more loss
// never wetter, more salt never a higher water activity.
#include "core/doneness/composition.h"
#include "core/doneness/salt_solution.h"
#include "core/doneness/warm_finish.h"
#include "core/doneness/water_activity.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace doneness_properties_test {
namespace {

using namespace core::doneness;
using core::units::Instant;
using core::units::Length;
using core::units::Mass;
using core::units::MassShare;
using core::units::Temperature;

double between(double low, double high) {
    constexpr int steps = 100000;
    return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

RC_GTEST_PROP(SaltSolutionLaw, MoreSaltLowersTheActivity, ()) {
    const double m = between(0, 6);
    RC_ASSERT(salt_solution_activity(m + between(0.001, 0.1)) < salt_solution_activity(m));
    RC_ASSERT(std::abs(molality_at(salt_solution_activity(m)).value() - m) < 1e-8);
}

RC_GTEST_PROP(ActivityLaw, FallsWithSaltAndRisesWithWater, ()) {
    const auto salt = MassShare::percent(between(1, 6));
    const auto water = MassShare::percent(between(35, 65));
    const auto here = activity_of_product(salt, water)->best;
    RC_ASSERT(activity_of_product(salt * 1.1, water)->best < here);
    RC_ASSERT(activity_of_product(salt, water * 1.05)->best > here);
}

EvidenceRequest any_piece(double loss) {
    const double start = between(200, 5000);
    EvidenceRequest request{.now = Instant::from_unix_seconds(0)};
    request.references.trimmed = Mass::grams(start);
    request.fat = MassShare::percent(between(0, 40));
    request.salt_dose = MassShare::percent(between(1.5, 4));
    request.weights = {{Instant::from_unix_seconds(0), Mass::grams(start * (1 - loss))}};
    return request;
}

RC_GTEST_PROP(CompositionLaw, BoundsAreInOrderAndSharesAddUp, ()) {
    const auto c = composition_of(any_piece(between(0, 0.35)));
    RC_PRE(c.has_value());
    RC_ASSERT(c->water.low <= c->water.best && c->water.best <= c->water.high);
    RC_ASSERT(c->water_activity->low <= c->water_activity->best &&
              c->water_activity->best <= c->water_activity->high);
    RC_ASSERT((c->water.best + c->salt->best).as_fraction() < 1);
    RC_ASSERT(c->lean_moisture.best >= c->water.best); // fat dilutes
}

RC_GTEST_PROP(CompositionLaw, DryingDriesAndSalts, ()) {
    auto request = any_piece(0.1);
    const auto before = composition_of(request);
    request.weights.back().net = request.weights.back().net * 0.9;
    const auto after = composition_of(request);
    RC_PRE(before && after);
    RC_ASSERT(after->water.best < before->water.best);
    RC_ASSERT(after->water_phase_salt->best > before->water_phase_salt->best);
    RC_ASSERT(after->water_activity->best < before->water_activity->best);
}

RC_GTEST_PROP(WarmLaw, BoundsAreInOrderAndMoreTakesLonger, ()) {
    static const auto hurdles = core::facts::built_in_hurdles();
    WarmFinishRequest request{.thickness = Length::millimetres(between(5, 60)),
                              .loss_now = MassShare::percent(between(10, 30)),
                              .loss_wanted = MassShare::percent(between(31, 40)),
                              .water_now = MassShare::percent(between(45, 65)),
                              .air = Temperature::celsius(between(20, 60))};
    const auto finish = warm_finish(request, hurdles);
    RC_PRE(finish.time.has_value());
    RC_ASSERT(finish.time->low < finish.time->best && finish.time->best < finish.time->high);
    request.loss_wanted = request.loss_wanted + MassShare::percent(1);
    const auto more = warm_finish(request, hurdles);
    RC_PRE(more.time.has_value());
    RC_ASSERT(more.time->best > finish.time->best);
}

} // namespace

} // namespace doneness_properties_test
