#include "ui/text/plan_words.h"

#include "ui/text/quantity_words.h"

#include <QCoreApplication>

#include <array>
#include <cmath>

namespace ui::text {
namespace {

struct PlanWords {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)
};

struct Verb {
    const char* code;
    const char* ask;
    const char* done;
};

constexpr std::array<Verb, 15> verbs{{
    {"turn", QT_TRANSLATE_NOOP("PlanWords", "Turn"), QT_TRANSLATE_NOOP("PlanWords", "Turned")},
    {"rub_again", QT_TRANSLATE_NOOP("PlanWords", "Rub again"),
     QT_TRANSLATE_NOOP("PlanWords", "Rubbed again")},
    {"massage", QT_TRANSLATE_NOOP("PlanWords", "Massage"),
     QT_TRANSLATE_NOOP("PlanWords", "Massaged")},
    {"weigh", QT_TRANSLATE_NOOP("PlanWords", "Weigh"),
     QT_TRANSLATE_NOOP("PlanWords", "Weighing left out")},
    {"weigh_again", QT_TRANSLATE_NOOP("PlanWords", "Weigh again, as decided"),
     QT_TRANSLATE_NOOP("PlanWords", "Weighing left out")},
    {"wipe", QT_TRANSLATE_NOOP("PlanWords", "Wipe"), QT_TRANSLATE_NOOP("PlanWords", "Wiped")},
    {"rotate", QT_TRANSLATE_NOOP("PlanWords", "Change places"),
     QT_TRANSLATE_NOOP("PlanWords", "Places changed")},
    {"check", QT_TRANSLATE_NOOP("PlanWords", "Look at the chamber"),
     QT_TRANSLATE_NOOP("PlanWords", "Chamber looked at")},
    {"start_stage", QT_TRANSLATE_NOOP("PlanWords", "Begin"),
     QT_TRANSLATE_NOOP("PlanWords", "Begun")},
    {"end_stage", QT_TRANSLATE_NOOP("PlanWords", "End"), QT_TRANSLATE_NOOP("PlanWords", "Ended")},
    {"review", QT_TRANSLATE_NOOP("PlanWords", "Judge whether it is done"),
     QT_TRANSLATE_NOOP("PlanWords", "Judging left out")},
    {"calibrate", QT_TRANSLATE_NOOP("PlanWords", "Check the instrument"),
     QT_TRANSLATE_NOOP("PlanWords", "Instrument check left out")},
    {"check_sensor", QT_TRANSLATE_NOOP("PlanWords", "Check the sensor"),
     QT_TRANSLATE_NOOP("PlanWords", "Sensor checked")},
    {"eat_first", QT_TRANSLATE_NOOP("PlanWords", "Eat or sell first"),
     QT_TRANSLATE_NOOP("PlanWords", "Seen")},
    {"air", QT_TRANSLATE_NOOP("PlanWords", "Air"), QT_TRANSLATE_NOOP("PlanWords", "Aired")},
}};

QString written_out(const std::string& code) {
    QString text = QString::fromStdString(code).replace(QLatin1Char('_'), QLatin1Char(' '));
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    return text;
}

const Verb* find(const std::string& code) {
    for (const auto& verb : verbs) {
        if (code == verb.code) {
            return &verb;
        }
    }
    return nullptr;
}

} // namespace

QString task_words(const std::string& verb) {
    const Verb* known = find(verb);
    return known != nullptr ? PlanWords::tr(known->ask) : written_out(verb);
}

QString task_done_words(const std::string& verb) {
    const Verb* known = find(verb);
    return known != nullptr ? PlanWords::tr(known->done)
                            : PlanWords::tr("%1: done").arg(written_out(verb));
}

QString length_words(const core::base::Interval<core::units::Duration>& lasts, const Style& style) {
    const double best = lasts.best.in_days();
    if (lasts.high.in_seconds() <= 0) {
        return PlanWords::tr("within the time above");
    }
    if (best < 1) {
        return words(lasts.best, style);
    }
    // Weeks from four weeks on, where a day more or less is not known anyway.
    const bool spread = lasts.high.in_days() - lasts.low.in_days() >= 1;
    const bool weeks = spread && best >= 28;
    const auto count = [&](core::units::Duration d) {
        return static_cast<int>(std::lround(weeks ? d.in_weeks() : d.in_days()));
    };
    const int low = count(lasts.low);
    const int high = count(lasts.high);
    if (!spread || low == high) {
        const int n = count(lasts.best);
        return weeks ? PlanWords::tr("%n week(s)", nullptr, n)
                     : PlanWords::tr("%n day(s)", nullptr, n);
    }
    //: %1 a smaller number
    return weeks ? PlanWords::tr("%1 to %n week(s)", nullptr, high).arg(low)
                 : PlanWords::tr("%1 to %n day(s)", nullptr, high).arg(low);
}

QString basis_words(core::planning::LengthBasis basis) {
    using core::planning::LengthBasis;
    switch (basis) {
    case LengthBasis::fixed:
        return PlanWords::tr("fixed");
    case LengthBasis::weight_rule:
        return PlanWords::tr("by weight");
    case LengthBasis::thickness_rule:
        return PlanWords::tr("by thickness");
    case LengthBasis::date:
        return PlanWords::tr("until the date");
    case LengthBasis::own_history:
        return PlanWords::tr("your own pieces");
    case LengthBasis::typical:
        return PlanWords::tr("usual");
    case LengthBasis::drying_model:
        return PlanWords::tr("drying model");
    case LengthBasis::unknown:
        return PlanWords::tr("not known");
    }
    return {};
}

