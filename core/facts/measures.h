#pragma once

#include "core/base/cited.h"
#include "core/base/interval.h"
#include "core/units/volume.h"

#include <string>
#include <string_view>
#include <vector>

namespace core::facts {

/// A named level measure: a tablespoon is 14.2 to 20 mL by country, so a spoon always has a
/// nationality. `volume.best` is the defined size; the bounds are what real spoons hold.
struct Measure {
    std::string id; ///< e.g. "us_tablespoon"
    std::string name;
    base::Interval<units::Volume> volume;
    base::Source source;
    bool is_tablespoon = false;
    bool is_teaspoon = false;
};

class Measures {
  public:
    explicit Measures(std::vector<Measure> measures = {}) : measures_(std::move(measures)) {}
    [[nodiscard]] const Measure* find(std::string_view id) const;
    [[nodiscard]] const std::vector<Measure>& all() const { return measures_; }

  private:
    std::vector<Measure> measures_;
};

} // namespace core::facts
