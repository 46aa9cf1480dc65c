#include "ui/models/month_model.h"

#include "ui/text/date_words.h"

#include <QDate>

#include <algorithm>
#include <map>
#include <set>

namespace ui::models {
namespace {

constexpr int weeks = 6; // the longest month that begins on the last day of a week needs six
constexpr int week = 7;

} // namespace

MonthModel::MonthModel(const QLocale& locale, QObject* parent)
    : QAbstractTableModel(parent), locale_(locale), cells_(std::size_t{weeks} * week) {}

void MonthModel::show_month(int year, int month, core::units::Day today,
                            const std::function<std::vector<DayEntry>(core::units::Day)>& entries) {
    beginResetModel();
    year_ = year;
    month_ = month;
    today_ = today;
    const QDate first(year, month, 1);
    const int back = (first.dayOfWeek() - locale_.firstDayOfWeek() + week) % week;
    first_ = text::to_day(first) - back;
    for (int i = 0; i < weeks * week; ++i) {
        cells_[static_cast<std::size_t>(i)] = entries(first_ + i);
    }
    for (int row = 0; row < weeks; ++row) {
        set_lanes(row);
    }
    endResetModel();
}

/// Spans take the lowest lane that is free on all their days of the week; what belongs to one day
/// follows below the lanes of that day.
void MonthModel::set_lanes(int row) {
    std::map<qint64, int> lane_of;
    std::set<std::pair<int, int>> taken; // lane, column
    const auto column_cells = [&](int column) -> std::vector<DayEntry>& {
        return cells_[static_cast<std::size_t>(row) * week + static_cast<std::size_t>(column)];
    };
    const auto covers = [&](int column, qint64 span) {
        const auto& cell = column_cells(column);
        return std::any_of(cell.begin(), cell.end(),
                           [&](const DayEntry& e) { return e.span == span; });
    };
    for (int column = 0; column < week; ++column) {
        for (auto& entry : column_cells(column)) {
            if (entry.span == 0) {
                continue;
            }
            const auto known = lane_of.find(entry.span);
            if (known != lane_of.end()) {
                entry.lane = known->second;
                continue;
            }
            int last = column;
            while (last + 1 < week && covers(last + 1, entry.span)) {
                ++last;
            }
            int lane = 0;
            const auto is_free = [&] {
                for (int c = column; c <= last; ++c) {
                    if (taken.contains({lane, c})) {
                        return false;
                    }
                }
                return true;
            };
            while (!is_free()) {
                ++lane;
            }
            for (int c = column; c <= last; ++c) {
                taken.insert({lane, c});
            }
            lane_of.emplace(entry.span, lane);
            entry.lane = lane;
        }
        int below = 0;
        for (const auto& entry : column_cells(column)) {
            below = entry.span != 0 ? std::max(below, entry.lane + 1) : below;
        }
        for (auto& entry : column_cells(column)) {
            entry.lane = entry.span != 0 ? entry.lane : below++;
        }
    }
}

core::units::Day MonthModel::day_at(const QModelIndex& index) const {
    return first_ + (index.isValid() ? index.row() * week + index.column() : 0);
}

QModelIndex MonthModel::index_of(core::units::Day day) const {
    const int at = day - first_;
    return at >= 0 && at < weeks * week ? index(at / week, at % week) : QModelIndex();
}

const std::vector<DayEntry>& MonthModel::entries_at(const QModelIndex& index) const {
    return cells_[static_cast<std::size_t>(day_at(index) - first_)];
}

int MonthModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : weeks;
}

int MonthModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : week;
}

QVariant MonthModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const QDate date = text::to_qdate(day_at(index));
    switch (role) {
    case Qt::DisplayRole:
        return locale_.toString(date.day());
    case Qt::AccessibleTextRole: {
        QStringList parts{locale_.toString(date, QLocale::LongFormat)};
        for (const auto& entry : entries_at(index)) {
            parts << entry.title;
        }
        return parts.join(QStringLiteral("; "));
    }
    case day_role:
        return day_at(index).days_since_epoch();
    case in_month_role:
        return date.month() == month_;
    case today_role:
        return day_at(index) == today_;
    default:
        return {};
    }
}

QVariant MonthModel::headerData(int section, Qt::Orientation way, int role) const {
    if (way != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    const int day = (locale_.firstDayOfWeek() - 1 + section) % week + 1;
    return locale_.standaloneDayName(day, QLocale::ShortFormat);
}

} // namespace ui::models
