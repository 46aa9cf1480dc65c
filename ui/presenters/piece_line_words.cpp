#include "ui/presenters/piece_line.h"
#include "ui/text/date_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>

namespace ui::presenters {
namespace {

struct PieceWords {
    Q_DECLARE_TR_FUNCTIONS(PieceWords)
};

} // namespace

QString progress_words(const PieceLine& line, const text::Style& style) {
    if (!line.towards_target) {
        return text::unknown();
    }
    QString loss = text::words(line.towards_target->loss, style);
    if (!line.piece().target) {
        return loss;
    }
    //: %1 the loss now, %2 the loss aimed for
    return PieceWords::tr("%1 of %2").arg(loss, text::words(line.piece().target->loss, style, 0));
}

QString ready_words(const std::optional<core::model::Forecast>& forecast, const text::Style& style,
                    core::units::Instant now) {
    if (!forecast) {
        return text::unknown();
    }
    if (forecast->state != core::model::ForecastState::drying || !forecast->ready) {
        return text::words(forecast->state);
    }
    const auto& ready = *forecast->ready;
    const auto day = [&](core::units::Instant at) { return style.zone.day_of(std::max(at, now)); };
    if (ready.p10 && ready.p90) {
        return text::range_words(day(*ready.p10), day(*ready.p90), style);
    }
    if (ready.p10) {
        return PieceWords::tr("%1 or later, perhaps never")
            .arg(text::words(day(*ready.p10), style));
    }
    return text::words(core::model::ForecastState::not_reachable);
}

QString place_words(const core::model::Piece& piece, const QString& chamber) {
    const QString position = QString::fromStdString(piece.position);
    if (chamber.isEmpty()) {
        return position.isEmpty() ? text::unknown() : position;
    }
    return position.isEmpty() ? chamber : PieceWords::tr("%1, %2").arg(chamber, position);
}

} // namespace ui::presenters
