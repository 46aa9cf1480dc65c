#pragma once

#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "ui/edits/entry_field.h"

#include <optional>

namespace ui::edits {

/// An entry field for one kind of quantity. Accepts any unit of the kind; a bare number is read
/// in the person's own unit, which stands beside the field.
template <class Quantity>
class QuantityField : public EntryField {
  public:
    QuantityField(const char* object_name, const QString& accessible_name, const text::Style& style,
                  QWidget* parent = nullptr);
    /// Empty when nothing, or nothing sensible, is entered.
    [[nodiscard]] std::optional<Quantity> value() const;
    void set_value(std::optional<Quantity> value);
    /// After the person changed units: the entry is kept and written in the new unit.
    void set_style(const text::Style& style);

  protected:
    [[nodiscard]] core::base::Result<QString> understood(const QString& text) const override;

  private:
    text::Style style_;
};

using MassField = QuantityField<core::units::Mass>;
using LengthField = QuantityField<core::units::Length>;
using VolumeField = QuantityField<core::units::Volume>;
using TemperatureField = QuantityField<core::units::Temperature>;
using HumidityField = QuantityField<core::units::RelativeHumidity>;
using DurationField = QuantityField<core::units::Duration>;
/// Percent when bare: "35" is 35 %.
using ShareField = QuantityField<core::units::MassShare>;
/// A plain number.
using NumberField = QuantityField<double>;

} // namespace ui::edits
