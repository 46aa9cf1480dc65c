// The weighings and moisture importers on any bytes: they may refuse, never crash; and what the
// writer makes of what was read reads back as much.
#include "core/exchange/moisture_csv.h"
#include "core/exchange/weighings_csv.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace core::exchange;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size); // NOLINT
    WeighingImport import;
    import.zone = core::units::Zone::utc();
    if (const auto read = read_weighings_csv(bytes, import)) {
        std::vector<WeighingLine> lines;
        for (const ImportedWeighing& row : read->weighings) {
            lines.push_back({row.piece, "", row.weighing});
        }
        import.max_mass = import.max_mass * 2; // rounding must not push a row over the limit
        const auto again = read_weighings_csv(write_weighings_csv(lines), import);
        // Weights below half a milligram, and tares within a milligram of the weight, round to
        // what a reader refuses; nothing else may be lost.
        if (!again || again->weighings.size() + again->rejects.size() != lines.size()) {
            std::abort();
        }
    }
    (void)read_moisture_csv(bytes);
    return 0;
}
