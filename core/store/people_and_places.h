#pragma once

#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "core/store/entries.h"

#include <vector>

/// People, chambers, sensors, instruments and their checks. All throw (see fault.h).
namespace core::store {

std::vector<model::Person> people(Connection& book);          ///< active ones first, by name
std::vector<model::Chamber> chambers(Connection& book);       ///< by name
std::vector<model::Sensor> sensors(Connection& book);         ///< active ones first, by name
std::vector<model::Instrument> instruments(Connection& book); ///< active ones first, by name
/// By time; of all instruments when `instrument` is absent.
std::vector<model::CalibrationCheck> checks(Connection& book,
                                            std::optional<model::InstrumentId> instrument);

} // namespace core::store
