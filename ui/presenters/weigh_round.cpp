#include "ui/presenters/weigh_round.h"

#include "core/planning/weigh_round.h"
#include "ui/presenters/workspace.h"

#include <algorithm>

namespace ui::presenters {

using core::model::PieceState;
using core::units::Mass;

namespace {

core::planning::RoundPiece round_piece(const PieceLine& line) {
    core::planning::RoundPiece piece;
    piece.piece = line.piece();
    if (!line.history.weighings.empty()) {
        piece.last = line.history.weighings.back();
    }
    piece.tare = line.tare;
    if (line.towards_target) {
        piece.reference = line.towards_target->start;
    }
    piece.forecast = line.forecast;
    return piece;
}

} // namespace

WeighRound::WeighRound(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace) {
    connect(&workspace_.forecasts(), &Forecasts::arrived, this, [this] {
        judge_expected();
        Q_EMIT changed();
    });
}

void WeighRound::load(std::optional<core::model::ChamberId> chamber) {
    const bool same = chamber == chamber_;
    chamber_ = chamber;
    core::services::PieceFilter filter;
    filter.chamber = chamber;
    filter.states = {PieceState::curing, PieceState::resting, PieceState::drying};
    std::vector<RoundLine> fresh;
    std::vector<PieceRecord> records;
    const auto chambers = workspace_.rows(workspace_.book().chambers());
    for (auto& history : workspace_.rows(workspace_.book().piece_histories(filter))) {
        RoundLine line;
        line.line = line_in(workspace_.book(), std::move(history));
        records.push_back({line.line.history, line.line.kin, {}});
        for (const auto& c : chambers) {
            if (line.line.piece().chamber == c.id) {
                line.chamber = QString::fromStdString(c.name);
            }
        }
        const auto old = std::find_if(lines_.begin(), lines_.end(), [&](const RoundLine& l) {
            return l.line.piece().id == line.line.piece().id;
        });
        if (same && old != lines_.end()) {
            line.entered = old->entered;
            line.passed_over = old->passed_over;
        }
        fresh.push_back(std::move(line));
    }
    const auto current_piece = current_ >= 0
                                   ? lines_[static_cast<std::size_t>(current_)].line.piece().id
                                   : core::model::PieceId{};
    lines_ = std::move(fresh);
    judge_expected();
    current_ = lines_.empty() ? -1 : 0;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (same && lines_[i].line.piece().id == current_piece) {
            current_ = static_cast<int>(i);
        }
    }
    workspace_.ask_forecasts(std::move(records));
    Q_EMIT changed();
}

void WeighRound::judge_expected() {
    std::vector<core::planning::RoundPiece> pieces;
    for (auto& line : lines_) {
        const auto* forecast =
            workspace_.forecasts().find(line.line.piece().id, line.line.history.revision);
        if (forecast != nullptr) {
            line.line.forecast = *forecast;
        }
        pieces.push_back(round_piece(line.line));
    }
    const auto rows = core::planning::weigh_round(std::move(pieces), workspace_.now());
    // The rows come in hanging order: the lines take that order, too.
    std::vector<RoundLine> ordered;
    for (const auto& row : rows) {
        const auto found = std::find_if(lines_.begin(), lines_.end(), [&](const RoundLine& l) {
            return l.line.piece().id == row.piece;
        });
        if (found == lines_.end()) {
            continue;
        }
        found->last_on_scale = row.last_on_scale;
        found->last_at = row.last_at;
        found->expected = row.expected;
        found->expected_from_forecast = row.expected_from == core::planning::ExpectedFrom::forecast;
        ordered.push_back(*found);
    }
    if (current_ >= 0) {
        const auto current = lines_[static_cast<std::size_t>(current_)].line.piece().id;
        for (std::size_t i = 0; i < ordered.size(); ++i) {
            if (ordered[i].line.piece().id == current) {
                current_ = static_cast<int>(i);
            }
        }
    }
    lines_ = std::move(ordered);
}

void WeighRound::set_current(int row) {
    if (row >= 0 && row < static_cast<int>(lines_.size()) && row != current_) {
        current_ = row;
        asked_.reset();
        Q_EMIT changed();
    }
}

int WeighRound::entered_count() const {
    return static_cast<int>(std::count_if(
        lines_.begin(), lines_.end(), [](const RoundLine& l) { return l.entered.has_value(); }));
}

WeighRound::Answer WeighRound::enter(Mass on_scale, std::optional<Mass> tare,
                                     std::optional<Mass> scale_step, bool wet,
                                     const QString& note) {
    Answer answer;
    if (current_ < 0) {
        return answer;
    }
    RoundLine& line = lines_[static_cast<std::size_t>(current_)];
    const auto piece = line.line.piece().id;
    core::planning::RoundRow row{.piece = piece,
                                 .last_on_scale = line.last_on_scale,
                                 .last_at = line.last_at,
                                 .tare = tare.value_or(line.line.tare),
                                 .expected = line.expected};
    const auto findings = core::planning::judge_entry(row, on_scale, scale_step);
    for (const auto& finding : findings) {
        answer.stopped = answer.stopped || finding.severity == core::model::Severity::stop;
        if (finding.severity != core::model::Severity::note) {
            answer.questions.push_back(finding);
        }
    }
    // Asked once: the same number again is the answer.
    const bool asked_before = asked_for_ == piece && asked_ == on_scale;
    if (answer.stopped || (!answer.questions.empty() && !asked_before)) {
        asked_ = on_scale;
        asked_for_ = piece;
        return answer;
    }
    core::model::Weighing weighing{
        .piece = piece, .taken_at = workspace_.now(), .on_scale = on_scale, .tare = row.tare};
    weighing.state = state_now(line.line.history);
    weighing.scale_step = scale_step;
    weighing.wet_surface = wet;
    weighing.note = note.trimmed().toStdString();
    line.entered = on_scale; // before perform: changed() reloads and must keep it
    const auto performed = workspace_.perform(core::actions::AddWeighing{weighing});
    if (!performed) {
        for (auto& l : lines_) {
            if (l.line.piece().id == piece) {
                l.entered.reset();
            }
        }
        return answer;
    }
    asked_.reset();
    answer.kept = true;
    answer.questions.clear();
    return answer;
}

void WeighRound::advance() {
    const int count = static_cast<int>(lines_.size());
    for (int step = 1; step <= count; ++step) {
        const int row = (current_ + step) % count;
        const auto& line = lines_[static_cast<std::size_t>(row)];
        if (!line.entered && !line.passed_over) {
            set_current(row);
            return;
        }
    }
    Q_EMIT changed();
}

void WeighRound::pass_over() {
    if (current_ >= 0) {
        lines_[static_cast<std::size_t>(current_)].passed_over = true;
        advance();
    }
}

} // namespace ui::presenters
