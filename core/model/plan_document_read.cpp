#include "core/model/plan_document.h"
#include "core/model/plan_document_names.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <set>

namespace core::model {
namespace {

using json = nlohmann::json;
using base::ErrorCode;

/// One object of the document being read. Remembers which keys were asked for, so that the rest
/// are faults, and collects faults instead of stopping at the first.
class Node {
  public:
    Node(const json& value, std::string path, std::vector<base::Error>& faults)
        : value_(value), path_(std::move(path)), faults_(faults) {
        if (!value_.is_object()) {
            fault(ErrorCode::bad_format, "an object was expected", {});
        }
    }
    Node(const Node&) = delete;
    Node& operator=(const Node&) = delete;
    ~Node() {
        if (!value_.is_object()) {
            return;
        }
        for (const auto& [key, unused] : value_.items()) {
            if (!asked_.contains(key)) {
                fault(ErrorCode::bad_format, "unknown key", key);
            }
        }
    }

    void fault(ErrorCode code, std::string detail, const std::string& key) {
        faults_.push_back({code, std::move(detail), at(key)});
    }
    [[nodiscard]] std::string at(const std::string& key) const {
        return key.empty() ? path_ : path_.empty() ? key : path_ + "." + key;
    }
    [[nodiscard]] std::vector<base::Error>& faults() { return faults_; }

    const json* find(const std::string& key) {
        asked_.insert(key);
        if (!value_.is_object()) {
            return nullptr;
        }
        const auto found = value_.find(key);
        return found == value_.end() ? nullptr : &*found;
    }

    std::optional<double> number(const std::string& key, double low, double high) {
        const json* found = find(key);
        if (found == nullptr) {
            return std::nullopt;
        }
        if (!found->is_number()) {
            fault(ErrorCode::not_a_number, found->dump(), key);
            return std::nullopt;
        }
        const double value = found->get<double>();
        if (!std::isfinite(value) || value < low || value > high) {
            fault(ErrorCode::out_of_range, found->dump(), key);
            return std::nullopt;
        }
        return value;
    }
    double required_number(const std::string& key, double low, double high) {
        if (find(key) == nullptr) {
            fault(ErrorCode::missing_column, key, key);
            return low;
        }
        return number(key, low, high).value_or(low);
    }
    int whole(const std::string& key, int fallback, int low, int high) {
        const auto value = number(key, low, high);
        if (value.has_value() && std::floor(*value) != *value) {
            fault(ErrorCode::bad_format, "a whole number was expected", key);
        }
        return value.has_value() ? static_cast<int>(*value) : fallback;
    }
    bool flag(const std::string& key, bool fallback) {
        const json* found = find(key);
        if (found == nullptr) {
            return fallback;
        }
        if (!found->is_boolean()) {
            fault(ErrorCode::bad_format, "true or false was expected", key);
            return fallback;
        }
        return found->get<bool>();
    }
    std::string text(const std::string& key, bool required = false) {
        const json* found = find(key);
        if (found == nullptr) {
            if (required) {
                fault(ErrorCode::missing_column, key, key);
            }
            return {};
        }
        if (!found->is_string() || (required && found->get<std::string>().empty())) {
            fault(ErrorCode::bad_format, "a text was expected", key);
            return {};
        }
        return found->get<std::string>();
    }
    template <class E, std::size_t N>
    std::optional<E> named(const std::string& key, const names::Table<E, N>& table,
                           bool required = false) {
        const std::string name = text(key, required);
        for (const auto& [value, its_name] : table) {
            if (its_name == name) {
                return value;
            }
        }
        if (!name.empty()) {
            fault(ErrorCode::out_of_range, name, key);
        }
        return std::nullopt;
    }
    /// Calls `each(element, path)` for the elements of a list.
    template <class F>
    void list(const std::string& key, F each) {
        const json* found = find(key);
        if (found == nullptr) {
            return;
        }
        if (!found->is_array()) {
            fault(ErrorCode::bad_format, "a list was expected", key);
            return;
        }
        std::size_t index = 0;
        for (const auto& element : *found) {
            each(element, at(key) + "[" + std::to_string(index++) + "]");
        }
    }

