#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/text/date_words.h"

#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

using namespace ui::edits;
using core::units::Day;

namespace {

Day day(int y, unsigned m, unsigned d) {
    return Day::from_date(std::chrono::year_month_day{std::chrono::year{y}, std::chrono::month{m},
                                                      std::chrono::day{d}});
}

const ui::text::Style grams{};

} // namespace

TEST(MassField, TakesAnyUnitAndEchoesThePersons) {
    MassField field("mass", QStringLiteral("Mass"), grams);
    QTest::keyClicks(field.line(), QStringLiteral("1 lb 3 1/2 oz"));
    ASSERT_TRUE(field.value().has_value());
    // 19.5 oz of 28.349523125 g
    EXPECT_NEAR(field.value()->in_grams(), 552.8157, 1e-3);
    EXPECT_TRUE(field.message().contains(QStringLiteral("553"))) << field.message().toStdString();
}

TEST(MassField, ABareNumberIsInTheUnitBesideIt) {
    ui::text::Style ounces;
    ounces.mass = ui::text::MassStyle::pounds;
    MassField field("mass", QStringLiteral("Mass"), ounces);
    QTest::keyClicks(field.line(), QStringLiteral("12"));
    EXPECT_NEAR(field.value()->in_ounces(), 12, 1e-9);
}

TEST(MassField, SaysWhatIsWrongOnLeavingAndForgetsItWhenMended) {
    MassField field("mass", QStringLiteral("Mass"), grams);
    QTest::keyClicks(field.line(), QStringLiteral("12 apples"));
    EXPECT_TRUE(field.message().isEmpty()) << "no scolding while typing";
    EXPECT_FALSE(field.validate());
    EXPECT_TRUE(field.message().contains(QStringLiteral("apples")));
    field.line()->clear();
    QTest::keyClicks(field.line(), QStringLiteral("12"));
    EXPECT_TRUE(field.message().isEmpty()) << field.message().toStdString();
}

TEST(MassField, ChangingUnitsKeepsTheWeight) {
    MassField field("mass", QStringLiteral("Mass"), grams);
    field.set_value(core::units::Mass::grams(1000));
    ui::text::Style ounces;
    ounces.mass = ui::text::MassStyle::ounces;
    field.set_style(ounces);
    EXPECT_NEAR(field.value()->in_grams(), 1000, 2);
    EXPECT_TRUE(field.text().startsWith(QLatin1String("35.3"))) << field.text().toStdString();
}

TEST(ShareField, RequiredAndEmptyIsAFault) {
    ShareField field("share", QStringLiteral("Share"), grams);
    EXPECT_TRUE(field.validate());
    field.set_required(true);
    EXPECT_FALSE(field.validate());
    field.set_value(core::units::MassShare::percent(0.25));
    EXPECT_EQ(field.text(), QStringLiteral("0.25"));
    EXPECT_TRUE(field.validate());
}

TEST(ReadDay, WhatPeopleWrite) {
    const Day today = day(2026, 11, 25);
    const auto read = [&](const char* text) {
        return read_day(QString::fromUtf8(text), today, grams);
    };
    EXPECT_EQ(*read("2026-12-24"), day(2026, 12, 24));
    EXPECT_EQ(*read("24 Dec 2026"), day(2026, 12, 24));
    EXPECT_EQ(*read("24 Dec"), day(2026, 12, 24));
    EXPECT_EQ(*read("3 Jan"), day(2027, 1, 3)) << "the nearest, not this year's";
    EXPECT_EQ(*read("today"), today);
    EXPECT_EQ(*read("+3"), today + 3);
    EXPECT_EQ(*read("24.12."), day(2026, 12, 24));
    EXPECT_EQ(*read("24/12"), day(2026, 12, 24));
    EXPECT_EQ(*read("29 Feb 2028"), day(2028, 2, 29));
    EXPECT_FALSE(read("29 Feb 2027").has_value());
    // 24 December 2026 is a Thursday.
    EXPECT_EQ(*read("Thu 24 Dec"), day(2026, 12, 24));
    EXPECT_EQ(*read("Fri 24 Dec"), day(2027, 12, 24)) << "the weekday settles the year";
    EXPECT_FALSE(read("Mon 24 Dec").has_value()) << "no such day in the years around";
    EXPECT_FALSE(read("soon").has_value());
}

TEST(ReadDay, WhatTheProgramItselfWritesInEveryLanguage) {
    const Day today = day(2026, 11, 25);
    for (const char* name : {"en_GB", "en_US", "de_DE", "it_IT", "es_ES", "fr_FR", "zh_CN"}) {
        ui::text::Style style = grams;
        style.locale = QLocale(QString::fromLatin1(name));
        for (int ahead = -40; ahead <= 40; ahead += 7) {
            const QString written = ui::text::short_words(today + ahead, style);
            const auto found = read_day(written, today, style);
            ASSERT_TRUE(found.has_value()) << name << ": " << written.toStdString();
            EXPECT_EQ(*found, today + ahead) << name << ": " << written.toStdString();
        }
    }
}

TEST(ClockField, ReadsTheUsualForms) {
    ClockField field("clock", QStringLiteral("Clock"), grams);
    for (const auto& [text, minute] : std::initializer_list<std::pair<const char*, int>>{
             {"18:30", 1110}, {"1830", 1110}, {"6.30 pm", 1110}, {"12:05 am", 5}, {"0:00", 0}}) {
        field.set_text(QString::fromLatin1(text));
        ASSERT_TRUE(field.value().has_value()) << text;
        EXPECT_EQ(*field.value(), minute) << text;
    }
    field.set_text(QStringLiteral("25:00"));
    EXPECT_FALSE(field.value().has_value());
}
