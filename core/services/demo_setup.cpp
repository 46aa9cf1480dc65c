#include "core/services/demo_teller.h"

namespace core::services::demo {

using namespace actions; // NOLINT(google-build-using-namespace): commands by the dozen
using model::EntryKind;
using units::RelativeHumidity;
using units::Temperature;

namespace {
constexpr int before_all = 244; // days ago: the shelves are put up
} // namespace

void Teller::set_up() {
    const auto now = at(before_all, 8);
    for (const auto& [key, value] : std::map<std::string, std::string>{
             {"demo", "1"},
             {"title", "Invented book: Saltmarsh Loft, a producer that does not exist"},
             {"currency", "EUR"}}) {
        enter(SetPreference{key, value}, now);
    }
    add_people();
    add_chambers();
    add_instruments();
    add_recipes_and_lots();
}

void Teller::add_people() {
    for (const auto& [name, initials] :
         {std::pair{"Ada Brine (invented)", "AB"}, {"Tom Hook (invented)", "TH"}}) {
        people_.push_back(enter(AddPerson{{.name = name, .initials = initials}}, at(before_all, 8))
                              .id<model::PersonId>(EntryKind::person));
    }
}

void Teller::add_chambers() {
    const model::Chamber cellar{.name = "North cellar",
                                .kind = model::ChamberKind::room,
                                .low_temperature = Temperature::celsius(11),
                                .high_temperature = Temperature::celsius(15),
                                .low_humidity = RelativeHumidity::percent(70),
                                .high_humidity = RelativeHumidity::percent(80),
                                .water_capacity_per_day = grams(900),
                                .places = 24,
                                .notes = "Invented. Stone cellar with a small cooler and a fan."};
    const model::Chamber cabinet{.name = "Cabinet",
                                 .kind = model::ChamberKind::cabinet,
                                 .low_temperature = Temperature::celsius(12),
                                 .high_temperature = Temperature::celsius(14),
                                 .low_humidity = RelativeHumidity::percent(72),
                                 .high_humidity = RelativeHumidity::percent(78),
                                 .water_capacity_per_day = grams(350),
                                 .places = 10,
                                 .notes = "Invented. A converted fridge with a controller."};
    for (const model::Chamber& chamber : {cellar, cabinet}) {
        chambers_.push_back(enter(AddChamber{chamber}, at(before_all, 8.2))
                                .id<model::ChamberId>(EntryKind::chamber));
    }
}

void Teller::add_instruments() {
    const auto now = at(before_all, 8.5);
    const auto sensor = [&](model::ChamberId chamber, const char* name, const char* place) {
        return enter(AddSensor{{.chamber = chamber,
                                .name = name,
                                .place = place,
                                .humidity_offset = RelativeHumidity::percent(1.5),
                                .check_due = day(-20)}},
                     now)
            .id<model::SensorId>(EntryKind::sensor);
    };
    const auto cellar = sensor(chambers_[0], "Cellar logger", "middle rail, by the door");
    const auto cabinet = sensor(chambers_[1], "Cabinet logger", "top shelf");
    sensors_ = {cellar, cabinet};
    climate_until_ = {at(before_all, 12), at(before_all, 12)};
    const std::vector<model::Instrument> all{
        {.kind = model::InstrumentKind::scale,
         .name = "Bench scale",
         .scale_step = grams(1),
         .check_every_days = 60},
        {.kind = model::InstrumentKind::scale,
         .name = "Fine scale",
         .scale_step = grams(0.1),
         .check_every_days = 60},
        {.kind = model::InstrumentKind::thermometer,
         .name = "Probe thermometer",
         .check_every_days = 90},
        {.kind = model::InstrumentKind::hygrometer,
         .name = "Cellar logger",
         .sensor = cellar,
         .check_every_days = 180},
        {.kind = model::InstrumentKind::hygrometer,
         .name = "Cabinet logger",
         .sensor = cabinet,
         .check_every_days = 180},
    };
    for (const model::Instrument& instrument : all) {
        instruments_.push_back(
            enter(AddInstrument{instrument}, now).id<model::InstrumentId>(EntryKind::instrument));
    }
}

void Teller::add_recipes_and_lots() {
    const auto now = at(before_all, 9);
    for (const RecipeStory& recipe : demo::recipes()) {
        recipes_.push_back(enter(AddRecipe{recipe.name, recipe.document}, now)
                               .id<model::RecipeVersionId>(EntryKind::recipe_version));
    }
    const auto lot = [&](const char* id, const char* name, const char* code) {
        const auto ingredient = enter(AddIngredient{{.catalogue_id = id, .name = name}}, now)
                                    .id<model::IngredientId>(EntryKind::ingredient);
        lots_.push_back(enter(AddLot{{.ingredient = ingredient,
                                      .code = code,
                                      .supplier = "Invented salt merchant"}},
                              now)
                            .id<model::LotId>(EntryKind::lot));
    };
    lot("fine_sea_salt", "Fine sea salt", "S-0412");
    lot("cure_no2", "Curing salt no. 2", "C2-118");
    lot("black_pepper", "Black pepper", "P-77");
}

void Teller::calibrate(int days_ago) {
    struct Check {
        std::size_t instrument;
        int every;
        const char* against;
        double expected;
        double error;
    };
    static const std::vector<Check> checks{
        {0, 60, "1000 g test weight", 1000, 0.6},
        {1, 60, "100 g test weight", 100, 0.05},
        {2, 90, "ice water", 0, 0.15},
        {3, 120, "salt slurry in a sealed bag", 75, 1.4},
        {4, 120, "salt slurry in a sealed bag", 75, 2.0},
    };
    for (const Check& check : checks) {
        // The last round of each is left out for the fine scale: one check is overdue.
        const bool due = days_ago <= 240 && (240 - days_ago) % check.every == 0;
        if (!due || !has_come(at(days_ago, 17.1)) || (check.instrument == 1 && days_ago < 70)) {
            continue;
        }
        const double found = check.expected + check.error * noise_.normal();
        const bool off = std::fabs(found - check.expected) > 2 * check.error;
        enter(AddCheck{{.instrument = instruments_[check.instrument],
                        .at = at(days_ago, 17),
                        .against = check.against,
                        .expected = check.expected,
                        .found = std::round(found * 100) / 100,
                        .action = off ? "Read twice more, offset noted" : "",
                        .by = people_[1]}},
              at(days_ago, 17.1), "", true);
    }
}

} // namespace core::services::demo
