#pragma once

#include "core/chamber/band_time.h"
#include "core/facts/limits.h"
#include "core/mix/limit_checks.h"
#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "core/model/pack.h"
#include "core/model/piece.h"
#include "core/model/plan.h"
#include "ui/text/style.h"

#include <QString>

/// The model's enumerations and moments as printed records word them. Moments carry the year: a
/// record is read long after.
namespace ui::print {

QString moment_words(core::units::Instant at, const text::Style& style);

QString words(core::model::BatchState state);
QString words(core::model::PieceState state);
QString words(core::model::WeighedState state);
QString words(core::model::EventKind kind);
QString words(core::model::StageKind kind);
QString words(core::model::NoteKind kind);
QString words(core::model::Verdict verdict);
QString words(core::model::PackKind kind);
QString words(core::model::MoveKind kind);
QString words(core::model::InstrumentKind kind);
QString words(core::model::ReferenceWeight reference);
QString words(core::model::SkinSide skin);
QString words(core::chamber::OutOfBand side);
QString words(core::facts::Substance substance);
QString words(core::facts::LimitBasis basis);
QString words(core::mix::LimitCheck::Outcome outcome);

QString yes_no(bool value);
/// The text, or the sign for "not known" when it is empty.
QString or_unknown(const std::string& text);

} // namespace ui::print
