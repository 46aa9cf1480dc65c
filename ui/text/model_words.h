#pragma once

#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "core/model/forecast.h"
#include "core/model/pack.h"
#include "core/model/piece.h"
#include "core/model/plan.h"

#include <QString>
#include <vector>

/// The names of the book's plain choices. Trade words, lower case where they stand in a sentence.
namespace ui::text {

QString words(core::model::Form form);
QString words(core::model::WeighedState state);
QString words(core::model::ReferenceWeight reference);
QString words(core::model::SkinSide skin);
QString words(core::model::PieceState state);
QString words(core::model::BatchState state);
QString words(core::model::EventKind kind);
QString words(core::model::NoteKind kind);
QString words(core::model::Verdict verdict);
QString words(core::model::PackKind kind);
QString words(core::model::MoveKind kind);
QString words(core::model::StageKind kind);
QString words(core::model::ForecastState state);
QString words(core::model::ChamberKind kind);
/// What is measured as "thickness" for this form: face to face, diameter, shortest side.
QString thickness_hint(core::model::Form form);

/// All values of a choice, in the order they are offered.
template <class Enum>
const std::vector<Enum>& choices();
template <>
const std::vector<core::model::Form>& choices();
template <>
const std::vector<core::model::WeighedState>& choices();
template <>
const std::vector<core::model::ReferenceWeight>& choices();
template <>
const std::vector<core::model::SkinSide>& choices();
template <>
const std::vector<core::model::NoteKind>& choices();
template <>
const std::vector<core::model::PackKind>& choices();
template <>
const std::vector<core::model::MoveKind>& choices();
template <>
const std::vector<core::model::ChamberKind>& choices();

} // namespace ui::text