QString history_words(const core::planning::HistorySummary& summary, const Style& style) {
    const int count = static_cast<int>(summary.pieces.size());
    const auto weeks = [](core::units::Duration d) {
        return static_cast<int>(std::lround(d.in_weeks()));
    };
    const int low = weeks(summary.took.low);
    const int high = weeks(summary.took.high);
    const QString took = high < 4      ? length_words(summary.took, style)
                         : low == high ? PlanWords::tr("%n week(s)", nullptr, low)
                                       : PlanWords::tr("%1 to %n week(s)", nullptr, high).arg(low);
    QString sentence =
        (summary.same_chamber
             //: %n how many pieces, %1 a time
             ? PlanWords::tr("Your last %n took %1 from hanging to done in this chamber.", nullptr,
                             count)
             //: %n how many pieces, %1 a time
             : PlanWords::tr("Your last %n took %1 from hanging to done.", nullptr, count))
            .arg(took);
    if (summary.same_time_of_year) {
        sentence += QLatin1Char(' ') + PlanWords::tr("They hung at this time of year.");
    }
    if (summary.loss_per_week) {
        sentence += QLatin1Char(' ') + PlanWords::tr("They lost %1 a week on the whole.")
                                           .arg(words(summary.loss_per_week->best, style, 1));
    }
    return sentence;
}

namespace {

QString target_sentence(const core::planning::Proposal& proposal, const Style& style) {
    const bool soft = proposal.texture_score.value_or(0) < 0;
    return (soft ? PlanWords::tr("It was too soft: a loss of %1 is worth a try.")
                 : PlanWords::tr("It was too dry: a loss of %1 is worth a try."))
        .arg(words(*proposal.target_next, style));
}

QString salt_sentence(const core::planning::Proposal& proposal, const Style& style) {
    const bool salty = proposal.salt_score.value_or(0) > 0;
    QString sentence = (salty ? PlanWords::tr("It was too salty at %1 in the finished piece.")
                              : PlanWords::tr("It lacked salt at %1 in the finished piece."))
                           .arg(words(*proposal.finished_salt, style));
    if (proposal.salt_next) {
        sentence +=
            QLatin1Char(' ') +
            PlanWords::tr("%1 of the raw weight instead of %2 is worth a try.")
                .arg(words(*proposal.salt_next, style, 2), words(*proposal.salt_now, style, 2));
    }
    return sentence;
}

} // namespace

QString proposal_words(const core::planning::Proposal& proposal, const QString& batch,
                       const Style& style) {
    QStringList parts;
    if (!proposal.words.empty()) {
        //: %1 the code of a batch, %2 what the person wrote about it
        parts << PlanWords::tr("You wrote about %1: “%2”.")
                     .arg(batch, QString::fromStdString(proposal.words));
    }
    if (proposal.target_next) {
        parts << target_sentence(proposal, style);
    }
    if (proposal.finished_salt && proposal.salt_score.value_or(0) != 0) {
        parts << salt_sentence(proposal, style);
    }
    return parts.join(QLatin1Char(' '));
}

QString salt_reason(const core::planning::Proposal& proposal, const QString& batch,
                    const Style& style) {
    if (!proposal.salt_next) {
        return {};
    }
    return (proposal.salt_score.value_or(0) > 0 ? PlanWords::tr("%1 was too salty: salt %2 to %3.")
                                                : PlanWords::tr("%1 lacked salt: salt %2 to %3."))
        .arg(batch, words(*proposal.salt_now, style, 2), words(*proposal.salt_next, style, 2));
}

QString target_reason(const core::planning::Proposal& proposal, const QString& batch,
                      const Style& style) {
    if (!proposal.target_next) {
        return {};
    }
    return (proposal.texture_score.value_or(0) < 0
                ? PlanWords::tr("%1 was too soft: loss aimed for is now %2.")
                : PlanWords::tr("%1 was too dry: loss aimed for is now %2."))
        .arg(batch, words(*proposal.target_next, style));
}

QString salt_score_words(int score) {
    switch (score) {
    case -2:
        return PlanWords::tr("much too little salt");
    case -1:
        return PlanWords::tr("a little short of salt");
    case 1:
        return PlanWords::tr("a little too salty");
    case 2:
        return PlanWords::tr("much too salty");
    default:
        return PlanWords::tr("the salt was right");
    }
}

QString texture_score_words(int score) {
    switch (score) {
    case -2:
        return PlanWords::tr("much too soft");
    case -1:
        return PlanWords::tr("a little too soft");
    case 1:
        return PlanWords::tr("a little too dry");
    case 2:
        return PlanWords::tr("much too dry");
    default:
        return PlanWords::tr("the texture was right");
    }
}

QString outcome_words(const core::model::Outcome& outcome) {
    QStringList parts;
    if (outcome.salt) {
        parts << salt_score_words(*outcome.salt);
    }
    if (outcome.texture) {
        parts << texture_score_words(*outcome.texture);
    }
    if (!outcome.change_next_time.empty()) {
        parts << PlanWords::tr("“%1”").arg(QString::fromStdString(outcome.change_next_time));
    }
    return parts.join(QStringLiteral(", "));
}

} // namespace ui::text
