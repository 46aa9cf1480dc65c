#pragma once

#include "core/drying/expected_air.h"
#include "ui/presenters/latest.h"
#include "ui/presenters/piece_line.h"

#include <QObject>
#include <QStringList>
#include <QVector>
#include <optional>

namespace ui::presenters {

class Workspace;
struct PieceRecord;

/// What is changed for the time from the last weighing on; absent stays as expected.
struct WhatIfChange {
    std::optional<core::units::Temperature> temperature;
    std::optional<core::units::RelativeHumidity> humidity;
    std::optional<core::units::MassShare> target; ///< of the same reference weight
    friend bool operator==(const WhatIfChange&, const WhatIfChange&) = default;
};

struct WhatIfAnswer {
    core::model::Forecast now;     ///< as on the piece's page
    core::model::Forecast changed; ///< equal to `now` where nothing is changed
};

/// One row of the comparison.
struct WhatIfLine {
    QString what;
    QString now;
    QString changed;
};

/// A piece's forecast beside what it would be in other air or with another target. Computed off
/// the GUI thread; nothing is stored.
class WhatIf : public QObject {
    Q_OBJECT
  public:
    WhatIf(const Workspace& workspace, const PieceLine& line, QObject* parent = nullptr);
    ~WhatIf() override;

    /// False without a weight to count a loss from: then there is nothing to ask.
    [[nodiscard]] bool can_answer() const { return can_answer_; }
    [[nodiscard]] const core::drying::ExpectedAir& air() const { return air_; }
    [[nodiscard]] std::optional<core::units::MassShare> target() const;

    void ask(const WhatIfChange& change);
    [[nodiscard]] bool is_busy() const { return latest_.is_busy(); }
    [[nodiscard]] const std::optional<WhatIfAnswer>& answer() const { return answer_; }
    void wait() { latest_.wait(); }

  Q_SIGNALS:
    void arrived();

  private:
    std::vector<PieceRecord> records_; ///< the piece first; then those weighed by the same scale
    core::units::Instant as_of_;
    core::drying::ExpectedAir air_;
    bool can_answer_ = false;
    std::optional<core::model::Forecast> of_page_;
    std::optional<WhatIfAnswer> answer_;
    Latest<WhatIfAnswer> latest_;
};

/// The forecasts of `records` where the first hangs in other air or has another target. Pure, slow.
core::model::Forecast changed_forecast(const std::vector<PieceRecord>& records,
                                       const WhatIfChange& change);

QVector<WhatIfLine> what_if_lines(const WhatIfAnswer& answer, const core::drying::ExpectedAir& air,
                                  std::optional<core::units::MassShare> target,
                                  const WhatIfChange& change, const text::Style& style,
                                  core::units::Instant now);

/// The humidity that at `there` draws water as strongly as the air as it is; absent: none does.
std::optional<core::units::RelativeHumidity> same_power(const core::drying::ExpectedAir& air,
                                                        core::units::Temperature there);
/// That in words.
QString same_power_words(const core::drying::ExpectedAir& air, core::units::Temperature there,
                         const text::Style& style);

/// Organisms whose cited growth range holds `there` but not `here`, one sentence each.
QStringList range_cautions(core::units::Temperature here, core::units::Temperature there,
                           const text::Style& style);
/// Names of those whose range holds both.
QStringList in_range_of_both(core::units::Temperature here, core::units::Temperature there);

} // namespace ui::presenters
