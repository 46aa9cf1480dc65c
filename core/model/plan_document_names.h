#pragma once

#include "core/base/cited.h"
#include "core/model/plan.h"

#include <array>
#include <string_view>
#include <utility>

/// The names that stand for the enumerations in plan documents; one table each, read in both
/// directions.
namespace core::model::names {

template <class E, std::size_t N>
using Table = std::array<std::pair<E, std::string_view>, N>;

inline constexpr Table<StageKind, 13> stage_kinds{{{StageKind::salt, "salt"},
                                                   {StageKind::rest, "rest"},
                                                   {StageKind::wash, "wash"},
                                                   {StageKind::soak, "soak"},
                                                   {StageKind::marinate, "marinate"},
                                                   {StageKind::press, "press"},
                                                   {StageKind::smoke, "smoke"},
                                                   {StageKind::dry, "dry"},
                                                   {StageKind::age, "age"},
                                                   {StageKind::equalise, "equalise"},
                                                   {StageKind::coat, "coat"},
                                                   {StageKind::freeze, "freeze"},
                                                   {StageKind::store, "store"}}};

using EndKind = EndCondition::Kind;
inline constexpr Table<EndKind, 8> end_kinds{{{EndKind::after, "after"},
                                              {EndKind::days_per_kilogram, "days_per_kilogram"},
                                              {EndKind::days_per_cm, "days_per_cm"},
                                              {EndKind::loss, "loss"},
                                              {EndKind::flat_curve, "flat_curve"},
                                              {EndKind::feel, "feel"},
                                              {EndKind::lab_value, "lab_value"},
                                              {EndKind::on_date, "on_date"}}};

inline constexpr Table<SaltingMethod, 3> salting_methods{{{SaltingMethod::weighed, "weighed"},
                                                          {SaltingMethod::excess, "excess"},
                                                          {SaltingMethod::brine, "brine"}}};

inline constexpr Table<WeightEffect, 4> weight_effects{
    {{WeightEffect::loses, "loses"},
     {WeightEffect::gains, "gains"},
     {WeightEffect::keeps, "keeps"},
     {WeightEffect::resets_tare, "resets_tare"}}};

inline constexpr Table<ReferenceWeight, 4> references{{{ReferenceWeight::raw, "raw"},
                                                       {ReferenceWeight::trimmed, "trimmed"},
                                                       {ReferenceWeight::cured, "cured"},
                                                       {ReferenceWeight::hung, "hung"}}};

inline constexpr Table<Form, 4> forms{{{Form::slab, "slab"},
                                       {Form::cylinder, "cylinder"},
                                       {Form::round, "round"},
                                       {Form::block, "block"}}};

inline constexpr Table<base::Sureness, 6> surenesses{
    {{base::Sureness::verified, "verified"},
     {base::Sureness::verified_second_hand, "verified_second_hand"},
     {base::Sureness::computed, "computed"},
     {base::Sureness::derived, "derived"},
     {base::Sureness::memory, "memory"},
     {base::Sureness::common_practice, "common_practice"}}};

/// Every enumerator has a line in its table, so the last line is never an answer by default.
template <class E, std::size_t N>
constexpr std::string_view name_in(const Table<E, N>& table, E value) {
    for (const auto& [key, name] : table) {
        if (key == value) {
            return name;
        }
    }
    return {};
}

} // namespace core::model::names
