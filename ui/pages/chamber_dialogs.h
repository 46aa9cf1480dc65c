#pragma once

#include "ui/edits/choice_box.h"
#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace ui::pages {

/// A chamber: what it is, the air wanted in it, what water it can carry out, how many places.
class ChamberDialog : public EntryDialog {
    Q_OBJECT
  public:
    ChamberDialog(presenters::Workspace& workspace, const core::model::Chamber& chamber,
                  QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;

  private:
    core::model::Chamber chamber_;
    QLineEdit* name_;
    edits::ChoiceBox<core::model::ChamberKind>* kind_;
    edits::TemperatureField* low_temperature_;
    edits::TemperatureField* high_temperature_;
    edits::HumidityField* low_humidity_;
    edits::HumidityField* high_humidity_;
    edits::MassField* capacity_;
    edits::NumberField* places_;
    QLineEdit* notes_;
};

/// A sensor: where it hangs and what is added to its readings.
class SensorDialog : public EntryDialog {
    Q_OBJECT
  public:
    SensorDialog(presenters::Workspace& workspace, const core::model::Sensor& sensor,
                 QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;

  private:
    core::model::Sensor sensor_;
    QLineEdit* name_;
    QLineEdit* place_;
    edits::NumberField* temperature_offset_; ///< kelvin: the same step in C
    edits::NumberField* humidity_offset_;    ///< points of humidity
    QCheckBox* active_;
};

/// A salt-bag or ice check of a sensor. Its first check makes the instrument it is kept under.
class SensorCheckDialog : public EntryDialog {
    Q_OBJECT
  public:
    SensorCheckDialog(presenters::Workspace& workspace, const core::model::Sensor& sensor,
                      QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    void edited() override;

  private:
    [[nodiscard]] std::optional<core::model::InstrumentId> instrument();
    [[nodiscard]] bool is_ice() const;

    core::model::Sensor sensor_;
    QComboBox* kind_;
    edits::DayField* day_;
    edits::NumberField* found_;
    QLineEdit* action_;
    QLabel* suggestion_;
};

} // namespace ui::pages
