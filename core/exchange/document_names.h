#pragma once

#include "core/exchange/book_document.h"
#include "core/model/plan_document_names.h"

/// The words of the exchange document for the model's enumerations. Published: a word once
/// released keeps its meaning.
namespace core::exchange::names {

using namespace model; // the tables below are about nothing else
using model::names::Table;

inline constexpr Table<DocumentScope, 2> scopes{
    {{DocumentScope::book, "book"}, {DocumentScope::batch, "batch"}}};
inline constexpr Table<BatchState, 4> batch_states{{{BatchState::planned, "planned"},
                                                    {BatchState::in_progress, "in_progress"},
                                                    {BatchState::finished, "finished"},
                                                    {BatchState::abandoned, "abandoned"}}};
inline constexpr Table<NoteKind, 8> note_kinds{{{NoteKind::look, "look"},
                                                {NoteKind::touch, "touch"},
                                                {NoteKind::smell, "smell"},
                                                {NoteKind::taste, "taste"},
                                                {NoteKind::mould, "mould"},
                                                {NoteKind::action, "action"},
                                                {NoteKind::outcome, "outcome"},
                                                {NoteKind::other, "other"}}};
inline constexpr Table<Verdict, 3> verdicts{
    {{Verdict::done, "done"}, {Verdict::not_yet, "not_yet"}, {Verdict::discard, "discard"}}};
inline constexpr Table<ChamberKind, 6> chamber_kinds{{{ChamberKind::fridge, "fridge"},
                                                      {ChamberKind::cabinet, "cabinet"},
                                                      {ChamberKind::room, "room"},
                                                      {ChamberKind::outdoors, "outdoors"},
                                                      {ChamberKind::freezer, "freezer"},
                                                      {ChamberKind::other, "other"}}};
inline constexpr Table<InstrumentKind, 6> instrument_kinds{
    {{InstrumentKind::scale, "scale"},
     {InstrumentKind::thermometer, "thermometer"},
     {InstrumentKind::hygrometer, "hygrometer"},
     {InstrumentKind::ph_meter, "ph_meter"},
     {InstrumentKind::aw_meter, "aw_meter"},
     {InstrumentKind::other, "other"}}};
inline constexpr Table<WeighedState, 7> weighed_states{{{WeighedState::raw, "raw"},
                                                        {WeighedState::trimmed, "trimmed"},
                                                        {WeighedState::cured, "cured"},
                                                        {WeighedState::rinsed, "rinsed"},
                                                        {WeighedState::cased, "cased"},
                                                        {WeighedState::netted, "netted"},
                                                        {WeighedState::coated, "coated"}}};
inline constexpr Table<SkinSide, 3> skin_sides{{{SkinSide::none, "none"},
                                                {SkinSide::one_side, "one_side"},
                                                {SkinSide::all_round, "all_round"}}};
inline constexpr Table<PieceState, 8> piece_states{{{PieceState::planned, "planned"},
                                                    {PieceState::curing, "curing"},
                                                    {PieceState::resting, "resting"},
                                                    {PieceState::drying, "drying"},
                                                    {PieceState::finished, "finished"},
                                                    {PieceState::discarded, "discarded"},
                                                    {PieceState::merged_away, "merged_away"},
                                                    {PieceState::split_up, "split_up"}}};
inline constexpr Table<EventKind, 13> event_kinds{{{EventKind::dressed, "dressed"},
                                                   {EventKind::re_dressed, "re_dressed"},
                                                   {EventKind::coated, "coated"},
                                                   {EventKind::trimmed, "trimmed"},
                                                   {EventKind::sampled, "sampled"},
                                                   {EventKind::split, "split"},
                                                   {EventKind::merged, "merged"},
                                                   {EventKind::pressed, "pressed"},
                                                   {EventKind::frozen, "frozen"},
                                                   {EventKind::thawed, "thawed"},
                                                   {EventKind::washed, "washed"},
                                                   {EventKind::hung, "hung"},
                                                   {EventKind::moved, "moved"}}};
inline constexpr Table<PackKind, 4> pack_kinds{{{PackKind::whole, "whole"},
                                                {PackKind::cut, "cut"},
                                                {PackKind::vacuum, "vacuum"},
                                                {PackKind::frozen, "frozen"}}};
inline constexpr Table<MoveKind, 6> move_kinds{{{MoveKind::used, "used"},
                                                {MoveKind::given, "given"},
                                                {MoveKind::sold, "sold"},
                                                {MoveKind::wasted, "wasted"},
                                                {MoveKind::re_hung, "re_hung"},
                                                {MoveKind::counted, "counted"}}};
inline constexpr Table<StepKind, 3> step_kinds{{{StepKind::performed, "performed"},
                                                {StepKind::undone, "undone"},
                                                {StepKind::redone, "redone"}}};

// One overload an enumeration: the visitor finds the table by the field's type.
constexpr const auto& table_of(DocumentScope) {
    return scopes;
}
constexpr const auto& table_of(BatchState) {
    return batch_states;
}
constexpr const auto& table_of(NoteKind) {
    return note_kinds;
}
constexpr const auto& table_of(Verdict) {
    return verdicts;
}
constexpr const auto& table_of(ChamberKind) {
    return chamber_kinds;
}
constexpr const auto& table_of(InstrumentKind) {
    return instrument_kinds;
}
constexpr const auto& table_of(WeighedState) {
    return weighed_states;
}
constexpr const auto& table_of(SkinSide) {
    return skin_sides;
}
constexpr const auto& table_of(PieceState) {
    return piece_states;
}
constexpr const auto& table_of(EventKind) {
    return event_kinds;
}
constexpr const auto& table_of(PackKind) {
    return pack_kinds;
}
constexpr const auto& table_of(MoveKind) {
    return move_kinds;
}
constexpr const auto& table_of(StepKind) {
    return step_kinds;
}
constexpr const auto& table_of(Form) {
    return model::names::forms;
}
constexpr const auto& table_of(ReferenceWeight) {
    return model::names::references;
}

} // namespace core::exchange::names
