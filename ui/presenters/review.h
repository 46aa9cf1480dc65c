#pragma once

#include "core/doneness/evidence.h"
#include "core/services/book.h"
#include "ui/presenters/piece_line.h"
#include "ui/text/style.h"

#include <QString>
#include <QVector>
#include <optional>
#include <string>

namespace ui::presenters {

/// The evidence sheet of a piece, gathered from the book: weights, the salt of its recipe as
/// used, stages with the air of their logs, the humidity where it hangs, notes by what they are
/// about, and its forecast. `centre` is what the hand says.
core::doneness::EvidenceSheet evidence_for(const core::services::Book& book, const PieceLine& line,
                                           std::optional<core::doneness::CentreFeel> centre,
                                           core::units::Instant now);

/// One line of the sheet as it is shown and printed: what, how it stands, where it comes from.
struct EvidenceLine {
    QString group;
    QString what;
    QString value;
    QString remark;       ///< a limit with its source, or what is missing
    bool heading = false; ///< only the group's name, above its lines
};
QVector<EvidenceLine> evidence_lines(const core::doneness::EvidenceSheet& sheet,
                                     const text::Style& style);

/// The sheet as it was shown, for the signed decision (JSON: an array of lines).
std::string evidence_document(const core::doneness::EvidenceSheet& sheet, const text::Style& style);

} // namespace ui::presenters
