#pragma once

#include "core/services/book.h"
#include "core/store/climate.h"
#include "core/store/store.h"
#include "tests/support/sample_entries.h"

#include <gtest/gtest.h>
#include <vector>

namespace saltloft::testing {

/// Puts readings into the book as one imported log of the sensor.
inline void keep_log(core::services::Book& book, core::model::SensorId sensor,
                     const std::vector<core::model::ClimateReading>& readings) {
    namespace store = core::store;
    const auto kept = book.store().change([&](store::Connection& c) {
        core::model::ClimateImport import{.sensor = sensor, .made_at = at_s(test_now_s)};
        import.file_name = "log.csv";
        const auto id = store::begin_climate_import(c, import, "{}");
        store::append_climate(c, id, readings);
        store::end_climate_import(c, id, {.at = at_s(test_now_s)});
    });
    EXPECT_TRUE(kept.has_value());
}

} // namespace saltloft::testing
