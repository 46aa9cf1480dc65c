#pragma once

// Internal to the demo book: chance that comes out the same on every machine. The standard
// library's distributions differ between implementations; its engines do not.

#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>

namespace core::services::demo {

class Noise {
  public:
    explicit Noise(std::uint64_t seed) : engine_(seed) {}
    /// 0 to 1, without 1.
    double uniform() { return static_cast<double>(engine_() >> 11U) * 0x1.0p-53; }
    /// Standard normal (Box and Muller 1958).
    double normal() {
        const double radius = std::sqrt(-2 * std::log(1 - uniform()));
        return radius * std::cos(2 * std::numbers::pi * uniform());
    }
    bool chance(double probability) { return uniform() < probability; }

  private:
    std::mt19937_64 engine_;
};

} // namespace core::services::demo
