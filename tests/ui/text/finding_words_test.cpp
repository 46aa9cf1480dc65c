#include "ui/text/error_words.h"
#include "ui/text/finding_words.h"

#include <QRegularExpression>
#include <QSet>
#include <gtest/gtest.h>

using namespace ui::text;

TEST(FindingWords, FillsBlanksInThePersonsUnits) {
    core::model::Finding finding{.code = "weighing_off_curve"};
    finding.at = core::units::Instant::from_unix_seconds(1772352000); // 1 March 2026
    const QString sentence = finding_words(finding, Style{});
    EXPECT_TRUE(sentence.contains(QStringLiteral("1 Mar"))) << sentence.toStdString();
    EXPECT_FALSE(sentence.contains(QLatin1Char('{')));
}

TEST(FindingWords, AnUnknownCodeNeverStandsAlone) {
    core::model::Finding finding{.code = "no_such_code_yet", .place = "lines[2]"};
    finding.values["amount"] = core::units::Mass::grams(12);
    const QString sentence = finding_words(finding, Style{});
    EXPECT_FALSE(sentence.contains(QLatin1Char('_'))) << sentence.toStdString();
    EXPECT_TRUE(sentence.contains(QStringLiteral("lines[2]")));
    EXPECT_TRUE(sentence.contains(QStringLiteral("12")));
}

TEST(FindingWords, SaysWhatItWasCheckedAgainstWhereThatIsKnown) {
    core::model::Finding finding{.code = "weighing_off_curve"};
    EXPECT_EQ(finding_with_source(finding, Style{}), finding_words(finding, Style{}));
    finding.source = core::base::Source{.title = "A handbook"};
    const QString sentence = finding_with_source(finding, Style{});
    EXPECT_TRUE(sentence.startsWith(finding_words(finding, Style{}) + QStringLiteral(" (")));
    EXPECT_TRUE(sentence.contains(QStringLiteral("A handbook"))) << sentence.toStdString();
}

TEST(FindingWords, NoSentenceIsAVerdict) {
    for (const QString& code : known_codes()) {
        const QString sentence = finding_words({.code = code.toStdString()}, Style{}).toLower();
        EXPECT_FALSE(QRegularExpression(QStringLiteral("\\bsafe\\b")).match(sentence).hasMatch())
            << code.toStdString();
    }
}

TEST(FindingWords, EachCodeHasOneSentence) {
    const auto codes = known_codes();
    EXPECT_EQ(QSet<QString>(codes.begin(), codes.end()).size(), codes.size());
}

TEST(ErrorWords, EveryCodeSaysHowToMendIt) {
    using core::base::ErrorCode;
    for (int code = 0; code <= static_cast<int>(ErrorCode::cancelled); ++code) {
        const QString words = error_words({static_cast<ErrorCode>(code), "x1", {}});
        EXPECT_GE(words.count(QLatin1Char('.')), 1) << code;
        EXPECT_FALSE(words.contains(QLatin1String("%1"))) << code;
        EXPECT_FALSE(words.startsWith(QLatin1String("Something went wrong"))) << code;
    }
}

TEST(ErrorWords, NamesThePlace) {
    EXPECT_TRUE(error_words({core::base::ErrorCode::bad_row, "12x", "line 14"})
                    .startsWith(QLatin1String("line 14: ")));
}
