#pragma once

#include "core/doneness/warm_finish.h"
#include "core/services/book.h"
#include "ui/presenters/piece_line.h"
#include "ui/text/style.h"

#include <QString>
#include <QStringList>
#include <QVector>
#include <optional>

/// Finishing a piece in a dehydrator or a low oven: what the book knows of it, the answer in
/// words, and what is kept of it. There is no verdict in here.
namespace ui::presenters {

/// What the book knows of the piece; what is absent the person must say.
struct WarmStart {
    core::model::Form form = core::model::Form::slab;
    core::model::SkinSide skin = core::model::SkinSide::none;
    std::optional<core::units::Length> thickness;
    std::optional<core::units::MassShare> loss_now; ///< of the target's reference weight
    std::optional<core::units::MassShare> wanted;   ///< its target
    std::optional<core::units::MassShare> water_now;
    /// Its own pace where it hangs; only with both is it used.
    std::optional<core::units::MassShare> rate_per_day;
    std::optional<core::units::MassShare> levels_off;
    std::optional<core::units::Temperature> chamber;
    std::optional<core::base::Interval<core::units::WaterActivity>> activity;
};
WarmStart warm_start(const core::services::Book& book, const PieceLine& line,
                     core::units::Instant now);

/// What the person typed.
struct WarmEntry {
    core::units::Temperature air;
    core::units::RelativeHumidity humidity;
    core::units::MassShare wanted;
    core::units::MassShare water_now;
    core::units::Length thickness;
};
/// Absent without a loss to start from.
std::optional<core::doneness::WarmFinish> warm_answer(const WarmStart& start,
                                                      const WarmEntry& entry);

/// "About 14 h (9 h to 22 h) ...": the hours, or why there are none.
QString warm_hours_words(const core::doneness::WarmFinish& finish, const text::Style& style);

/// One organism: its name, the hours in its range, and what stands beside them.
struct WarmExposureLine {
    QString name;
    QString hours;
    QString remark;
};
QVector<WarmExposureLine> warm_exposure(const core::doneness::WarmFinish& finish,
                                        const text::Style& style);

/// All of it as text for a note on the piece. `how_far`: "planned", "begun" ... in words.
QString warm_record(const WarmStart& start, const WarmEntry& entry,
                    const core::doneness::WarmFinish& finish, const QString& how_far,
                    const text::Style& style);

} // namespace ui::presenters
