#pragma once

#include "core/exchange/book_document.h"

/// A value to read into, for each kind: quantities have no default of their own, because zero is
/// a quantity too. Every field without a usual value is overwritten or the reading fails.
namespace core::exchange::detail {

template <class T>
T blank() {
    return T{};
}
template <>
inline units::Mass blank() {
    return units::Mass::grams(0);
}
template <>
inline units::MassShare blank() {
    return units::MassShare::percent(0);
}
template <>
inline units::Length blank() {
    return units::Length::millimetres(0);
}
template <>
inline units::Temperature blank() {
    return units::Temperature::kelvins(0);
}
template <>
inline units::TemperatureStep blank() {
    return units::TemperatureStep::kelvins(0);
}
template <>
inline units::RelativeHumidity blank() {
    return units::RelativeHumidity::percent(0);
}
template <>
inline units::Instant blank() {
    return units::Instant::from_unix_seconds(0);
}
template <>
inline units::Day blank() {
    return units::Day::from_days_since_epoch(0);
}
template <>
inline model::Target blank() {
    return {blank<units::MassShare>()};
}
template <>
inline Stamp blank() {
    return {blank<units::Instant>(), {}, {}};
}
template <>
inline model::CalibrationCheck blank() {
    return {{}, {}, blank<units::Instant>(), {}, 0, 0, {}, {}};
}
template <>
inline model::RecipeVersion blank() {
    return {{}, {}, 1, blank<units::Instant>(), {}, {}};
}
template <>
inline model::Batch blank() {
    return {{}, {}, {}, {}, {}, {}, {}, {}, blank<units::Day>(), {}, {}, {}, {}, false, {}};
}
template <>
inline model::Weighing blank() {
    return {{},
            {},
            blank<units::Instant>(),
            blank<units::Mass>(),
            blank<units::Mass>(),
            {},
            {},
            false,
            {},
            {},
            {},
            false};
}
template <>
inline model::PieceEvent blank() {
    return {{}, {}, {}, blank<units::Instant>(), {}, {}, {}, {}, {}, {}, {}, false};
}
template <>
inline model::Stage blank() {
    return {{}, {}, 0, {}, blank<units::Day>(), blank<units::Day>(), {}, {}, {}, {}};
}
template <>
inline model::Acceptance blank() {
    return {{}, {}, {}, {}, {}, {}, blank<units::Instant>(), {}, {}};
}
template <>
inline model::Note blank() {
    return {{}, {}, {}, blank<units::Instant>(), {}, {}, {}, {}};
}
template <>
inline model::Decision blank() {
    return {{}, {}, blank<units::Instant>(), {}, {}, {}, {}, {}};
}
template <>
inline model::Pack blank() {
    return {{}, {}, {}, {},   blank<units::Mass>(), blank<units::Mass>(), blank<units::Day>(), {},
            {}, {}, {}, false};
}
template <>
inline model::PackMove blank() {
    return {{}, {}, {}, blank<units::Mass>(), blank<units::Instant>(), {}, {}};
}
template <>
inline model::TaskTick blank() {
    return {{}, {}, blank<units::Instant>(), {}, false, {}, {}, {}, {}};
}
template <>
inline model::LoggedStep blank() {
    return {{}, {}, {}, {}, {}, blank<units::Instant>(), {}, {}};
}

} // namespace core::exchange::detail
