#pragma once

#include "core/model/finding.h"
#include "ui/text/style.h"

#include <QStringList>

namespace ui::text {

/// A finding as a sentence with its quantities in the person's units. Sentences live in a table
/// by code (finding_words_*.cpp); a code without one gets a sentence made from its place and
/// values, never the bare code alone.
QString finding_words(const core::model::Finding& finding, const Style& style);
/// The same, with what it was checked against in brackets where that is known.
QString finding_with_source(const core::model::Finding& finding, const Style& style);

/// "Note", "Caution", "Stop": beside every finding, so that colour is not the only sign.
QString severity_words(core::model::Severity severity);
/// The severity's name in look::Banner and style sheets: "note", "caution", "stop".
QString severity_look(core::model::Severity severity);

/// Where a limit comes from and how sure we are: "9 CFR 424.22(b) – not verified against the
/// issuer's text".
QString source_words(const core::base::Source& source);

/// One blank of a finding.
QString words(const core::model::FindingValue& value, const Style& style);

/// For tests: whether the table has a sentence for `code`, and all codes it has.
bool has_sentence(const std::string& code);
QStringList known_codes();

} // namespace ui::text
