// What the window writes in a language is read back in that language.
#include "ui/text/unit_words.h"

#include "core/units/parse.h"
#include "ui/text/languages.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>
#include <gtest/gtest.h>

using namespace ui::text;
using core::units::Duration;
using core::units::RelativeHumidity;

namespace {

class UnitWordsOfEach : public ::testing::TestWithParam<QString> {
  protected:
    void SetUp() override {
        ASSERT_TRUE(load_texts(*qApp, GetParam()));
        style.locale = QLocale(GetParam());
    }
    void TearDown() override { load_texts(*qApp, QStringLiteral("en")); }
    static std::string typed(QString text) {
        text.replace(QChar(QChar::Nbsp), QLatin1Char(' '));
        return in_parsed_units(text).toStdString();
    }
    Style style;
};

} // namespace

TEST_P(UnitWordsOfEach, TimesReadBack) {
    for (const auto time : {Duration::minutes(36), Duration::hours(12), Duration::days(3.25),
                            Duration::days(20), Duration::days(77)}) {
        const QString written = words(time, style);
        const auto read = core::units::parse_duration(typed(written), parse_style(style));
        ASSERT_TRUE(read.has_value()) << written.toStdString() << " as " << typed(written);
        EXPECT_NEAR(read->in_hours(), time.in_hours(), 0.6) << written.toStdString();
    }
}

TEST_P(UnitWordsOfEach, HumidityReadsBack) {
    const QString written = words(RelativeHumidity::fraction(0.75), style);
    const auto read = core::units::parse_relative_humidity(typed(written), parse_style(style));
    ASSERT_TRUE(read.has_value()) << written.toStdString() << " as " << typed(written);
    EXPECT_NEAR(read->in_percent(), 75, 1e-9);
}

TEST_P(UnitWordsOfEach, SymbolsOfWeightsAndSizesAreTheSameEverywhere) {
    for (const char* symbol : {"g", "kg", "oz", "lb", "mm", "in", "mL", "fl oz", "°C", "°F"}) {
        EXPECT_EQ(QCoreApplication::translate("UnitWords", symbol), QString::fromUtf8(symbol));
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, UnitWordsOfEach, ::testing::ValuesIn(languages()),
                         [](const auto& of) { return of.param.toStdString(); });

TEST(UnitWords, EnglishComesBackAsItWas) {
    EXPECT_EQ(in_parsed_units(QStringLiteral("3 d 4 h")), QStringLiteral("3 d 4 h"));
    EXPECT_EQ(in_parsed_units(QStringLiteral("10 days")), QStringLiteral("10 days"));
}
