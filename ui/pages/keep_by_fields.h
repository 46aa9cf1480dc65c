#pragma once

#include "core/model/pack.h"
#include "ui/edits/day_field.h"
#include "ui/presenters/keep_by.h"

#include <QObject>

class QComboBox;
class QLabel;
class QLineEdit;

namespace ui::presenters {
class Workspace;
}

namespace ui::pages {

/// The fields that say until when a pack is kept: a rule with its source, the day, and the reason
/// where the person sets a day of their own. The form that uses them puts them into its rows.
class KeepByFields : public QObject {
    Q_OBJECT
  public:
    KeepByFields(presenters::Workspace& workspace, QObject* parent);

    /// What a pack has; its own day needs no new reason while it stays.
    void start_from(const core::model::Pack& pack);
    /// The rules for a pack of this kind and these days; one that is chosen follows them.
    void offer(core::model::PackKind kind, std::optional<core::units::Day> packed_on,
               std::optional<core::units::Day> opened_on);

    [[nodiscard]] QComboBox* rule() const { return rule_; }
    [[nodiscard]] edits::DayField* day() const { return day_; }
    [[nodiscard]] QLineEdit* why() const { return why_; }
    [[nodiscard]] QLabel* source() const { return source_; }

    void write_to(core::model::Pack& pack) const;
    /// An own day without its reason: the form says so and does not keep it.
    [[nodiscard]] bool reason_is_missing() const;
    [[nodiscard]] QString reason() const;

  private:
    void rule_chosen();
    void day_edited();
    void show_source();
    [[nodiscard]] bool is_own_day() const;

    QComboBox* rule_;
    edits::DayField* day_;
    QLineEdit* why_;
    QLabel* source_;
    QVector<presenters::KeepChoice> choices_;
    std::optional<core::units::Day> had_;
    std::string had_rule_;
    bool filling_ = false;
};

} // namespace ui::pages
