#include "ui/presenters/mix_bench.h"

#include "core/units/parse.h"
#include "ui/text/data_name.h"
#include "ui/text/error_words.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>

namespace ui::presenters {
namespace {

/// A semicolon, also the wide one of a Chinese keyboard.
const QRegularExpression& between_parts() {
    static const QRegularExpression semicolon(QStringLiteral("[;\uFF1B]"));
    return semicolon;
}

using core::base::ErrorCode;
using core::facts::IngredientKind;
using core::mix::Label;
using core::mix::Method;
using core::units::Mass;
using core::units::MassShare;

struct MixBench {
    Q_DECLARE_TR_FUNCTIONS(MixBench)
};

QString trimmed(const QString& text) {
    return text.trimmed();
}

/// As it is typed here and read back: the language's decimal sign, no grouping.
QString spelled(QString number, const text::Style& style) {
    return number.replace(QLatin1Char('.'), style.locale.decimalPoint());
}
QString spelled(double value, const text::Style& style) {
    return spelled(QString::number(value, 'g', 12), style);
}

QString share_text(const std::optional<MassShare>& share, const text::Style& style) {
    return share ? spelled(share->in_percent(), style) + QStringLiteral(" %") : QString();
}

bool is_drink(IngredientKind kind) {
    return kind == IngredientKind::spirit || kind == IngredientKind::wine;
}

IngredientKind kind_of(const QString& id, const std::vector<core::mix::OwnIngredient>& own) {
    const std::string plain = id.toStdString();
    for (const auto& o : own) {
        if (o.id == plain) {
            return o.kind;
        }
    }
    const auto* entry = mix_facts().catalogue.find(plain);
    return entry != nullptr ? entry->kind : IngredientKind::other;
}

/// "879 mg per 15 mL": sodium (or salt) as labels of liquids state it.
core::base::Status set_per_volume(Label& label, const QString& word, const QString& value,
                                  core::units::ParseStyle style) {
    const auto per = value.indexOf(QLatin1String(" per "));
    const auto mass =
        core::units::parse_mass(value.left(per).trimmed().toStdString(), std::nullopt, style);
    if (!mass) {
        return tl::unexpected(mass.error());
    }
    const auto volume =
        core::units::parse_volume(value.mid(per + 5).trimmed().toStdString(), std::nullopt, style);
    if (!volume) {
        return tl::unexpected(volume.error());
    }
    if (*volume <= core::units::Volume::millilitres(0)) {
        return core::base::fault(ErrorCode::out_of_range, value.toStdString());
    }
    if (word == QLatin1String("salt")) {
        label.salt_per_100ml = *mass * (100 / volume->in_millilitres());
    } else {
        label.sodium_per_volume = core::mix::SodiumPerVolume{*mass, *volume};
    }
    return {};
}

/// Fills one field of `label` by its word.
core::base::Status set_by_word(Label& label, const QString& word, const std::string& value,
                               core::units::ParseStyle style) {
    const auto take = [](auto& to, const auto& parsed) -> core::base::Status {
        if (!parsed) {
            return tl::unexpected(parsed.error());
        }
        to = *parsed;
        return {};
    };
    const auto share = [&] { return core::units::parse_mass_share(value, true, style); };
    if (word == QLatin1String("nitrite")) {
        return take(label.nitrite, share());
    }
    if (word == QLatin1String("nitrate")) {
        return take(label.nitrate, share());
    }
    if (word == QLatin1String("salt")) {
        return take(label.salt, share());
    }
    if (word == QLatin1String("sodium")) {
        return take(label.sodium, share());
    }
    if (word == QLatin1String("sugar")) {
        return take(label.sugar, share());
    }
    if (word == QLatin1String("acid")) {
        return take(label.acid, share());
    }
    if (word == QLatin1String("water")) {
        return take(label.water, share());
    }
    if (word == QLatin1String("alcohol")) {
        return take(label.alcohol, core::units::parse_alcohol(value, style));
    }
    if (word == QLatin1String("density")) {
        const auto number = core::units::parse_number(value, style);
        if (!number) {
            return tl::unexpected(number.error());
        }
        label.density = core::units::Density::grams_per_millilitre(*number);
        return {};
    }
    return core::base::fault(ErrorCode::trailing_text, word.toStdString());
}

/// Reads the form's texts into a recipe, keeping count of what could not be read.
class EntryReader {
  public:
    EntryReader(const MixEntry& entry, const text::Style& style) : entry_(entry), style_(style) {}

