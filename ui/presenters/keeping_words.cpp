#include "ui/presenters/keeping_words.h"

#include "ui/text/date_words.h"

#include <QCoreApplication>
#include <QTime>

#include <map>

namespace ui::presenters {
namespace {

struct KeepingWords {
    Q_DECLARE_TR_FUNCTIONS(KeepingWords)
};

namespace services = core::services;

struct KindWords {
    const char* table;
    const char* words;
};

constexpr KindWords kinds[] = {
    {"batch", QT_TRANSLATE_NOOP("KeepingWords", "Batches")},
    {"piece", QT_TRANSLATE_NOOP("KeepingWords", "Pieces")},
    {"weighing", QT_TRANSLATE_NOOP("KeepingWords", "Weighings")},
    {"event", QT_TRANSLATE_NOOP("KeepingWords", "Events")},
    {"stage", QT_TRANSLATE_NOOP("KeepingWords", "Stages")},
    {"note", QT_TRANSLATE_NOOP("KeepingWords", "Notes")},
    {"photo", QT_TRANSLATE_NOOP("KeepingWords", "Photos")},
    {"decision", QT_TRANSLATE_NOOP("KeepingWords", "Decisions")},
    {"outcome", QT_TRANSLATE_NOOP("KeepingWords", "Outcomes")},
    {"acceptance", QT_TRANSLATE_NOOP("KeepingWords", "Acceptances of cautions")},
    {"recipe", QT_TRANSLATE_NOOP("KeepingWords", "Recipes")},
    {"recipe_version", QT_TRANSLATE_NOOP("KeepingWords", "Recipe versions")},
    {"ingredient", QT_TRANSLATE_NOOP("KeepingWords", "Ingredients")},
    {"lot", QT_TRANSLATE_NOOP("KeepingWords", "Lots")},
    {"ingredient_use", QT_TRANSLATE_NOOP("KeepingWords", "Uses of ingredients")},
    {"pack", QT_TRANSLATE_NOOP("KeepingWords", "Packs")},
    {"pack_move", QT_TRANSLATE_NOOP("KeepingWords", "Moves of stock")},
    {"task_tick", QT_TRANSLATE_NOOP("KeepingWords", "Ticks of the day's work")},
    {"person", QT_TRANSLATE_NOOP("KeepingWords", "People")},
    {"chamber", QT_TRANSLATE_NOOP("KeepingWords", "Chambers")},
    {"sensor", QT_TRANSLATE_NOOP("KeepingWords", "Sensors")},
    {"instrument", QT_TRANSLATE_NOOP("KeepingWords", "Instruments")},
    {"calibration_check", QT_TRANSLATE_NOOP("KeepingWords", "Calibration checks")},
    {"climate_reading", QT_TRANSLATE_NOOP("KeepingWords", "Climate readings")},
};

} // namespace

QString number_words(std::int64_t number, const text::Style& style) {
    return style.locale.toString(static_cast<qlonglong>(number));
}

QString moment_words(core::units::Instant at, const text::Style& style) {
    const int minute = style.zone.minute_of_day(at);
    //: %1 a day with its year, %2 a clock time
    return KeepingWords::tr("%1, %2").arg(
        text::words(style.zone.day_of(at), style),
        style.locale.toString(QTime(minute / 60, minute % 60), QLocale::ShortFormat));
}

QString content_words(const services::BookSummary& summary, const text::Style& style) {
    return KeepingWords::tr("Batches: %1, pieces: %2, weighings: %3")
        .arg(number_words(summary.batches, style), number_words(summary.pieces, style),
             number_words(summary.weighings, style));
}

bool may_restore(const services::RestorePreview& preview) {
    return preview.backup.verified;
}

QString restore_words(const services::RestorePreview& preview, const text::Style& style) {
    if (!may_restore(preview)) {
        return KeepingWords::tr("This backup is damaged itself, so it is not put in the place of "
                                "the book. Choose another one.");
    }
    QStringList lines;
    lines << KeepingWords::tr("This backup was read from end to end and is whole.");
    lines << KeepingWords::tr("It brings back: %1. Last entry: %2.")
                 .arg(content_words(preview.backup, style),
                      preview.backup.last_change ? moment_words(*preview.backup.last_change, style)
                                                 : KeepingWords::tr("none"));
    if (preview.current.bytes == 0) {
        lines << KeepingWords::tr("There is no book now, so nothing is replaced.");
        return lines.join(QLatin1Char('\n'));
    }
    if (preview.current.schema_version == 0) {
        lines << KeepingWords::tr("The book as it is now cannot be read, so what would be lost is "
                                  "not known.");
    } else {
        lines
            << KeepingWords::tr("The book has now: %1.").arg(content_words(preview.current, style));
        lines << (preview.steps_lost == 0
                      ? KeepingWords::tr("No change was made since this backup.")
                      : KeepingWords::tr("Changes made since this backup, which would be gone from "
                                         "the book: %1.")
                            .arg(number_words(preview.steps_lost, style)));
    }
    lines << KeepingWords::tr("The book as it is now is not deleted: it stays in the same folder, "
                              "with “replaced” and the moment added to its name.");
    return lines.join(QLatin1Char('\n'));
}

QString check_words(const services::BookCheck& check, const text::Style& style) {
    if (check.report.sound()) {
        return KeepingWords::tr("The book is sound: its pages, indexes, links and climate "
                                "roll-ups agree.");
    }
    if (check.only_roll_ups()) {
        return KeepingWords::tr("Your entries and readings are whole. Sums made from climate "
                                "readings do not agree with them (places: %1), so charts and hours "
                                "of air may be wrong. They can be made anew from the readings.")
            .arg(number_words(static_cast<std::int64_t>(check.report.problems.size()), style));
    }
    return KeepingWords::tr("The book is damaged (places found: %1; they are listed below). Write "
                            "nothing more into it. Restore a backup, or salvage what can be read "
                            "into a new book.")
        .arg(number_words(static_cast<std::int64_t>(check.report.problems.size()), style));
}

std::vector<SalvageLine> salvage_lines(const services::SalvageReport& report) {
    std::map<std::string, services::SalvageReport::Table> left;
    for (const auto& table : report.tables) {
        left[table.name] = table;
    }
    std::vector<SalvageLine> lines;
    const auto add = [&](const QString& kind, const services::SalvageReport::Table& table) {
        if (table.kept > 0 || table.lost > 0) {
            lines.push_back({kind, table.kept, table.lost});
        }
    };
    for (const auto& [table, words] : kinds) {
        if (const auto found = left.find(table); found != left.end()) {
            add(KeepingWords::tr(words), found->second);
            left.erase(found);
        }
    }
    services::SalvageReport::Table rest;
    for (const auto& [name, table] : left) {
        rest.kept += table.kept;
        rest.lost += table.lost;
    }
    add(KeepingWords::tr("The book's own records (log, preferences, sums)"), rest);
    return lines;
}

QString salvage_words(const services::SalvageReport& report, const text::Style& style) {
    if (services::lost_rows(report) == 0) {
        return KeepingWords::tr("The new book is made and passed its check. No entry was found "
                                "that could not be read; whole pages that are gone leave no trace, "
                                "so look it through. The damaged book was not changed.");
    }
    return KeepingWords::tr("The new book is made and passed its check. Entries that are known to "
                            "be lost: %1. Look it through. The damaged book was not changed.")
        .arg(number_words(services::lost_rows(report), style));
}

} // namespace ui::presenters
