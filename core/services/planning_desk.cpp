#include "core/services/planning_desk.h"

#include "core/planning/clock.h"
#include "core/planning/redate.h"
#include "core/services/salt_dose.h"

#include <algorithm>
#include <cctype>

namespace core::services {
namespace {

using model::EventKind;
using model::PieceState;
using units::Mass;

const std::vector<PieceState> open_states{PieceState::planned, PieceState::curing,
                                          PieceState::resting, PieceState::drying};

/// Runs the reads of a sheet and keeps the first fault, so that a list of reads stays a list.
class Reader {
  public:
    template <class T>
    std::vector<T> rows(base::Result<std::vector<T>> result) {
        if (!result) {
            fault_ = fault_ ? fault_ : std::optional(result.error());
            return {};
        }
        return std::move(*result);
    }
    [[nodiscard]] const std::optional<base::Error>& fault() const { return fault_; }

  private:
    std::optional<base::Error> fault_;
};

std::map<model::PieceId, model::Forecast> forecasts_of(const std::vector<PieceHistory>& histories,
                                                       const DeskView& view) {
    std::map<model::PieceId, model::Forecast> out;
    if (!view.forecast_of) {
        return out;
    }
    for (const auto& history : histories) {
        if (history.piece.state == PieceState::drying) {
            if (auto forecast = view.forecast_of(history)) {
                out.emplace(history.piece.id, *std::move(forecast));
            }
        }
    }
    return out;
}

bool ends_by_drying(const model::Stage& stage) {
    return std::any_of(stage.what.ends.begin(), stage.what.ends.end(), [](const auto& end) {
        return end.kind == model::EndCondition::Kind::loss ||
               end.kind == model::EndCondition::Kind::flat_curve;
    });
}

/// The slowest piece of the batch decides both the pause and the expected end.
planning::StageProgress progress_of(const std::vector<model::Stage>& stages,
                                    const std::vector<PieceHistory>& histories,
                                    const std::map<model::PieceId, model::Forecast>& forecasts,
                                    const DeskView& view) {
    planning::StageProgress progress;
    for (const auto& stage : stages) {
        if (!stage.started_at || stage.ended_at) {
            continue;
        }
        for (const auto& history : histories) {
            if (history.piece.batch != stage.batch) {
                continue;
            }
            if (const auto clock = planning::read_clock(stage, history.events, {}, view.now)) {
                auto [at, is_new] = progress.paused.try_emplace(stage.id, clock->frozen);
                at->second = std::max(at->second, clock->frozen);
            }
            const auto forecast = forecasts.find(history.piece.id);
            if (!ends_by_drying(stage) || forecast == forecasts.end() || !forecast->second.ready ||
                !forecast->second.ready->p50) {
                continue;
            }
            const units::Day day = view.zone.day_of(*forecast->second.ready->p50);
            auto [at, is_new] = progress.expected_end.try_emplace(stage.id, day);
            at->second = std::max(at->second, day);
        }
    }
    return progress;
}

std::vector<model::Stage> redated(std::vector<model::Stage> stages,
                                  const planning::StageProgress& progress, const DeskView& view) {
    std::map<model::BatchId, std::vector<model::Stage>> by_batch;
    for (auto& stage : stages) {
        by_batch[stage.batch].push_back(std::move(stage));
    }
    std::vector<model::Stage> out;
    for (auto& [batch, of_batch] : by_batch) {
        auto moved =
            planning::redate(std::move(of_batch), progress, view.zone.day_of(view.now), view.zone);
        std::move(moved.begin(), moved.end(), std::back_inserter(out));
    }
    return out;
}

/// All stages of open batches, done ones included: redating starts from what is done.
std::vector<model::Stage> stages_of(Reader& reader, const Book& book,
                                    const std::vector<model::Batch>& batches) {
    std::vector<model::Stage> out;
    for (const auto& batch : batches) {
        auto stages = reader.rows(book.stages(batch.id));
        std::move(stages.begin(), stages.end(), std::back_inserter(out));
    }
    return out;
}

std::vector<model::Batch> open_batches(Reader& reader, const Book& book) {
    auto batches = reader.rows(book.batches());
    std::erase_if(batches, [](const model::Batch& batch) {
        return batch.state == model::BatchState::finished ||
               batch.state == model::BatchState::abandoned;
    });
    return batches;
}

/// The reference of a piece's own target where it can be told without a rebase.
std::optional<Mass> hung_net(const PieceHistory& history) {
    for (const auto& event : history.events) {
        if (event.kind != EventKind::hung || event.withdrawn) {
            continue;
        }
        if (event.net_after) {
            return event.net_after;
        }
        for (const auto& weighing : history.weighings) {
            if (weighing.taken_at >= event.at && weighing.stands()) {
                return weighing.net();
            }
        }
        return event.net_before;
    }
    return std::nullopt;
}

bool was_cut(const PieceHistory& history) {
    return std::any_of(history.events.begin(), history.events.end(), [](const auto& event) {
        return !event.withdrawn &&
               (event.kind == EventKind::trimmed || event.kind == EventKind::sampled ||
                event.kind == EventKind::split || event.kind == EventKind::merged ||
                event.kind == EventKind::coated);
    });
}

std::optional<units::Instant> hung_at(const PieceHistory& history) {
    for (const auto& event : history.events) {
        if (event.kind == EventKind::hung && !event.withdrawn) {
            return event.at;
        }
    }
    return std::nullopt;
}

} // namespace

std::string product_key(const std::string& product) {
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    std::string out = product;
    while (!out.empty() && blank(out.back())) {
        out.pop_back();
    }
    while (!out.empty() && blank(out.front())) {
        out.erase(out.begin());
    }
    // ASCII only: other letters compare as written, which is enough to group one person's names.
    std::transform(out.begin(), out.end(), out.begin(), [](unsigned char c) {
        return static_cast<char>(c < 0x80 ? std::tolower(c) : c);
    });
    return out;
}

base::Result<std::vector<model::Stage>> current_stages(const Book& book, const DeskView& view) {
    Reader reader;
    const auto batches = open_batches(reader, book);
    const auto histories = reader.rows(book.piece_histories({.states = open_states}));
    auto stages = stages_of(reader, book, batches);
    if (reader.fault()) {
        return tl::unexpected(*reader.fault());
    }
    const auto forecasts = forecasts_of(histories, view);
    const auto progress = progress_of(stages, histories, forecasts, view);
    return redated(std::move(stages), progress, view);
}

base::Result<planning::DaySheet> day_sheet(const Book& book, const DeskView& view) {
    Reader reader;
    planning::DaySheetInput input{
        .now = view.now, .zone = view.zone, .horizon_days = view.horizon_days};
    input.batches = open_batches(reader, book);
    const auto histories = reader.rows(book.piece_histories({.states = open_states}));
    input.forecasts = forecasts_of(histories, view);
    auto stages = stages_of(reader, book, input.batches);
    const auto progress = progress_of(stages, histories, input.forecasts, view);
    // Ticks matter as far back as the oldest routine that still runs.
    units::Instant ticks_from = view.now - units::Duration::days(400);
    for (const auto& stage : stages) {
        if (stage.started_at && !stage.ended_at) {
            ticks_from = std::min(ticks_from, *stage.started_at);
        }
    }
    input.stages = redated(std::move(stages), progress, view);
    for (const auto& history : histories) {
        input.pieces.push_back(history.piece);
        if (!history.weighings.empty()) {
            input.last_weighings.push_back(history.weighings.back());
        }
    }
    input.decisions = reader.rows(book.all_decisions());
    input.sensors = reader.rows(book.sensors());
    input.instruments = reader.rows(book.instruments());
    input.checks = reader.rows(book.all_checks());
    input.packs = reader.rows(book.packs(/*with_gone=*/false));
    input.ticks = reader.rows(book.task_ticks(ticks_from, view.now + units::Duration::days(1)));
    if (reader.fault()) {
        return tl::unexpected(*reader.fault());
    }
    return planning::make_day_sheet(input);
}

base::Result<std::vector<planning::FinishedPiece>> finished_pieces(const Book& book,
                                                                   const units::Zone& zone) {
    Reader reader;
    std::map<model::BatchId, model::Batch> batches;
    for (auto& batch : reader.rows(book.batches())) {
        batches.emplace(batch.id, std::move(batch));
    }
    SaltDoses salt(book);
    std::map<model::PieceId, units::Instant> done;
    for (const auto& decision : reader.rows(book.all_decisions())) {
        if (decision.verdict == model::Verdict::done) {
            done.insert_or_assign(decision.piece, decision.at);
        }
    }
    std::vector<planning::FinishedPiece> out;
    for (const auto& history :
         reader.rows(book.piece_histories({.states = {PieceState::finished}}))) {
        const auto hung = hung_at(history);
        const auto finished = done.find(history.piece.id);
        if (!hung || finished == done.end() || finished->second <= *hung) {
            continue;
        }
        const auto reference = hung_net(history);
        std::optional<units::MassShare> loss;
        if (reference && *reference > Mass::grams(0) && !history.weighings.empty() &&
            !was_cut(history)) {
            loss = units::MassShare::of(*reference - history.weighings.back().net(), *reference);
        }
        const auto& piece = history.piece;
        const auto batch = batches.find(piece.batch);
        if (batch == batches.end()) {
            continue;
        }
        out.push_back({.piece = piece.id,
                       .batch = piece.batch,
                       .product = product_key(batch->second.product),
                       .form = piece.form,
                       .thickness = piece.thickness,
                       .chamber = piece.chamber,
                       .hung = zone.day_of(*hung),
                       .finished = zone.day_of(finished->second),
                       .loss = loss,
                       .target = piece.target ? std::optional(piece.target->loss) : std::nullopt,
                       .salt_dose = salt.of(batch->second)});
    }
    if (reader.fault()) {
        return tl::unexpected(*reader.fault());
    }
    return out;
}

planning::LengthSources length_sources(const std::vector<planning::FinishedPiece>& finished,
                                       const std::string& product) {
    return {.own_drying = planning::own_drying(finished, product_key(product)),
            .modelled_drying = {}};
}

base::Result<std::vector<planning::RoundRow>> weigh_round(const Book& book, const DeskView& view,
                                                          std::optional<model::ChamberId> chamber) {
    auto histories = book.piece_histories({.chamber = chamber, .states = {PieceState::drying}});
    if (!histories) {
        return tl::unexpected(histories.error());
    }
    std::vector<planning::RoundPiece> pieces;
    for (const auto& history : *histories) {
        planning::RoundPiece piece{.piece = history.piece};
        for (const auto& event : history.events) {
            if (event.tare_after && !event.withdrawn) {
                piece.tare = event.tare_after; // events come by time: the last one holds
            }
        }
        if (!history.weighings.empty()) {
            piece.last = history.weighings.back();
        }
        // Without a cut the hung weight is what losses count from; a cut piece is judged by its
        // last weighing instead.
        if (!was_cut(history)) {
            piece.reference = hung_net(history);
        }
        if (view.forecast_of) {
            piece.forecast = view.forecast_of(history);
        }
        pieces.push_back(std::move(piece));
    }
    return planning::weigh_round(std::move(pieces), view.now);
}

} // namespace core::services
