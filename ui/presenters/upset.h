#pragma once

#include "core/chamber/upset.h"
#include "core/model/chamber.h"
#include "core/services/climate.h"
#include "ui/presenters/workspace.h"

#include <QString>
#include <optional>
#include <vector>

/// A chamber's upset as the person typed it or as the log has it, and its record.
namespace ui::presenters {

struct UpsetEntry {
    core::units::Instant from;
    core::units::Duration lasted;
    std::optional<core::units::Temperature> usual;   ///< typed accounts only
    std::optional<core::units::Temperature> reached; ///< absent: take it from the log
    std::optional<core::model::Sensor> sensor;       ///< whose log
};

/// The record of an upset, or what stands in its way.
core::base::Result<core::chamber::UpsetRecord>
upset_record(const Workspace& workspace, core::model::ChamberId chamber, const UpsetEntry& entry);

/// The record as text, to be kept as a note.
QString record_words(const core::chamber::UpsetRecord& record, const QString& chamber,
                     const text::Style& style);
/// "3 h 10 min to 28 h", or one of them when they are alike.
QString hours_words(const core::chamber::Exposure& exposure, const text::Style& style);

} // namespace ui::presenters