    MixReading run() {
        auto& recipe = out_.recipe;
        recipe.name = entry_.name.trimmed().toStdString();
        recipe.method = entry_.method;
        recipe.limits = entry_.limits.toStdString();
        recipe.meat.skin =
            entry_.skin_on ? core::model::SkinSide::one_side : core::model::SkinSide::none;
        recipe.meat.fatty = entry_.fatty;
        recipe.meat.moisture = entry_.moisture;
        recipe.meat.skin_share = entry_.skin_share;
        recipe.ingredients = entry_.own;
        recipe.rubs = entry_.rubs;
        recipe.for_meat = entry_.for_meat;
        recipe.expected_loss = share("loss", entry_.loss);
        const auto uptake = share("uptake", entry_.uptake);
        if (entry_.method == Method::injected) {
            recipe.pump = uptake;
        } else if (entry_.method == Method::immersion_pickup) {
            recipe.pickup = uptake;
        }
        recipe.wishes = entry_.other_wishes;
        wish(core::mix::Aim::salt, "salt_wish", entry_.salt_wish);
        wish(core::mix::Aim::nitrite, "nitrite_wish", entry_.nitrite_wish);
        for (std::size_t i = 0; i < entry_.lines.size(); ++i) {
            line(i);
        }
        meat();
        return std::move(out_);
    }

  private:
    void fault(const char* field, const core::base::Error& error, int at = -1) {
        out_.faults.push_back({QLatin1String(field), at, text::error_words(error)});
    }

    std::optional<MassShare> share(const char* field, const QString& typed) {
        if (trimmed(typed).isEmpty()) {
            return std::nullopt;
        }
        const auto read = core::units::parse_mass_share(trimmed(typed).toStdString(), true,
                                                        text::parse_style(style_));
        if (!read) {
            fault(field, read.error());
            return std::nullopt;
        }
        return *read;
    }

    void wish(core::mix::Aim aim, const char* field, const QString& typed) {
        if (const auto asked = share(field, typed)) {
            out_.recipe.wishes.push_back({aim, asked, asked});
        }
    }

    void line(std::size_t i) {
        const MixLineEntry& typed = entry_.lines[i];
        core::mix::Line made;
        made.ingredient = typed.ingredient.toStdString();
        made.held = typed.held;
        made.as_wash = typed.as_wash;
        made.note = typed.note;
        made.rub = typed.rub;
        const auto amount = core::mix::parse_amount(trimmed(typed.amount).toStdString(),
                                                    typed.basis, text::parse_style(style_));
        if (amount) {
            made.amount = *amount;
        } else {
            fault("amount", amount.error(), static_cast<int>(i));
        }
        const auto label = parse_label(typed.label, kind_of(typed.ingredient, entry_.own), style_);
        if (label) {
            made.label = *label;
        } else {
            fault("label", label.error(), static_cast<int>(i));
        }
        out_.recipe.lines.push_back(std::move(made));
    }

    void meat() {
        const auto parts = entry_.meat.split(between_parts(), Qt::SkipEmptyParts);
        for (const auto& part : parts) {
            const auto mass =
                core::units::parse_mass(trimmed(part).toStdString(), text::bare_mass_unit(style_),
                                        text::parse_style(style_));
            if (mass) {
                out_.pieces.push_back({std::to_string(out_.pieces.size() + 1), *mass});
            } else if (!trimmed(part).isEmpty()) {
                fault("meat", mass.error());
            }
        }
    }

