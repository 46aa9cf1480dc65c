#pragma once

// Internal to core/store: how one value of the model becomes one column and back. Integers with
// the unit in the column's name, words for enumerations, NULL for what is not known.

#include "core/base/id.h"
#include "core/store/codes.h"
#include "core/store/fault.h"
#include "core/units/length.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <type_traits>

namespace core::store {

/// Nearest integer, or a fault for what the book cannot hold (not finite, beyond 2^53: where
/// doubles stop being exact integers).
inline std::int64_t whole(double value) {
    constexpr double limit = 9007199254740992.0;
    if (!std::isfinite(value) || std::fabs(value) > limit) {
        refuse(base::ErrorCode::out_of_range, "a number the book cannot hold");
    }
    return std::llround(value);
}

template <class T>
struct Codec; // to_column(T) -> an integer, double or text; from_column(Column) -> T

template <>
struct Codec<std::int64_t> {
    static std::int64_t to_column(std::int64_t v) { return v; }
    static std::int64_t from_column(const SQLite::Column& c) { return c.getInt64(); }
};
template <>
struct Codec<int> {
    static std::int64_t to_column(int v) { return v; }
    static int from_column(const SQLite::Column& c) {
        const std::int64_t v = c.getInt64();
        if (v < std::numeric_limits<int>::min() || v > std::numeric_limits<int>::max()) {
            refuse(base::ErrorCode::damaged, "a number out of range", c.getName());
        }
        return static_cast<int>(v);
    }
};
template <>
struct Codec<bool> {
    static std::int64_t to_column(bool v) { return v ? 1 : 0; }
    static bool from_column(const SQLite::Column& c) { return c.getInt64() != 0; }
};
template <>
struct Codec<double> {
    static double to_column(double v) { return v; }
    static double from_column(const SQLite::Column& c) { return c.getDouble(); }
};
template <>
struct Codec<std::string> {
    static const std::string& to_column(const std::string& v) { return v; }
    static std::string from_column(const SQLite::Column& c) { return c.getString(); }
};
template <class Tag>
struct Codec<base::Id<Tag>> {
    static std::int64_t to_column(base::Id<Tag> v) { return v.row(); }
    static base::Id<Tag> from_column(const SQLite::Column& c) {
        return base::Id<Tag>::from_row(c.getInt64());
    }
};
template <class E>
requires std::is_enum_v<E>
struct Codec<E> {
    static std::string to_column(E v) { return std::string(code_of(v)); }
    static E from_column(const SQLite::Column& c) {
        const std::size_t index = index_of_code<E>(c.getText());
        if (index == Codes<E>::list.size()) {
            refuse(base::ErrorCode::damaged, "unknown word '" + c.getString() + "'", c.getName());
        }
        return static_cast<E>(index);
    }
};

/// A quantity kept as an integer in one unit: Read and Make are the kind's doors.
template <class Q, double (Q::*Read)() const, Q (*Make)(double), int Scale>
struct QuantityCodec {
    static std::int64_t to_column(Q v) { return whole((v.*Read)() * Scale); }
    static Q from_column(const SQLite::Column& c) {
        return Make(static_cast<double>(c.getInt64()) / Scale);
    }
};
using namespace units; // NOLINT(google-build-using-namespace): the list below reads better
template <>
struct Codec<Mass> : QuantityCodec<Mass, &Mass::in_milligrams, &Mass::milligrams, 1> {};
template <>
struct Codec<Length> : QuantityCodec<Length, &Length::in_millimetres, &Length::millimetres, 1000> {
};
template <>
struct Codec<MassShare> : QuantityCodec<MassShare, &MassShare::in_ppm, &MassShare::ppm, 1> {};
template <>
struct Codec<Temperature>
    : QuantityCodec<Temperature, &Temperature::in_kelvins, &Temperature::kelvins, 1000> {};
template <>
struct Codec<TemperatureStep> : QuantityCodec<TemperatureStep, &TemperatureStep::in_kelvins,
                                              &TemperatureStep::kelvins, 1000> {};
template <>
struct Codec<RelativeHumidity> : QuantityCodec<RelativeHumidity, &RelativeHumidity::in_percent,
                                               &RelativeHumidity::percent, 100> {};
template <>
struct Codec<Instant> {
    static std::int64_t to_column(Instant v) { return v.unix_seconds(); }
    static Instant from_column(const SQLite::Column& c) {
        return Instant::from_unix_seconds(c.getInt64());
    }
};
template <>
struct Codec<Day> {
    static std::int64_t to_column(Day v) { return v.days_since_epoch(); }
    static Day from_column(const SQLite::Column& c) {
        return Day::from_days_since_epoch(Codec<int>::from_column(c));
    }
};

/// Binds one value to a parameter; an absent one, or an unassigned id, is NULL.
template <class T>
void bind_value(SQLite::Statement& statement, int index, const T& value) {
    statement.bind(index, Codec<T>::to_column(value));
}
template <class Tag>
void bind_value(SQLite::Statement& statement, int index, const base::Id<Tag>& value) {
    if (value.is_assigned()) {
        statement.bind(index, value.row());
    } else {
        statement.bind(index);
    }
}
template <class T>
void bind_value(SQLite::Statement& statement, int index, const std::optional<T>& value) {
    if (value) {
        bind_value(statement, index, *value);
    } else {
        statement.bind(index);
    }
}
inline void bind_value(SQLite::Statement& statement, int index, std::string_view value) {
    statement.bind(index, std::string(value));
}
inline void bind_value(SQLite::Statement& statement, int index, const char* value) {
    statement.bind(index, std::string(value));
}

/// Reads one column into `value`.
template <class T>
void read_value(const SQLite::Column& column, T& value) {
    value = Codec<T>::from_column(column);
}
template <class T>
void read_value(const SQLite::Column& column, std::optional<T>& value) {
    if (column.isNull()) {
        value.reset();
    } else {
        value = Codec<T>::from_column(column);
    }
}

} // namespace core::store
