#include "ui/text/finding_words.h"

#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_tables.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <array>
#include <cmath>

namespace ui::text {
namespace {

struct FindingWords {
    Q_DECLARE_TR_FUNCTIONS(FindingWords)
};

std::array<std::span<const FindingSentence>, 7> tables() {
    return {book_sentences(),     entry_sentences(),    drying_sentences(), mix_sentences(),
            doneness_sentences(), planning_sentences(), chamber_sentences()};
}

const char* sentence_of(const std::string& code) {
    for (const auto& table : tables()) {
        for (const auto& row : table) {
            if (code == row.code) {
                return row.sentence;
            }
        }
    }
    return nullptr;
}

QString blank(const QString& name, const core::model::Finding& finding, const Style& style) {
    if (name == QLatin1String("place")) {
        return finding.place.empty() ? FindingWords::tr("this entry") : data_name(finding.place);
    }
    if (name == QLatin1String("at")) {
        return finding.at ? short_words(style.zone.day_of(*finding.at), style) : unknown();
    }
    const auto found = finding.values.find(name.toStdString());
    return found == finding.values.end() ? unknown() : words(found->second, style);
}

/// For a code nobody has written a sentence for yet: what is known, readably.
QString plain_words(const core::model::Finding& finding, const Style& style) {
    QString spoken = QString::fromStdString(finding.code);
    spoken.replace(QLatin1Char('_'), QLatin1Char(' '));
    QStringList parts;
    for (const auto& [name, value] : finding.values) {
        QString label = QString::fromStdString(name);
        label.replace(QLatin1Char('_'), QLatin1Char(' '));
        parts << FindingWords::tr("%1: %2").arg(label, words(value, style));
    }
    QString sentence = finding.place.empty()
                           ? FindingWords::tr("Please look at this: %1.").arg(spoken)
                           : FindingWords::tr("Please look at %1: %2.")
                                 .arg(QString::fromStdString(finding.place), spoken);
    if (!parts.isEmpty()) {
        sentence += FindingWords::tr(" (%1)").arg(parts.join(QStringLiteral("; ")));
    }
    return sentence;
}

} // namespace

QString words(const core::model::FindingValue& value, const Style& style) {
    struct Writer {
        const Style& style;
        QString operator()(double number) const {
            const bool whole = number == static_cast<double>(static_cast<long long>(number));
            return number_words(number, style, whole ? 0 : 2);
        }
        QString operator()(const std::string& text) const { return data_name(text); }
        QString operator()(const core::units::MassShare& share) const {
            // A labelled strength of 6.25 % or a dose of 0.25 % loses its meaning at one decimal.
            const double tenths = share.in_percent() * 10;
            const bool finer = tenths < 100 && std::abs(tenths - std::round(tenths)) > 1e-6;
            return words(share, style, finer ? 2 : 1);
        }
        QString operator()(const core::units::Mass& mass) const { return words(mass, style); }
        QString operator()(const core::units::Volume& v) const { return words(v, style); }
        QString operator()(const core::units::Temperature& t) const { return words(t, style); }
        QString operator()(const core::units::RelativeHumidity& h) const { return words(h, style); }
        QString operator()(const core::units::Duration& d) const { return words(d, style); }
        QString operator()(const core::units::Instant& at) const { return words(at, style); }
    };
    return std::visit(Writer{style}, value);
}

QString finding_words(const core::model::Finding& finding, const Style& style) {
    const char* sentence = sentence_of(finding.code);
    if (sentence == nullptr) {
        return plain_words(finding, style);
    }
    const QString text = QCoreApplication::translate("FindingWords", sentence);
    static const QRegularExpression blanks(QStringLiteral("\\{(\\w+)\\}"));
    QString filled;
    qsizetype from = 0;
    for (auto match = blanks.globalMatch(text); match.hasNext();) {
        const auto found = match.next();
        filled += QStringView(text).mid(from, found.capturedStart() - from);
        filled += blank(found.captured(1), finding, style);
        from = found.capturedEnd();
    }
    return filled + text.mid(from);
}

QString finding_with_source(const core::model::Finding& finding, const Style& style) {
    const QString sentence = finding_words(finding, style);
    return finding.source ? sentence + QCoreApplication::translate("FindingWords", " (%1)")
                                           .arg(source_words(*finding.source))
                          : sentence;
}

QString severity_words(core::model::Severity severity) {
    switch (severity) {
    case core::model::Severity::note:
        return FindingWords::tr("Note");
    case core::model::Severity::caution:
        return FindingWords::tr("Caution");
    case core::model::Severity::stop:
        return FindingWords::tr("Stop");
    }
    return {};
}

QString severity_look(core::model::Severity severity) {
    switch (severity) {
    case core::model::Severity::note:
        return QStringLiteral("note");
    case core::model::Severity::caution:
        return QStringLiteral("caution");
    case core::model::Severity::stop:
        return QStringLiteral("stop");
    }
    return {};
}

QString source_words(const core::base::Source& source) {
    using core::base::Sureness;
    QString title = QString::fromStdString(source.title);
    if (!source.edition.empty()) {
        title = FindingWords::tr("%1 (%2)").arg(title, QString::fromStdString(source.edition));
    }
    switch (source.sureness) {
    case Sureness::verified:
    case Sureness::computed:
        return title;
    case Sureness::derived:
        return FindingWords::tr("%1, by arithmetic from it").arg(title);
    case Sureness::verified_second_hand:
        return FindingWords::tr("%1 \u2013 unverified: read as quoted by others").arg(title);
    case Sureness::memory:
        return FindingWords::tr("%1 \u2013 unverified: from memory").arg(title);
    case Sureness::common_practice:
        return FindingWords::tr("common practice, no source");
    }
    return title;
}

bool has_sentence(const std::string& code) {
    return sentence_of(code) != nullptr;
}

QStringList known_codes() {
    QStringList codes;
    for (const auto& table : tables()) {
        for (const auto& row : table) {
            codes << QString::fromLatin1(row.code);
        }
    }
    return codes;
}

} // namespace ui::text
