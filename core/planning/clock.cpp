#include "core/planning/clock.h"

#include <algorithm>
#include <cmath>

namespace core::planning {
namespace {

using units::Duration;
using units::Instant;

std::vector<TimeSpan> frozen_spans(std::vector<model::PieceEvent> events, Instant end) {
    std::stable_sort(events.begin(), events.end(),
                     [](const auto& a, const auto& b) { return a.at < b.at; });
    std::vector<TimeSpan> spans;
    bool frozen = false;
    for (const auto& event : events) {
        if (event.withdrawn) {
            continue;
        }
        if (event.kind == model::EventKind::frozen && !frozen) {
            spans.push_back({event.at, std::max(event.at, end)}); // until thawed
            frozen = true;
        } else if (event.kind == model::EventKind::thawed && frozen) {
            spans.back().to = event.at;
            frozen = false;
        }
    }
    return spans;
}

/// Seconds of [from, to] that lie in the union of the spans.
Duration covered(std::vector<TimeSpan> spans, Instant from, Instant to) {
    std::sort(spans.begin(), spans.end(),
              [](const TimeSpan& a, const TimeSpan& b) { return a.from < b.from; });
    Duration total = Duration::seconds(0);
    Instant reached = from;
    for (const auto& span : spans) {
        const Instant begin = std::max(span.from, reached);
        const Instant end = std::min(span.to, to);
        if (end > begin) {
            total += end - begin;
            reached = end;
        }
    }
    return total;
}

bool covers(const std::vector<TimeSpan>& spans, Instant at) {
    return std::any_of(spans.begin(), spans.end(), [&](const TimeSpan& span) {
        return span.from <= at && at <= span.to && span.from < span.to;
    });
}

template <class Q>
BandNow::Range<Q> range_at(const model::Band<Q>& band, double share) {
    return {band.low_at_start + (band.low_at_end - band.low_at_start) * share,
            band.high_at_start + (band.high_at_end - band.high_at_start) * share};
}

template <class Q>
bool in_pulse(const std::optional<model::Pulse<Q>>& pulse, Duration since) {
    if (!pulse || pulse->every <= Duration::seconds(0)) {
        return false;
    }
    // The rest closes each period: a stage begins with its own band.
    const double into = std::fmod(since.in_seconds(), pulse->every.in_seconds());
    return into >= (pulse->every - pulse->lasting).in_seconds();
}

template <class Q>
std::optional<BandNow::Range<Q>> band_now(const std::optional<model::Band<Q>>& band,
                                          const std::optional<model::Pulse<Q>>& pulse,
                                          Duration since, double share) {
    if (in_pulse(pulse, since)) {
        return BandNow::Range<Q>{pulse->low, pulse->high};
    }
    return band ? std::optional(range_at(*band, share)) : std::nullopt;
}

template <class Q>
bool outside(const std::optional<BandNow::Range<Q>>& range, const std::optional<Q>& value) {
    return range && value && (*value < range->low || *value > range->high);
}

} // namespace

BandNow band_at(const model::StageTemplate& stage, Duration since, Duration length) {
    const double share = length > Duration::seconds(0) ? std::clamp(since / length, 0.0, 1.0) : 0.0;
    return {band_now(stage.temperature, stage.temperature_pulse, since, share),
            band_now(stage.humidity, stage.humidity_pulse, since, share)};
}

std::optional<StageClock> read_clock(const model::Stage& stage,
                                     const std::vector<model::PieceEvent>& events,
                                     const std::vector<TimeSpan>& out_of_band, Instant now) {
    if (!stage.started_at || *stage.started_at > now) {
        return std::nullopt;
    }
    const Instant start = *stage.started_at;
    const Instant end = std::max(start, stage.ended_at.value_or(now));
    const auto frozen =
        stage.what.pauses_when_frozen ? frozen_spans(events, end) : std::vector<TimeSpan>{};
    std::vector<TimeSpan> all = frozen;
    if (stage.what.pauses_out_of_band) {
        all.insert(all.end(), out_of_band.begin(), out_of_band.end());
    }
    const Duration paused = covered(all, start, end);
    const Duration paused_frozen = covered(frozen, start, end);
    return StageClock{end - start - paused, paused_frozen, paused - paused_frozen,
                      !stage.ended_at && covers(all, end)};
}

std::vector<TimeSpan> spans_out_of_band(const model::StageTemplate& stage, Instant start,
                                        Duration length,
                                        const std::vector<model::ClimateReading>& readings,
                                        Duration longest_gap) {
    std::vector<TimeSpan> spans;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const auto& reading = readings[i];
        if (reading.at < start) {
            continue;
        }
        const BandNow band = band_at(stage, reading.at - start, length);
        if (!outside(band.temperature, reading.temperature) &&
            !outside(band.humidity, reading.humidity)) {
            continue;
        }
        const Instant longest = reading.at + longest_gap;
        const Instant to =
            i + 1 < readings.size() ? std::min(longest, readings[i + 1].at) : reading.at;
        if (to <= reading.at) {
            continue;
        }
        if (!spans.empty() && spans.back().to == reading.at) {
            spans.back().to = to;
        } else {
            spans.push_back({reading.at, to});
        }
    }
    return spans;
}

} // namespace core::planning
