#pragma once

#include "core/model/ids.h"
#include "core/units/mass.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <optional>
#include <string>

namespace core::model {

enum class ChamberKind { fridge, cabinet, room, outdoors, freezer, other };

struct Chamber {
    ChamberId id;
    std::string name;
    ChamberKind kind = ChamberKind::cabinet;
    std::optional<units::Temperature> low_temperature;
    std::optional<units::Temperature> high_temperature;
    std::optional<units::RelativeHumidity> low_humidity;
    std::optional<units::RelativeHumidity> high_humidity;
    std::optional<units::Mass> water_capacity_per_day; ///< water it can carry out a day
    int places = 0;                                    ///< hooks; 0 when not counted
    std::string notes;
};

struct Sensor {
    SensorId id;
    ChamberId chamber;
    std::string name;
    std::string place;
    std::optional<units::TemperatureStep> temperature_offset; ///< added to a reading
    std::optional<units::RelativeHumidity> humidity_offset;   ///< added to a reading
    std::optional<units::Day> check_due;
    std::string log_dialect; ///< how its files read, as detected and confirmed (JSON)
    bool active = true;
};

struct ClimateReading {
    units::Instant at;
    std::optional<units::Temperature> temperature;
    std::optional<units::RelativeHumidity> humidity;
};

enum class InstrumentKind { scale, thermometer, hygrometer, ph_meter, aw_meter, other };

/// Something that measures, with its calibration record.
struct Instrument {
    InstrumentId id;
    InstrumentKind kind = InstrumentKind::scale;
    std::string name;
    std::optional<units::Mass> scale_step;
    std::optional<SensorId> sensor;
    std::optional<int> check_every_days;
    bool active = true;
};

struct CalibrationCheck {
    CheckId id;
    InstrumentId instrument;
    units::Instant at;
    std::string against; ///< "ice water", "salt slurry 75 %", "500 g test weight"
    double expected = 0; ///< in the instrument's own unit: g, C or % RH
    double found = 0;
    std::string action;
    PersonId by;
};

} // namespace core::model
