#include "core/planning/routine_days.h"

#include <algorithm>
#include <cmath>

namespace core::planning {

std::vector<RoutineDay> routine_days(const model::StageTemplate& stage, units::Day start,
                                     units::Day end) {
    constexpr double morning = 9.0 / 24.0;
    constexpr double slip = 1e-6;
    const auto day_after = [&](double days) {
        return start + static_cast<int>(std::floor(morning + days + slip));
    };
    std::vector<RoutineDay> out;
    for (std::size_t i = 0; i < stage.routines.size(); ++i) {
        const auto& routine = stage.routines[i];
        const std::string series = std::to_string(i);
        int number = 1;
        for (const auto& at : routine.at) {
            if (const units::Day day = day_after(at.in_days()); day < end) {
                out.push_back({routine.verb, series + "a", number, day});
            }
            ++number;
        }
        if (!routine.every || *routine.every <= units::Duration::days(0)) {
            continue;
        }
        const double every = routine.every->in_days();
        const double first = routine.first_after.value_or(*routine.every).in_days();
        for (int n = 0;; ++n) {
            const units::Day day = day_after(first + n * every);
            if (day >= end) {
                break;
            }
            out.push_back({routine.verb, series, n + 1, day});
        }
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const RoutineDay& a, const RoutineDay& b) { return a.day < b.day; });
    return out;
}

} // namespace core::planning
