// Any bytes through dialect detection and the streaming reader: no crash, and memory that does not
// depend on the input. The first byte chooses how the rest is cut into chunks.
#include "core/chamber/detect_dialect.h"
#include "core/chamber/log_reader.h"

#include <cstdint>
#include <cstdlib>

using namespace core::chamber;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size < 2) {
        return 0;
    }
    const std::size_t chunk = 1 + data[0];
    const std::string_view bytes(reinterpret_cast<const char*>(data + 1), size - 1);
    DialectHints hints;
    hints.zone = data[0] % 2 == 0 ? "Europe/Rome" : "UTC";
    const std::string_view pieces[] = {bytes, bytes.substr(bytes.size() / 2)};
    const auto detection = detect_dialect(pieces, hints);
    if (!detection) {
        return 0;
    }
    if (dialect_from_json(to_json(detection->dialect)) != detection->dialect) {
        std::abort();
    }
    std::int64_t readings = 0;
    const ReadingSink sink = [&](auto part, const LogTally&) -> core::base::Status {
        for (const auto& reading : part) {
            if (!reading.temperature && !reading.humidity) {
                std::abort(); // a reading says something
            }
        }
        readings += static_cast<std::int64_t>(part.size());
        return {};
    };
    auto reader = LogReader::make(detection->dialect, sink, 64);
    if (!reader) {
        return 0;
    }
    for (std::size_t at = 0; at < bytes.size(); at += chunk) {
        (void)reader->feed(bytes.substr(at, chunk));
    }
    (void)reader->finish();
    const auto& tally = reader->tally();
    const std::int64_t accounted = readings + tally.rejected_lines() + tally.blank_lines;
    if (tally.readings != readings || accounted > tally.lines ||
        tally.lines - accounted > detection->dialect.lines_before_data) {
        std::abort(); // every line is a reading, a reject, blank, or above the data
    }
    return 0;
}
