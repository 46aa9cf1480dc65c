#include "core/store/people_and_places.h"

#include "core/store/row_table.h"

namespace core::store {

using namespace model; // NOLINT(google-build-using-namespace): every type here is a model's

template <>
struct Table<Person> {
    static constexpr std::string_view name = "person";
    static Person blank() { return {}; }
    template <class V>
    static void visit(V& v, Person& p) {
        v("name", p.name);
        v("initials", p.initials);
        v("active", p.active);
    }
};

template <>
struct Table<Chamber> {
    static constexpr std::string_view name = "chamber";
    static Chamber blank() { return {}; }
    template <class V>
    static void visit(V& v, Chamber& c) {
        v("name", c.name);
        v("kind", c.kind);
        v("low_temp_mk", c.low_temperature);
        v("high_temp_mk", c.high_temperature);
        v("low_rh_centipct", c.low_humidity);
        v("high_rh_centipct", c.high_humidity);
        v("water_capacity_mg_per_day", c.water_capacity_per_day);
        v("places", c.places);
        v("notes", c.notes);
    }
};

template <>
struct Table<Sensor> {
    static constexpr std::string_view name = "sensor";
    static Sensor blank() { return {}; }
    template <class V>
    static void visit(V& v, Sensor& s) {
        v("chamber_id", s.chamber);
        v("name", s.name);
        v("place", s.place);
        v("temp_offset_mk", s.temperature_offset);
        v("rh_offset_centipct", s.humidity_offset);
        v("check_due_day", s.check_due);
        v("log_dialect_json", s.log_dialect);
        v("active", s.active);
    }
};

template <>
struct Table<Instrument> {
    static constexpr std::string_view name = "instrument";
    static Instrument blank() { return {}; }
    template <class V>
    static void visit(V& v, Instrument& i) {
        v("kind", i.kind);
        v("name", i.name);
        v("scale_step_mg", i.scale_step);
        v("sensor_id", i.sensor);
        v("check_every_days", i.check_every_days);
        v("active", i.active);
    }
};

template <>
struct Table<CalibrationCheck> {
    static constexpr std::string_view name = "calibration_check";
    static CalibrationCheck blank() { return {.at = Instant::from_unix_seconds(0)}; }
    template <class V>
    static void visit(V& v, CalibrationCheck& c) {
        v("instrument_id", c.instrument);
        v("at_s", c.at);
        v("against", c.against);
        v("expected", c.expected);
        v("found", c.found);
        v("action_taken", c.action);
        v("by_person_id", c.by);
    }
};

SALTLOFT_STORE_ENTRY(Person)
SALTLOFT_STORE_ENTRY(Chamber)
SALTLOFT_STORE_ENTRY(Sensor)
SALTLOFT_STORE_ENTRY(Instrument)
SALTLOFT_STORE_ENTRY(CalibrationCheck)

std::vector<Person> people(Connection& book) {
    return select<Person>(book, "ORDER BY active DESC, name, id");
}
std::vector<Chamber> chambers(Connection& book) {
    return select<Chamber>(book, "ORDER BY name, id");
}
std::vector<Sensor> sensors(Connection& book) {
    return select<Sensor>(book, "ORDER BY active DESC, name, id");
}
std::vector<Instrument> instruments(Connection& book) {
    return select<Instrument>(book, "ORDER BY active DESC, name, id");
}
std::vector<CalibrationCheck> checks(Connection& book, std::optional<InstrumentId> instrument) {
    return instrument ? select<CalibrationCheck>(book, "WHERE instrument_id = ? ORDER BY at_s, id",
                                                 *instrument)
                      : select<CalibrationCheck>(book, "ORDER BY at_s, id");
}

} // namespace core::store
