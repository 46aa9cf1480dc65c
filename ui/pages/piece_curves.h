#pragma once

#include "ui/charts/loss_chart.h"
#include "ui/presenters/compare.h"

#include <QStringList>

namespace ui::pages {

/// A piece's curve for the loss chart, losses counted from `reference`. Absent where the piece has
/// no such weight.
std::optional<charts::LossCurve> curve_of(const presenters::PieceLine& line,
                                          core::model::ReferenceWeight reference);
/// The curve of a piece none of whose weights is a reference yet: net weights only.
charts::LossCurve bare_curve_of(const presenters::PieceLine& line);

/// Puts the curves of `company`, and of `earlier` as ghosts, after the first one. Returns the codes
/// of those that have no such reference weight.
QStringList add_company(charts::LossChartInput& input,
                        const std::vector<presenters::PieceLine>& company,
                        const std::vector<presenters::PieceLine>& earlier,
                        core::model::ReferenceWeight reference);

} // namespace ui::pages