    const MixEntry& entry_;
    const text::Style& style_;
    MixReading out_;
};

} // namespace

const core::facts::Facts& mix_facts() {
    static const core::facts::Facts facts = core::facts::built_in_facts();
    return facts;
}

MixReading read_entry(const MixEntry& entry, const text::Style& style) {
    return EntryReader(entry, style).run();
}

MixEntry entry_of(const core::mix::RecipeDocument& recipe, const text::Style& style) {
    MixEntry entry;
    entry.name = QString::fromStdString(recipe.name);
    entry.method = recipe.method;
    entry.limits = QString::fromStdString(recipe.limits);
    entry.uptake =
        share_text(recipe.method == Method::injected ? recipe.pump : recipe.pickup, style);
    entry.loss = share_text(recipe.expected_loss, style);
    entry.skin_on = recipe.meat.skin != core::model::SkinSide::none;
    entry.fatty = recipe.meat.fatty;
    entry.moisture = recipe.meat.moisture;
    entry.skin_share = recipe.meat.skin_share;
    entry.own = recipe.ingredients;
    entry.rubs = recipe.rubs;
    entry.for_meat = recipe.for_meat;
    for (const auto& wish : recipe.wishes) {
        const bool exact = wish.at_least && wish.at_most && *wish.at_least == *wish.at_most;
        if (exact && wish.what == core::mix::Aim::salt && entry.salt_wish.isEmpty()) {
            entry.salt_wish = share_text(wish.at_least, style);
        } else if (exact && wish.what == core::mix::Aim::nitrite && entry.nitrite_wish.isEmpty()) {
            entry.nitrite_wish = spelled(wish.at_least->in_ppm(), style) + QStringLiteral(" ppm");
        } else {
            entry.other_wishes.push_back(wish);
        }
    }
    for (const auto& line : recipe.lines) {
        MixLineEntry made;
        made.ingredient = QString::fromStdString(line.ingredient);
        made.amount = spelled(QString::fromStdString(core::mix::to_text(line.amount)), style);
        if (const auto* share = std::get_if<core::mix::ShareAmount>(&line.amount)) {
            made.basis = share->basis;
        }
        made.label = label_words(line.label, style);
        made.held = line.held;
        made.as_wash = line.as_wash;
        made.note = line.note;
        made.rub = line.rub;
        entry.lines.push_back(made);
    }
    return entry;
}

MixEntry starting_entry(const text::Style& style) {
    MixEntry entry;
    const auto basis = core::mix::Basis::meat;
    entry.lines = {
        {QStringLiteral("table_salt"),
         spelled(2.5, style) + QStringLiteral(" %"),
         basis,
         {},
         false,
         false},
        {QStringLiteral("white_sugar"), QStringLiteral("1 %"), basis, {}, false, false},
        {QStringLiteral("black_pepper"), QStringLiteral("5 g/kg"), basis, {}, false, false}};
    return entry;
}

core::base::Result<Label> parse_label(const QString& text, IngredientKind kind,
                                      const text::Style& style) {
    Label label;
    const auto parts = text.split(between_parts(), Qt::SkipEmptyParts);
    for (const auto& raw : parts) {
        const QString part = raw.trimmed();
        if (part.isEmpty()) {
            continue;
        }
        const auto parse = text::parse_style(style);
        if (!part.front().isLetter()) { // a lone strength
            const QString word =
                is_drink(kind) ? QStringLiteral("alcohol")
                : kind == IngredientKind::curing_salt || kind == IngredientKind::pure_cure
                    ? QStringLiteral("nitrite")
                : kind == IngredientKind::sauce ? QStringLiteral("salt")
                                                : QString();
            if (word.isEmpty()) {
                return core::base::fault(ErrorCode::trailing_text, part.toStdString());
            }
            if (const auto set = set_by_word(label, word, part.toStdString(), parse); !set) {
                return tl::unexpected(set.error());
            }
            continue;
        }
        const auto blank = part.indexOf(QLatin1Char(' '));
        const QString word = part.left(blank).toLower();
        const QString value = blank < 0 ? QString() : part.mid(blank + 1).trimmed();
        const bool per_volume = value.contains(QLatin1String(" per ")) &&
                                (word == QLatin1String("salt") || word == QLatin1String("sodium"));
        const auto set = per_volume ? set_per_volume(label, word, value, parse)
                                    : set_by_word(label, word, value.toStdString(), parse);
        if (!set) {
            return tl::unexpected(set.error());
        }
    }
    return label;
}

QString label_words(const Label& label, const text::Style& style) {
    QStringList parts;
    const auto share = [&](const char* word, const std::optional<MassShare>& value) {
        if (value) {
            parts << QLatin1String(word) + QLatin1Char(' ') + share_text(value, style);
        }
    };
    share("nitrite", label.nitrite);
    share("nitrate", label.nitrate);
    if (label.alcohol) {
        parts << QStringLiteral("alcohol ") + spelled(label.alcohol->in_percent(), style) +
                     QStringLiteral(" %");
    }
    share("salt", label.salt);
    share("sodium", label.sodium);
    if (label.sodium_per_volume) {
        parts << QStringLiteral("sodium %1 g per %2 mL")
                     .arg(spelled(label.sodium_per_volume->sodium.in_grams(), style),
                          spelled(label.sodium_per_volume->serving.in_millilitres(), style));
    }
    if (label.salt_per_100ml) {
        parts << QStringLiteral("salt %1 g per 100 mL")
                     .arg(spelled(label.salt_per_100ml->in_grams(), style));
    }
    share("sugar", label.sugar);
    share("acid", label.acid);
    share("water", label.water);
    if (label.density) {
        parts << QStringLiteral("density ") +
                     spelled(label.density->in_grams_per_millilitre(), style);
    }
    return parts.join(QStringLiteral("; "));
}

QString label_hint(IngredientKind kind) {
    switch (kind) {
    case IngredientKind::curing_salt:
    case IngredientKind::pure_cure:
        return MixBench::tr("nitrite 6.25 %; nitrate 4 %");
    case IngredientKind::spirit:
    case IngredientKind::wine:
        return MixBench::tr("40 % or 80 proof US");
    case IngredientKind::sauce:
        return MixBench::tr("salt 16 % or sodium 6.3 g/100 g");
    case IngredientKind::vinegar:
        return MixBench::tr("acid 5 %");
    default:
        return {};
    }
}

std::vector<IngredientChoice> ingredient_choices(const std::vector<core::mix::OwnIngredient>& own) {
    std::vector<IngredientChoice> choices;
    choices.reserve(own.size() + mix_facts().catalogue.entries().size());
    for (const auto& o : own) {
        choices.push_back({QString::fromStdString(o.id), QString::fromStdString(o.name), o.kind});
    }
    for (const auto& entry : mix_facts().catalogue.entries()) {
        choices.push_back(
            {QString::fromStdString(entry.id), text::data_name(entry.name), entry.kind});
    }
    return choices;
}

std::vector<NamedChoice> mix_limit_choices() {
    std::vector<NamedChoice> choices;
    for (const auto& set : mix_facts().limit_sets.sets()) {
        choices.push_back({QString::fromStdString(set.id), text::data_name(set.name)});
    }
    return choices;
}

} // namespace ui::presenters
