#include "core/units/parse.h"
#include "ui/text/quantity_words.h"

#include <gtest/gtest.h>

using namespace ui::text;
using core::units::Mass;

namespace {

Style style_of(MassStyle mass, const char* language = "en-GB") {
    Style style;
    style.mass = mass;
    style.locale = QLocale(QString::fromLatin1(language));
    return style;
}

std::string plain(const QString& text) {
    return QString(text).replace(QChar(QChar::Nbsp), QLatin1Char(' ')).toStdString();
}

} // namespace

// 1 lb = 453.59237 g, 1 oz = 28.349523125 g (NIST Handbook 44, Appendix C).
TEST(QuantityWords, MassInEachStyle) {
    EXPECT_EQ(plain(words(Mass::grams(741), style_of(MassStyle::grams))), "741 g");
    EXPECT_EQ(plain(words(Mass::grams(0), style_of(MassStyle::grams))), "0 g");
    EXPECT_EQ(plain(words(Mass::grams(2.47), style_of(MassStyle::grams), Mass::grams(0.01))),
              "2.47 g");
    EXPECT_EQ(plain(words(Mass::grams(1320), style_of(MassStyle::kilograms))), "1.32 kg");
    EXPECT_EQ(plain(words(Mass::grams(741), style_of(MassStyle::kilograms))), "741 g");
    EXPECT_EQ(plain(words(Mass::pounds(2.21875), style_of(MassStyle::pounds))), "2 lb 3.5 oz");
    EXPECT_EQ(plain(words(Mass::ounces(14.625), style_of(MassStyle::ounces))), "14.6 oz");
}

TEST(QuantityWords, RoundingCarriesIntoThePound) {
    EXPECT_EQ(plain(words(Mass::ounces(15.97), style_of(MassStyle::pounds))), "1 lb 0.0 oz");
}

TEST(QuantityWords, DecimalSignIsTheLanguages) {
    EXPECT_EQ(plain(words(Mass::grams(1320), style_of(MassStyle::kilograms, "de"))), "1,32 kg");
}

TEST(QuantityWords, NoThousandsMarkThatReadsAsADecimal) {
    EXPECT_EQ(plain(words(Mass::grams(12345), style_of(MassStyle::grams, "de"))), "12345 g");
}

TEST(QuantityWords, SmallSharesTurnIntoPpm) {
    const auto style = style_of(MassStyle::grams);
    EXPECT_EQ(plain(words(core::units::MassShare::ppm(156), style)), "156 ppm");
    EXPECT_EQ(plain(words(core::units::MassShare::percent(35), style)), "35.0 %");
    EXPECT_EQ(plain(words(core::units::MassShare::fraction(0), style)), "0.0 %");
}

// What is written reads back as the same weight, in every style and language.
TEST(QuantityWords, MassReadsBack) {
    for (const char* language : {"en-GB", "de", "fr"}) {
        for (const auto mass :
             {MassStyle::grams, MassStyle::kilograms, MassStyle::ounces, MassStyle::pounds}) {
            const auto style = style_of(mass, language);
            for (const double grams : {3.0, 250.0, 999.0, 1000.0, 2147.0}) {
                const auto read =
                    core::units::parse_mass(plain(words(Mass::grams(grams), style)),
                                            bare_mass_unit(style), parse_style(style));
                ASSERT_TRUE(read.has_value()) << grams << " " << language;
                EXPECT_NEAR(read->in_grams(), grams, grams * 0.004 + 0.2) << language;
            }
        }
    }
}
