#include "core/drying/physical_model.h"

#include "tests/support/virtual_piece.h"

#include <cmath>
#include <gtest/gtest.h>

namespace core::drying {
namespace {

AirPath steady_air(double days, double humidity) {
    // No readings: the usual air, 13 C; only the humidity is set.
    AirPath path = make_air_path({}, units::Instant::from_unix_seconds(0),
                                 units::Instant::from_unix_seconds(0), days);
    for (AirStep& s : path.steps) {
        s.humidity = humidity;
    }
    path.ahead_humidity = humidity;
    return path;
}

Kinetics usual() {
    return {.log_diffusivity = std::log(8e-11),
            .slackening = 1.5,
            .log_film = std::log(3e-3),
            .water = 0.66,
            .log_isotherm = std::log(0.22),
            .humidity_offset = 0,
            .shrinkage = 0};
}

LossCurve run(const Kinetics& k, const Body& body, const AirPath& air, double days) {
    LossCurve out;
    PhysicalModel(body, air).run(k, {}, days, 0, 0, out);
    return out;
}

/// The analytical uptake of a plane sheet, cylinder and sphere with constant surface (Crank, The
/// Mathematics of Diffusion; values computed to 12 digits, reference notes section 4).
TEST(PhysicalModel, FollowsTheAnalyticalUptakeWhereTheFilmIsNoHindrance) {
    struct Case {
        Geometry geometry;
        double fourier;
        double uptake;
    };
    const Case cases[] = {{Geometry::slab, 0.05, 0.252313252178},
                          {Geometry::slab, 0.2, 0.504087820203},
                          {Geometry::cylinder, 0.1, 0.605824193967},
                          {Geometry::round, 0.1, 0.770478738026}};
    for (const Case& c : cases) {
        const Body body{.geometry = c.geometry, .depth_m = 0.03, .fat = 0};
        Kinetics k = usual();
        k.water = 0.73;
        k.slackening = 0; // constant diffusivity
        k.log_film = std::log(10.0);
        const AirPath air = steady_air(600, 0.75);
        const LossCurve curve = run(k, body, air, 600);
        const double day = c.fourier * 0.03 * 0.03 / 8e-11 / 86400;
        const double final_loss = PhysicalModel(body, air).levelling_loss(k, {}, 0.75);
        EXPECT_NEAR(curve.at(day) / final_loss, c.uptake, 0.012)
            << "geometry " << static_cast<int>(c.geometry) << " at Fourier " << c.fourier;
    }
}

/// Against an explicit scheme on 30 cells that shares no code with the model.
TEST(PhysicalModel, AgreesWithAnIndependentFineGrid) {
    using namespace tests::support;
    for (const double strength : {0.0, 1.0, 2.5}) {
        for (const double film : {1e-3, 4e-3}) {
            for (const auto form : {VirtualForm::slab, VirtualForm::cylinder, VirtualForm::round}) {
                VirtualPieceSpec s;
                s.form = form;
                s.law = DiffusivityLaw::exponential;
                s.law_strength = strength;
                s.isotherm = IsothermLaw::oswin_salted;
                s.isotherm_a = 0.22;
                s.isotherm_b = 0.55;
                s.wet_activity = 0.975;
                s.fat_share = 0.1;
                s.lean_water = 0.73;
                s.diffusivity_m2_s = 8e-11;
                s.film_m_s = film;
                s.weather = {std::vector<double>(200, 13.0), std::vector<double>(200, 70.0)};
                const VirtualCourse course = run_explicit(s, 150);
                Kinetics k = usual();
                k.slackening = strength;
                k.log_film = std::log(film);
                k.water = 0.9 * 0.73 + 0.1 * 0.08;
                const Body body{.geometry = static_cast<Geometry>(static_cast<int>(form)),
                                .depth_m = s.thickness_m / 2,
                                .fat = 0.1};
                const AirPath air = steady_air(200, 0.70);
                const LossCurve curve = run(k, body, air, 150);
                for (const double day : {2.0, 7.0, 20.0, 60.0, 140.0}) {
                    EXPECT_NEAR(curve.at(day), course.loss_at(day), 0.005)
                        << "day " << day << " slackening " << strength << " film " << film;
                }
            }
        }
    }
}

TEST(PhysicalModel, LevelsOffWhereItsIsothermMeetsTheAir) {
    const Body body{.geometry = Geometry::round, .depth_m = 0.01, .fat = 0.1};
    const AirPath air = steady_air(900, 0.72);
    const LossCurve curve = run(usual(), body, air, 900);
    EXPECT_NEAR(curve.loss.back(), PhysicalModel(body, air).levelling_loss(usual(), {}, 0.72),
                1e-3);
}

TEST(PhysicalModel, WetterAirLevelsOffEarlierAndFatGivesNothingUp) {
    const AirPath air = steady_air(10, 0.75);
    const Body lean{.geometry = Geometry::slab, .depth_m = 0.03, .fat = 0};
    const PhysicalModel model(lean, air);
    EXPECT_GT(model.levelling_loss(usual(), {}, 0.65), model.levelling_loss(usual(), {}, 0.85));
    Kinetics fatty = usual();
    fatty.water = 0.40;
    EXPECT_LT(model.levelling_loss(fatty, {}, 0.75), 0.40);
}

TEST(PhysicalModel, TakesWaterUpFromAirWetterThanTheMeat) {
    const Body body{.geometry = Geometry::slab, .depth_m = 0.02, .fat = 0};
    AirPath air = steady_air(120, 0.65);
    double t = 0;
    for (AirStep& s : air.steps) {
        s.humidity = t > 60 ? 0.95 : 0.65;
        t += s.days;
    }
    const LossCurve curve = run(usual(), body, air, 110);
    EXPECT_LT(curve.at(105), curve.at(60));
}

TEST(PhysicalModel, StartsAtTheLossAlreadyDried) {
    const Body body{.geometry = Geometry::slab, .depth_m = 0.03, .fat = 0.1};
    const AirPath air = steady_air(120, 0.75);
    const LossCurve whole = run(usual(), body, air, 100);
    LossCurve later;
    PhysicalModel(body, air).run(usual(), {.cure_loss = 0, .dried_loss = 0.15}, 60, 0, 0, later);
    EXPECT_NEAR(later.at(0), 0.15, 1e-9);
    const double day = *whole.crossing(0.15);
    EXPECT_NEAR(later.at(40), whole.at(day + 40), 0.006);
}

} // namespace
} // namespace core::drying
