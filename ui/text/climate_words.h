#pragma once

#include "core/chamber/band_time.h"
#include "core/chamber/log_dialect.h"
#include "core/chamber/log_reader.h"
#include "core/chamber/upset.h"
#include "ui/text/style.h"

#include <QString>

/// Words of the chamber's pages.
namespace ui::text {

QString words(core::chamber::DialectField field);
/// "semicolon", "day, month, year", "column 3"...
QString choice_words(core::chamber::DialectField field, const std::string& choice);
QString words(core::chamber::Evidence evidence);
/// "sure", "fairly sure", "a guess", with the percentage.
QString sureness_words(double sureness, const Style& style);
QString words(core::chamber::RejectReason reason);
QString words(core::chamber::OutOfBand side);
QString words(core::chamber::Exposure::Activity activity);

} // namespace ui::text
