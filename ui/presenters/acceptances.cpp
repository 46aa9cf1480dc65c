#include "ui/presenters/acceptances.h"

#include "ui/text/finding_words.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace ui::presenters {
namespace {

constexpr QLatin1String shown("shown");

} // namespace

core::model::Acceptance acceptance_of(const core::model::Finding& finding, const text::Style& style,
                                      core::units::Instant at,
                                      std::optional<core::model::PersonId> by, const QString& why) {
    const QString sentence = text::finding_with_source(finding, style);
    core::model::Acceptance acceptance{.at = at};
    acceptance.code = finding.code;
    acceptance.place = finding.place;
    acceptance.detail =
        QJsonDocument(QJsonObject{{shown, sentence}}).toJson(QJsonDocument::Compact).toStdString();
    acceptance.by = by;
    acceptance.why = why.toStdString();
    return acceptance;
}

QString acceptance_words(const core::model::Acceptance& acceptance) {
    QString detail = QString::fromStdString(acceptance.detail);
    const auto json = QJsonDocument::fromJson(detail.toUtf8());
    if (json.isObject() && json.object().value(shown).isString()) {
        return json.object().value(shown).toString();
    }
    // Plans once kept the bare sentence.
    if (!detail.isEmpty() && json.isNull()) {
        return detail;
    }
    return QString::fromStdString(acceptance.code).replace(QLatin1Char('_'), QLatin1Char(' '));
}

} // namespace ui::presenters
