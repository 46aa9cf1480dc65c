#include "ui/presenters/keep_by.h"

#include "core/facts/keeping.h"
#include "ui/text/data_name.h"
#include "ui/text/finding_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::presenters {
namespace {

struct KeepWords {
    Q_DECLARE_TR_FUNCTIONS(KeepWords)
};

using core::facts::KeepRule;
using core::facts::PackForm;
using core::model::PackKind;

/// Read once: the built-in facts do not change while the program runs.
const core::facts::KeepRules& rules() {
    static const core::facts::KeepRules all = core::facts::built_in_keep_rules();
    return all;
}

PackForm form_of(PackKind kind) {
    switch (kind) {
    case PackKind::whole:
        return PackForm::whole;
    case PackKind::cut:
        return PackForm::cut;
    case PackKind::vacuum:
        return PackForm::vacuum;
    case PackKind::frozen:
        break;
    }
    return PackForm::frozen;
}

QString rule_words(const KeepRule& rule) {
    const QString name = text::data_name(rule.name);
    return rule.counts_from == KeepRule::From::opening
               ? KeepWords::tr("%1: %n day(s) from opening", nullptr, rule.days).arg(name)
               : KeepWords::tr("%1: %n day(s) from packing", nullptr, rule.days).arg(name);
}

QString source_of(const KeepRule& rule) {
    const QString source = text::source_words(rule.source);
    return rule.note.empty()
               ? source
               : KeepWords::tr("%1. Note: %2").arg(source, text::data_name(rule.note));
}

} // namespace

QVector<KeepChoice> keep_choices(PackKind kind, core::units::Day packed_on,
                                 std::optional<core::units::Day> opened_on,
                                 std::optional<core::units::Day> latest) {
    QVector<KeepChoice> choices;
    const auto from = opened_on ? KeepRule::From::opening : KeepRule::From::packing;
    for (const auto& rule : rules().rules_for(form_of(kind), from)) {
        auto day = opened_on.value_or(packed_on) + rule.days;
        if (opened_on && latest) {
            day = std::min(day, *latest);
        }
        choices.push_back(
            {QString::fromStdString(rule.id), rule_words(rule), source_of(rule), day});
    }
    return choices;
}

QString keep_rule_words(const std::string& id) {
    const auto* rule = rules().find(id);
    return rule == nullptr ? QString()
                           : KeepWords::tr("%1 (%2)").arg(rule_words(*rule), source_of(*rule));
}

QString own_day_why(const core::services::Book& book, const core::model::Pack& pack) {
    if (!pack.keep_by || !pack.keep_by_rule.empty()) {
        return {};
    }
    const auto history = book.history({core::model::EntryKind::pack, pack.id.row()});
    QString why;
    if (!history) {
        return why;
    }
    const std::string day = std::to_string(pack.keep_by->days_since_epoch());
    for (const auto& line : *history) {
        const bool sets_it =
            std::any_of(line.fields.begin(), line.fields.end(),
                        [&](const auto& f) { return f.field == "keep_by_day" && f.after == day; });
        if (sets_it && !line.why.empty()) {
            why = QString::fromStdString(line.why);
        }
    }
    return why;
}

} // namespace ui::presenters
