#pragma once

#include "core/units/time.h"
#include "ui/edits/entry_field.h"

#include <optional>

namespace ui::edits {

/// What people write for a day: "14 Mar", "14.3.", "2026-03-14", "today", "tomorrow", "+3",
/// "in 3 days"; short forms mean the nearest such day to `today`. Month and number order follow
/// the language. Pure; exposed for its test.
core::base::Result<core::units::Day> read_day(const QString& text, core::units::Day today,
                                              const text::Style& style);

/// A calendar day, typed or picked.
class DayField : public EntryField {
    Q_OBJECT
  public:
    DayField(const char* object_name, const QString& accessible_name, const text::Style& style,
             core::units::Day today, QWidget* parent = nullptr);
    [[nodiscard]] std::optional<core::units::Day> value() const;
    void set_value(std::optional<core::units::Day> value);

  protected:
    [[nodiscard]] core::base::Result<QString> understood(const QString& text) const override;
    [[nodiscard]] QString echo_mark() const override { return {}; }

  private:
    void pick();
    text::Style style_;
    core::units::Day today_;
};

/// A clock time of the day: "18:30", "1830", "6.30 pm". Minutes after midnight.
class ClockField : public EntryField {
    Q_OBJECT
  public:
    ClockField(const char* object_name, const QString& accessible_name, const text::Style& style,
               QWidget* parent = nullptr);
    [[nodiscard]] std::optional<int> value() const;
    void set_value(int minute);

  protected:
    [[nodiscard]] core::base::Result<QString> understood(const QString& text) const override;

  private:
    text::Style style_;
};

} // namespace ui::edits