  private:
    const json& value_;
    std::string path_;
    std::vector<base::Error>& faults_;
    std::set<std::string> asked_;
};

constexpr double longest_days = 3660; // ten years: longer is a slip of the unit
constexpr double lowest_celsius = -60;
constexpr double highest_celsius = 120;

template <class Q>
struct Scale;
template <>
struct Scale<units::Temperature> {
    static constexpr double low = lowest_celsius;
    static constexpr double high = highest_celsius;
    static units::Temperature make(double v) { return units::Temperature::celsius(v); }
};
template <>
struct Scale<units::RelativeHumidity> {
    static constexpr double low = 0;
    static constexpr double high = 100;
    static units::RelativeHumidity make(double v) { return units::RelativeHumidity::percent(v); }
};

template <class Q>
std::optional<Band<Q>> read_band(Node& parent, const std::string& key) {
    const json* found = parent.find(key);
    if (found == nullptr) {
        return std::nullopt;
    }
    Node node(*found, parent.at(key), parent.faults());
    const double low = node.required_number("low", Scale<Q>::low, Scale<Q>::high);
    const double high = node.required_number("high", Scale<Q>::low, Scale<Q>::high);
    const double low_end = node.number("low_at_end", Scale<Q>::low, Scale<Q>::high).value_or(low);
    const double high_end =
        node.number("high_at_end", Scale<Q>::low, Scale<Q>::high).value_or(high);
    if (low > high || low_end > high_end) {
        node.fault(ErrorCode::out_of_range, "low is above high", {});
    }
    return Band<Q>{Scale<Q>::make(low), Scale<Q>::make(high), Scale<Q>::make(low_end),
                   Scale<Q>::make(high_end)};
}

template <class Q>
std::optional<Pulse<Q>> read_pulse(Node& parent, const std::string& key) {
    const json* found = parent.find(key);
    if (found == nullptr) {
        return std::nullopt;
    }
    Node node(*found, parent.at(key), parent.faults());
    const double low = node.required_number("low", Scale<Q>::low, Scale<Q>::high);
    const double high = node.required_number("high", Scale<Q>::low, Scale<Q>::high);
    const double every = node.required_number("every_hours", 0.1, longest_days * 24);
    const double lasting = node.required_number("lasting_hours", 0.05, longest_days * 24);
    if (low > high || lasting >= every) {
        node.fault(ErrorCode::out_of_range, "low above high, or lasting not under every", {});
    }
    return Pulse<Q>{Scale<Q>::make(low), Scale<Q>::make(high), units::Duration::hours(every),
                    units::Duration::hours(lasting)};
}

std::optional<units::Duration> days(Node& node, const std::string& key, double low = 0) {
    const auto value = node.number(key, low, longest_days);
    return value ? std::optional(units::Duration::days(*value)) : std::nullopt;
}

std::optional<units::MassShare> percent(Node& node, const std::string& key) {
    const auto value = node.number(key, 0.001, 100);
    return value ? std::optional(units::MassShare::percent(*value)) : std::nullopt;
}

/// "2026-03-01" without asking the units layer's fuller parser: documents hold no other form.
std::optional<units::Day> read_day(Node& node, const std::string& key) {
    const std::string text = node.text(key);
    if (text.empty()) {
        return std::nullopt;
    }
    int year = 0;
    unsigned month = 0;
    unsigned day = 0;
    char rest = 0;
    if (std::sscanf(text.c_str(), "%4d-%2u-%2u%c", &year, &month, &day, &rest) == 3) {
        const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(month),
                                               std::chrono::day(day)};
        if (date.ok()) {
            return units::Day::from_date(date);
        }
    }
    node.fault(ErrorCode::bad_format, text, key);
    return std::nullopt;
}

EndCondition read_end(const json& value, const std::string& path,
                      std::vector<base::Error>& faults) {
    Node node(value, path, faults);
    EndCondition end;
    using Kind = EndCondition::Kind;
    end.kind = node.named("kind", names::end_kinds, true).value_or(Kind::feel);
    end.time = days(node, "days");
    end.days_per_unit = node.number("days_per_unit", 0.01, 100);
    end.loss = percent(node, "loss_percent");
    end.reference = node.named("reference", names::references);
    end.date = read_day(node, "date");
    end.text = node.text("text");
    const bool per_unit = end.kind == Kind::days_per_kilogram || end.kind == Kind::days_per_cm;
    if (end.kind == Kind::after && !end.time) {
        node.fault(ErrorCode::missing_column, "days", {});
    }
    if (per_unit && !end.days_per_unit) {
        node.fault(ErrorCode::missing_column, "days_per_unit", {});
    }
    if (end.kind == Kind::flat_curve && !end.loss) {
        node.fault(ErrorCode::missing_column, "loss_percent", {});
    }
    if (end.kind == Kind::on_date && !end.date) {
        node.fault(ErrorCode::missing_column, "date", {});
    }
    return end;
}

Routine read_routine(const json& value, const std::string& path, std::vector<base::Error>& faults) {
    Node node(value, path, faults);
    Routine routine;
    routine.verb = node.text("verb", true);
    routine.every = days(node, "every_days", 0.01);
    routine.first_after = days(node, "first_after_days");
    node.list("at_days", [&](const json& element, const std::string& where) {
        if (!element.is_number() || element.get<double>() < 0 ||
            element.get<double>() > longest_days) {
            faults.push_back({ErrorCode::out_of_range, element.dump(), where});
            return;
        }
        routine.at.push_back(units::Duration::days(element.get<double>()));
    });
    if (!routine.every && routine.at.empty()) {
        node.fault(ErrorCode::missing_column, "every_days", {});
    }
    return routine;
}

std::optional<base::Interval<units::Duration>> read_typical(Node& node) {
    std::vector<double> numbers;
    node.list("typical_days", [&](const json& element, const std::string& where) {
        if (!element.is_number() || element.get<double>() < 0 ||
            element.get<double>() > longest_days) {
            node.faults().push_back({ErrorCode::out_of_range, element.dump(), where});
            return;
        }
        numbers.push_back(element.get<double>());
    });
    if (numbers.empty()) {
        return std::nullopt;
    }
    if (numbers.size() != 3 || numbers[0] > numbers[1] || numbers[1] > numbers[2]) {
        node.fault(ErrorCode::out_of_range, "three rising numbers were expected", "typical_days");
        return std::nullopt;
    }
    using units::Duration;
    return base::Interval<Duration>{Duration::days(numbers[0]), Duration::days(numbers[1]),
                                    Duration::days(numbers[2])};
}

StageTemplate read_stage(const json& value, const std::string& path,
                         std::vector<base::Error>& faults) {
    Node node(value, path, faults);
    StageTemplate stage;
    stage.name = node.text("name", true);
    stage.kind = node.named("kind", names::stage_kinds, true).value_or(StageKind::rest);
    stage.salting = node.named("salting", names::salting_methods);
    stage.temperature = read_band<units::Temperature>(node, "temperature_c");
    stage.humidity = read_band<units::RelativeHumidity>(node, "humidity_percent");
    stage.temperature_pulse = read_pulse<units::Temperature>(node, "temperature_pulse");
    stage.humidity_pulse = read_pulse<units::RelativeHumidity>(node, "humidity_pulse");
    node.list("ends", [&](const json& element, const std::string& where) {
        stage.ends.push_back(read_end(element, where, faults));
    });
    stage.ends_by_all = node.flag("ends_by_all", false);
    stage.typical = read_typical(node);
    node.list("routines", [&](const json& element, const std::string& where) {
        stage.routines.push_back(read_routine(element, where, faults));
    });
    stage.weight = node.named("weight", names::weight_effects).value_or(WeightEffect::keeps);
    stage.repeats = node.whole("repeats", 1, 1, 200);
    stage.repeat_with_next = node.whole("repeat_with_next", 0, 0, 20);
    stage.repeats_at_least = node.whole("repeats_at_least", stage.repeats, 1, 200);
    stage.repeats_at_most = node.whole("repeats_at_most", stage.repeats, 1, 200);
    stage.optional = node.flag("optional", false);
    stage.pauses_when_frozen = node.flag("pauses_when_frozen", true);
    stage.pauses_out_of_band = node.flag("pauses_out_of_band", false);
    stage.same_room_as = node.text("same_room_as");
    stage.note = node.text("note");
    return stage;
}

PlanMinimum read_minimum(const json& value, const std::string& path,
                         std::vector<base::Error>& faults) {
    Node node(value, path, faults);
    PlanMinimum minimum{node.text("code", true), {}, units::Duration::days(0), {}};
    node.list("stages", [&](const json& element, const std::string& where) {
        if (!element.is_string()) {
            faults.push_back({ErrorCode::bad_format, element.dump(), where});
            return;
        }
        minimum.stages.push_back(element.get<std::string>());
    });
    minimum.at_least = units::Duration::days(node.required_number("days", 0, longest_days));
    minimum.source.title = node.text("source", true);
    minimum.source.edition = node.text("edition");
    minimum.source.sureness =
        node.named("sureness", names::surenesses, true).value_or(base::Sureness::memory);
    return minimum;
}

PlanTemplate read_plan(const json& value, std::vector<base::Error>& faults) {
    Node node(value, {}, faults);
    PlanTemplate plan;
    plan.id = node.text("id", true);
    plan.name = node.text("name", true);
    plan.family = node.text("family", true);
    plan.species = node.text("species");
    plan.usual_weight = units::Mass::kilograms(node.required_number("usual_weight_kg", 0.01, 100));
    plan.usual_thickness =
        units::Length::millimetres(node.required_number("usual_thickness_mm", 1, 1000));
    plan.usual_form = node.named("usual_form", names::forms, true).value_or(Form::slab);
    if (const auto loss = percent(node, "usual_loss_percent")) {
        plan.usual_target = Target{
            *loss,
            node.named("usual_loss_from", names::references).value_or(ReferenceWeight::hung)};
    } else {
        node.named("usual_loss_from", names::references);
    }
    plan.source = node.text("source", true);
    plan.sureness =
        node.named("sureness", names::surenesses, true).value_or(base::Sureness::common_practice);
    node.list("stages", [&](const json& element, const std::string& where) {
        plan.stages.push_back(read_stage(element, where, faults));
    });
    if (plan.stages.empty()) {
        node.fault(ErrorCode::missing_column, "stages", "stages");
    }
    node.list("minima", [&](const json& element, const std::string& where) {
        plan.minima.push_back(read_minimum(element, where, faults));
    });
    return plan;
}

template <class Read>
auto read_document(std::string_view text, Read read)
    -> ReadResult<decltype(read(std::declval<const json&>(),
                                std::declval<std::vector<base::Error>&>()))> {
    std::vector<base::Error> faults;
    const json document = json::parse(text, nullptr, /*allow_exceptions=*/false);
    if (document.is_discarded()) {
        faults.push_back({ErrorCode::bad_format, "not JSON", {}});
        return tl::unexpected(std::move(faults));
    }
    auto value = read(document, faults);
    if (!faults.empty()) {
        return tl::unexpected(std::move(faults));
    }
    return value;
}

} // namespace

ReadResult<StageTemplate> read_stage_template(std::string_view text) {
    return read_document(text, [](const json& value, std::vector<base::Error>& faults) {
        return read_stage(value, {}, faults);
    });
}

ReadResult<PlanTemplate> read_plan_template(std::string_view text) {
    return read_document(text, [](const json& value, std::vector<base::Error>& faults) {
        return read_plan(value, faults);
    });
}

} // namespace core::model
