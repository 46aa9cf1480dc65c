#pragma once

#include <QString>
#include <QVector>

namespace ui::presenters {

/// The limit sets that can be chosen, for a drop-down.
struct LimitChoice {
    QString id;
    QString name; ///< "Jurisdiction: name"
    QString note; ///< unverified parts, dates in force
};
QVector<LimitChoice> limit_choices();

} // namespace ui::presenters
