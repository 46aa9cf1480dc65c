#pragma once

#include "core/base/cited.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"
#include "core/units/volume.h"

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace core::model {

enum class Severity {
    note,    ///< worth knowing
    caution, ///< a person may accept it, by name; the acceptance is recorded
    stop,    ///< blocks acceptance until mended
};

/// A quantity inside a finding, printed by ui/text in the user's units.
using FindingValue =
    std::variant<double, std::string, units::Mass, units::MassShare, units::Volume,
                 units::Temperature, units::RelativeHumidity, units::Duration, units::Instant>;

/// Something the program noticed, as data. The sentence is made in ui/text from `code` and
/// `values`; `code` is also the stable name in machine-readable output ("weighing_off_curve").
struct Finding {
    std::string code;
    Severity severity = Severity::note;
    std::string place;                          ///< the line, field or piece it is about
    std::map<std::string, FindingValue> values; ///< the sentence's blanks, by name
    std::optional<units::Instant> at;           ///< the moment it is about (a weighing, a day)
    std::optional<base::Source> source;         ///< the limit or rule it was checked against
};

using Findings = std::vector<Finding>;

} // namespace core::model
