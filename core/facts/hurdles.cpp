#include "core/facts/hurdles.h"

#include "core/facts/embedded.h"
#include "core/facts/fact_reader.h"

#include <algorithm>
#include <cassert>
#include <set>

namespace core::facts {

namespace {

using base::ErrorCode;
using detail::FactObject;
using detail::SourceTable;

constexpr std::array<std::pair<std::string_view, Hurdle::Quantity>, 4> quantities = {{
    {"water_activity_at_most", Hurdle::Quantity::water_activity_at_most},
    {"water_phase_salt_at_least", Hurdle::Quantity::water_phase_salt_at_least},
    {"salt_at_least", Hurdle::Quantity::salt_at_least},
    {"loss_at_least", Hurdle::Quantity::loss_at_least},
}};

std::optional<double> number_if_given(const FactObject& object, const std::string& field,
                                      double low, double high) {
    return object.has(field) ? std::optional(object.number(field, low, high)) : std::nullopt;
}

GrowthRange read_range(const FactObject& object, const SourceTable& sources) {
    object.only({"id", "name", "lowest_c", "highest_c", "lowest_ph", "highest_ph",
                 "lowest_activity", "source"});
    GrowthRange range;
    range.id = object.text("id");
    range.name = object.text("name");
    const auto low = number_if_given(object, "lowest_c", -10, 60);
    const auto high = number_if_given(object, "highest_c", 0, 130);
    if (low && high && !(*low < *high)) {
        object.fail(ErrorCode::out_of_range, "highest_c", "not above the lowest");
    }
    if (low) {
        range.lowest = units::Temperature::celsius(*low);
    }
    if (high) {
        range.highest = units::Temperature::celsius(*high);
    }
    range.lowest_ph = number_if_given(object, "lowest_ph", 0, 14);
    range.highest_ph = number_if_given(object, "highest_ph", 0, 14);
    if (const auto activity = number_if_given(object, "lowest_activity", 0.5, 1)) {
        range.lowest_activity = units::WaterActivity::fraction(*activity);
    }
    range.source = sources.of(object);
    return range;
}

Hurdle read_hurdle(const FactObject& object, const SourceTable& sources) {
    object.only({"id", "name", "quantity", "value", "source", "note"});
    Hurdle hurdle;
    hurdle.id = object.text("id");
    hurdle.name = object.text("name");
    hurdle.quantity = object.word("quantity", quantities);
    hurdle.value = object.number("value", 0, 1);
    hurdle.source = sources.of(object);
    hurdle.note = object.text_or_empty("note");
    return hurdle;
}

template <class Read>
auto read_list(const FactObject& top, const std::string& field, std::set<std::string>& ids,
               Read read) {
    const SourceTable sources(top);
    std::vector<decltype(read(top, sources))> entries;
    for (const auto& item : top.array(field)) {
        const std::string place =
            "hurdles.json." + field + "[" + std::to_string(entries.size()) + "]";
        const FactObject object(item, place);
        if (!ids.insert(object.text("id")).second) {
            object.fail(ErrorCode::conflict, "id", "used twice");
        }
        entries.push_back(read(object, sources));
    }
    return entries;
}

} // namespace

const GrowthRange* Hurdles::organism(std::string_view id) const {
    const auto found = std::find_if(organisms.begin(), organisms.end(),
                                    [id](const GrowthRange& range) { return range.id == id; });
    return found == organisms.end() ? nullptr : &*found;
}

base::Result<Hurdles> load_hurdles(std::string_view text) {
    try {
        const detail::Json json = detail::parse_fact_file(text, "hurdles.json");
        const FactObject top(json, "hurdles.json");
        top.only({"about", "sources", "organisms", "hurdles"});
        std::set<std::string> ids; // one name space: a check on the sheet is named by either
        Hurdles hurdles;
        hurdles.organisms = read_list(top, "organisms", ids, read_range);
        hurdles.hurdles = read_list(top, "hurdles", ids, read_hurdle);
        return hurdles;
    } catch (const detail::FactFault& fault) {
        return tl::unexpected(fault.error);
    }
}

Hurdles built_in_hurdles() {
    auto hurdles = load_hurdles(embedded("hurdles.json"));
    assert(hurdles.has_value() && "our own fact files are held good by a test");
    return std::move(*hurdles);
}

} // namespace core::facts
