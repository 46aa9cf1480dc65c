#pragma once

#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "core/model/log.h"
#include "core/model/pack.h"
#include "core/model/piece.h"

#include <array>
#include <cstddef>
#include <string_view>

/// How enumerations are written in the book: as words, in the enumeration's order. A word never
/// changes its meaning; new ones go at the end, with the enumerator.
namespace core::store {

template <class E>
struct Codes;

template <std::size_t N>
using CodeList = std::array<std::string_view, N>;

template <>
struct Codes<model::BatchState> {
    static constexpr CodeList<4> list{"planned", "in_progress", "finished", "abandoned"};
};
template <>
struct Codes<model::NoteKind> {
    static constexpr CodeList<8> list{"look",  "touch",  "smell",   "taste",
                                      "mould", "action", "outcome", "other"};
};
template <>
struct Codes<model::Verdict> {
    static constexpr CodeList<3> list{"done", "not_yet", "discard"};
};
template <>
struct Codes<model::ChamberKind> {
    static constexpr CodeList<6> list{"fridge", "cabinet", "room", "outdoors", "freezer", "other"};
};
template <>
struct Codes<model::InstrumentKind> {
    static constexpr CodeList<6> list{"scale",    "thermometer", "hygrometer",
                                      "ph_meter", "aw_meter",    "other"};
};
template <>
struct Codes<model::PackKind> {
    static constexpr CodeList<4> list{"whole", "cut", "vacuum", "frozen"};
};
template <>
struct Codes<model::MoveKind> {
    static constexpr CodeList<6> list{"used", "given", "sold", "wasted", "re_hung", "counted"};
};
template <>
struct Codes<model::Form> {
    static constexpr CodeList<4> list{"slab", "cylinder", "round", "block"};
};
template <>
struct Codes<model::WeighedState> {
    static constexpr CodeList<7> list{"raw",   "trimmed", "cured", "rinsed",
                                      "cased", "netted",  "coated"};
};
template <>
struct Codes<model::ReferenceWeight> {
    static constexpr CodeList<4> list{"raw", "trimmed", "cured", "hung"};
};
template <>
struct Codes<model::SkinSide> {
    static constexpr CodeList<3> list{"none", "one_side", "all_round"};
};
template <>
struct Codes<model::PieceState> {
    static constexpr CodeList<8> list{"planned",  "curing",    "resting",     "drying",
                                      "finished", "discarded", "merged_away", "split_up"};
};
template <>
struct Codes<model::EventKind> {
    static constexpr CodeList<13> list{"dressed", "re_dressed", "coated",  "trimmed", "sampled",
                                       "split",   "merged",     "pressed", "frozen",  "thawed",
                                       "washed",  "hung",       "moved"};
};
template <>
struct Codes<model::StepKind> {
    static constexpr CodeList<3> list{"performed", "undone", "redone"};
};
/// The entry kinds' words are also the names of their tables.
template <>
struct Codes<model::EntryKind> {
    static constexpr CodeList<22> list{
        "person",         "batch",    "piece",          "weighing",   "event",
        "stage",          "recipe",   "recipe_version", "ingredient", "lot",
        "ingredient_use", "chamber",  "sensor",         "instrument", "calibration_check",
        "note",           "decision", "outcome",        "acceptance", "pack",
        "pack_move",      "task_tick"};
};

template <class E>
constexpr std::string_view code_of(E value) {
    return Codes<E>::list.at(static_cast<std::size_t>(value));
}

/// The index of `code`, or the list's size when it is not a word of the book.
template <class E>
constexpr std::size_t index_of_code(std::string_view code) {
    std::size_t index = 0;
    while (index < Codes<E>::list.size() && Codes<E>::list.at(index) != code) {
        ++index;
    }
    return index;
}

} // namespace core::store
