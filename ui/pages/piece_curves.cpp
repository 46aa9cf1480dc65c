#include "ui/pages/piece_curves.h"

namespace ui::pages {

using core::units::MassShare;
using presenters::PieceLine;

charts::LossCurve bare_curve_of(const PieceLine& line) {
    charts::LossCurve curve;
    curve.name = QString::fromStdString(line.piece().code);
    for (const auto& point : line.points) {
        curve.points.push_back(
            {point.at, point.net, MassShare::fraction(0), point.weighing, point.aside, {}});
    }
    if (line.hung_at) {
        curve.start = *line.hung_at;
    } else if (!curve.points.empty()) {
        curve.start = curve.points.front().at;
    }
    return curve;
}

std::optional<charts::LossCurve> curve_of(const PieceLine& line,
                                          core::model::ReferenceWeight reference) {
    for (const auto& loss : line.losses) {
        if (loss.reference != reference || loss.start.in_grams() <= 0) {
            continue;
        }
        auto curve = bare_curve_of(line);
        curve.reference = loss.start;
        for (auto& point : curve.points) {
            point.loss = MassShare::of(loss.start - point.net, loss.start);
        }
        if (line.piece().target && line.towards_target) {
            curve.target = line.piece().target->loss;
            curve.target_reference = line.towards_target->start;
            curve.forecast = line.forecast;
        }
        return curve;
    }
    return std::nullopt;
}

QStringList add_company(charts::LossChartInput& input, const std::vector<PieceLine>& company,
                        const std::vector<PieceLine>& earlier,
                        core::model::ReferenceWeight reference) {
    QStringList without;
    const auto add = [&](const PieceLine& line, bool ghost) {
        auto curve = curve_of(line, reference);
        if (!curve) {
            without << QString::fromStdString(line.piece().code);
            return;
        }
        curve->ghost = ghost;
        if (ghost) {
            curve->target.reset();
            curve->forecast.reset();
        }
        input.curves.push_back(std::move(*curve));
    };
    for (const auto& line : company) {
        add(line, false);
    }
    for (const auto& line : earlier) {
        add(line, true);
    }
    return without;
}

} // namespace ui::pages
