#include "ui/presenters/mix_tables.h"

#include "ui/text/data_name.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <functional>

namespace ui::presenters {
namespace {

using core::mix::Dose;
using core::mix::MixSheet;
using core::mix::ShareInterval;
using core::units::Mass;
using core::units::MassShare;

struct MixTables {
    Q_DECLARE_TR_FUNCTIONS(MixTables)
};

/// As many decimals as the scale shows; a hundredth where no scale was chosen.
int decimals_of(const std::optional<Mass>& step) {
    if (!step) {
        return 2;
    }
    const double places = -std::log10(step->in_grams());
    return places <= 0 ? 0 : static_cast<int>(std::ceil(places - 1e-9));
}

QString substance_words(core::facts::Substance substance) {
    switch (substance) {
    case core::facts::Substance::nitrite:
        return MixTables::tr("nitrite");
    case core::facts::Substance::nitrate:
        return MixTables::tr("nitrate");
    case core::facts::Substance::nitrite_and_nitrate:
        return MixTables::tr("nitrite and nitrate together");
    case core::facts::Substance::ascorbate:
        return MixTables::tr("ascorbate or erythorbate");
    case core::facts::Substance::ascorbic_acid:
        return MixTables::tr("ascorbic or erythorbic acid");
    case core::facts::Substance::phosphate:
        return MixTables::tr("phosphate");
    }
    return {};
}

QString basis_of(const core::facts::Limit& limit) {
    switch (limit.basis) {
    case core::facts::LimitBasis::ingoing:
        return MixTables::tr("going in, on the raw weight");
    case core::facts::LimitBasis::finished:
        return MixTables::tr("in the finished product");
    case core::facts::LimitBasis::residual:
        return MixTables::tr("left over, by laboratory");
    }
    return {};
}

QString expressed(const core::facts::Limit& limit) {
    switch (limit.expressed_as) {
    case core::facts::ExpressedAs::salt_as_weighed:
        return MixTables::tr("as weighed");
    case core::facts::ExpressedAs::sodium_salt:
        return MixTables::tr("as sodium salt");
    case core::facts::ExpressedAs::ion:
        return MixTables::tr("as ion");
    }
    return {};
}

QString bound_words(const core::facts::Limit& limit, const text::Style& style) {
    if (limit.not_permitted) {
        return MixTables::tr("not permitted");
    }
    QStringList parts;
    if (limit.minimum) {
        parts << MixTables::tr("at least %1").arg(text::ppm_words(*limit.minimum, style));
    }
    if (limit.maximum) {
        parts << MixTables::tr("at most %1").arg(text::ppm_words(*limit.maximum, style));
    }
    return parts.join(QStringLiteral(", "));
}

QString outcome_words(const core::mix::LimitCheck& check) {
    using Outcome = core::mix::LimitCheck::Outcome;
    switch (check.outcome) {
    case Outcome::within:
        return MixTables::tr("within");
    case Outcome::above:
        return MixTables::tr("above");
    case Outcome::below:
        return MixTables::tr("below");
    case Outcome::not_permitted_used:
        return MixTables::tr("used");
    case Outcome::not_computable:
        return MixTables::tr("not computable");
    }
    return {};
}

bool any(const MixSheet& sheet, const MixSheet* other, ShareInterval Dose::*member) {
    const auto nothing = MassShare::fraction(0);
    return (sheet.dose.*member).high > nothing ||
           (other != nullptr && (other->dose.*member).high > nothing);
}

} // namespace

QString range_words(const ShareInterval& share, const text::Style& style) {
    const auto percent = [&](MassShare s) { return text::number_words(s.in_percent(), style, 2); };
    QString best = percent(share.best) + QStringLiteral(" %");
    if (percent(share.low) == percent(share.high)) {
        return best;
    }
    return MixTables::tr("%1 (%2 to %3)").arg(best, percent(share.low), percent(share.high));
}

QString ppm_range_words(const ShareInterval& share, const text::Style& style) {
    const QString best = text::ppm_words(share.best, style);
    const QString low = text::ppm_words(share.low, style);
    const QString high = text::ppm_words(share.high, style);
    return low == high ? best : MixTables::tr("%1 (%2 to %3)").arg(best, low, high);
}

TextTable weigh_table(const MixSheet& sheet, const std::optional<Mass>& step,
                      const text::Style& style) {
    TextTable table;
    const int decimals = decimals_of(step);
    const bool several = sheet.pieces.size() > 1;
    table.heads << MixTables::tr("Ingredient")
                << (several ? MixTables::tr("All at once") : MixTables::tr("Weigh out"));
    if (several) {
        for (const auto& piece : sheet.pieces) {
            table.heads << MixTables::tr("%1: %2").arg(QString::fromStdString(piece.code),
                                                       text::words(piece.meat, style));
        }
    }
    const bool poured = std::any_of(sheet.lines.begin(), sheet.lines.end(),
                                    [](const auto& line) { return line.volume.has_value(); });
    if (poured) {
        table.heads << MixTables::tr("Jug");
    }
    table.heads << MixTables::tr("Scale, ±");
    for (std::size_t i = 0; i < sheet.lines.size(); ++i) {
        const auto& line = sheet.lines[i];
        QStringList row{text::data_name(line.name),
                        text::dose_words(line.weigh_out, style, decimals)};
        double worst = line.step_error.value_or(0);
        if (several) {
            for (const auto& piece : sheet.pieces) {
                const bool there = i < piece.lines.size();
                row << (there ? text::dose_words(piece.lines[i].weigh_out, style, decimals)
                              : text::unknown());
                worst = there ? std::max(worst, piece.lines[i].step_error.value_or(0)) : worst;
            }
        }
        if (poured) {
            row << (line.volume ? text::words(*line.volume, style) : QString());
        }
        row << (step ? text::words(MassShare::fraction(worst), style, 1) : text::unknown());
        table.rows.push_back(row);
    }
    return table;
}

TextTable dose_table(const MixSheet& sheet, const MixSheet* other, const QString& other_name,
                     const text::Style& style) {
    TextTable table;
    std::vector<const Dose*> doses{&sheet.dose};
    table.heads << MixTables::tr("Of the meat")
                << (sheet.half_absorbed ? MixTables::tr("Liquids fully taken up")
                                        : MixTables::tr("This recipe"));
    if (sheet.half_absorbed) {
        doses.push_back(&*sheet.half_absorbed);
        table.heads << MixTables::tr("Half taken up");
    }
    if (other != nullptr) {
        doses.push_back(&other->dose);
        table.heads << other_name;
    }
    const auto row = [&](const QString& name, ShareInterval Dose::*member, bool ppm) {
        if (!any(sheet, other, member)) {
            return;
        }
        QStringList cells{name};
        for (const Dose* dose : doses) {
            cells << (ppm ? ppm_range_words(dose->*member, style)
                          : range_words(dose->*member, style));
        }
        table.rows.push_back(cells);
    };
    row(MixTables::tr("Salt, all of it"), &Dose::salt, false);
    row(MixTables::tr("Salt in the water phase"), &Dose::water_phase_salt, false);
    row(MixTables::tr("Sugar"), &Dose::sugar, false);
    row(MixTables::tr("Nitrite, as NaNO2"), &Dose::nitrite, true);
    row(MixTables::tr("Nitrite, as the ion NO2"), &Dose::nitrite_ion, true);
    row(MixTables::tr("Nitrate, as NaNO3"), &Dose::nitrate, true);
    row(MixTables::tr("Nitrate, as the ion NO3"), &Dose::nitrate_ion, true);
    row(MixTables::tr("Ascorbate or erythorbate"), &Dose::ascorbate, true);
    row(MixTables::tr("Ascorbic or erythorbic acid"), &Dose::ascorbic_acid, true);
    row(MixTables::tr("Added water"), &Dose::added_water, false);
    row(MixTables::tr("Alcohol, of the whole"), &Dose::alcohol, false);
    if (sheet.dose.alcohol_of_liquid && sheet.dose.alcohol_of_liquid->best.in_percent() > 0) {
        const auto& abv = sheet.dose.alcohol_of_liquid->best;
        QStringList cells{MixTables::tr("Strength of the liquids"),
                          MixTables::tr("%1 vol (%2 US proof, %3 UK)")
                              .arg(text::words(abv, style),
                                   text::number_words(abv.in_us_proof(), style, 0),
                                   text::number_words(abv.in_uk_proof(), style, 0))};
        while (cells.size() < table.heads.size()) {
            cells << QString();
        }
        table.rows.push_back(cells);
    }
    return table;
}

TextTable limit_table(const MixSheet& sheet, const text::Style& style) {
    TextTable table;
    table.heads << MixTables::tr("Limit and its source") << MixTables::tr("Here");
    for (const auto& check : sheet.limits) {
        const QString what =
            MixTables::tr("%1, %2, %3: %4")
                .arg(substance_words(check.limit.substance), expressed(check.limit),
                     basis_of(check.limit), bound_words(check.limit, style));
        // The source has a line of its own: how sure it is belongs beside every limit.
        table.rows.push_back(
            {what + QLatin1Char('\n') + text::source_words(check.limit.source),
             ppm_range_words(check.value, style) + QLatin1Char('\n') + outcome_words(check)});
    }
    return table;
}

QStringList scale_words(const MixSheet& sheet, const std::optional<Mass>& step,
                        const text::Style& style) {
    const int decimals = decimals_of(step);
    QStringList sentences;
    const auto name = [&](std::size_t line) { return text::data_name(sheet.lines[line].name); };
    for (const auto& advice : sheet.scale) {
        if (advice.finer_step) {
            sentences << MixTables::tr("%1: a scale that shows %2 would do.")
                             .arg(name(advice.line),
                                  text::dose_words(*advice.finer_step, style,
                                                   decimals_of(advice.finer_step)));
        }
        if (advice.blend) {
            QStringList parts;
            for (const auto& part : advice.blend->parts) {
                parts << MixTables::tr("%1 %2").arg(text::dose_words(part.mass, style, decimals),
                                                    name(part.line));
            }
            sentences << MixTables::tr("Or blend a larger lot first: %1. Mix it evenly, then weigh "
                                       "%2 of it for the smallest piece: ± %3.")
                             .arg(parts.join(QStringLiteral(" + ")),
                                  text::dose_words(advice.blend->portion, style, decimals),
                                  text::words(MassShare::fraction(advice.blend->error), style, 1));
        }
    }
    return sentences;
}

QString method_words(core::mix::Method method) {
    using core::mix::Method;
    switch (method) {
    case Method::dry:
        return MixTables::tr("Dry, weighed, all taken up");
    case Method::box:
        return MixTables::tr("Buried in salt");
    case Method::immersion_pickup:
        return MixTables::tr("Immersed, by pick-up");
    case Method::immersion_equilibrium:
        return MixTables::tr("Immersed, at equilibrium");
    case Method::equilibrium_brine:
        return MixTables::tr("Brine of meat and water");
    case Method::injected:
        return MixTables::tr("Pumped in");
    case Method::marinade:
        return MixTables::tr("Marinade");
    case Method::wash:
        return MixTables::tr("Wash of vinegar or spirit");
    }
    return {};
}

QString basis_words(core::mix::Basis basis) {
    using core::mix::Basis;
    switch (basis) {
    case Basis::meat:
        return MixTables::tr("of the meat");
    case Basis::water:
        return MixTables::tr("of the added water");
    case Basis::meat_and_water:
        return MixTables::tr("of meat and water");
    case Basis::total_water:
        return MixTables::tr("of all water");
    }
    return {};
}

} // namespace ui::presenters
