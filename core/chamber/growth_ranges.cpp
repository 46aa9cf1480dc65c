#include "core/chamber/growth_ranges.h"

#include <array>

namespace core::chamber {

std::span<const GrowthRange> growth_ranges() {
    using units::Temperature;
    using units::WaterActivity;
    constexpr std::string_view title = "FDA Bad Bug Book, factors affecting growth";
    constexpr std::string_view edition = "1992/1999";
    constexpr auto sure = base::Sureness::verified;
    static constexpr std::array<GrowthRange, 8> ranges{
        {{"Staphylococcus aureus", Temperature::celsius(7), Temperature::celsius(45),
          WaterActivity::fraction(0.86), title, edition, sure},
         {"Listeria monocytogenes", Temperature::celsius(0), Temperature::celsius(45),
          WaterActivity::fraction(0.92), title, edition, sure},
         {"Clostridium botulinum A, B", Temperature::celsius(10), Temperature::celsius(50),
          WaterActivity::fraction(0.93), title, edition, sure},
         {"Clostridium botulinum E", Temperature::celsius(3.3), std::nullopt,
          WaterActivity::fraction(0.965), title, edition, sure},
         {"Salmonella", Temperature::celsius(6.5), Temperature::celsius(47),
          WaterActivity::fraction(0.95), title, edition, sure},
         {"Clostridium perfringens", Temperature::celsius(10), Temperature::celsius(52),
          WaterActivity::fraction(0.93), title, edition, sure},
         {"Escherichia coli", Temperature::celsius(2.5), Temperature::celsius(45),
          WaterActivity::fraction(0.935), title, edition, sure},
         {"Yersinia enterocolitica", Temperature::celsius(1), Temperature::celsius(44),
          std::nullopt, title, edition, sure}}};
    return ranges;
}

} // namespace core::chamber
