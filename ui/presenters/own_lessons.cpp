#include "ui/presenters/own_lessons.h"

#include "core/services/planning_desk.h"
#include "ui/presenters/piece_forecast.h"

#include <algorithm>

namespace ui::presenters {

using core::drying::ForecastRequest;
using core::drying::LearntPrior;
using core::model::PieceId;

const LearntPrior& Lesson::learnt() const {
    std::call_once(once_, [this] {
        std::vector<ForecastRequest> requests;
        for (const auto& piece : pieces_) {
            if (auto request = request_of(piece)) {
                requests.push_back(std::move(*request));
            }
        }
        learnt_ = core::drying::learn_prior(requests);
    });
    return learnt_;
}

/// False when the book cannot be read.
bool OwnLessons::look_again() {
    const auto revision = book_.revision();
    if (!revision) {
        return false;
    }
    if (*revision == revision_) {
        return true;
    }
    core::services::PieceFilter filter;
    filter.states = {core::model::PieceState::finished};
    const auto pieces = book_.pieces(filter);
    const auto batches = book_.batches();
    if (!pieces || !batches) {
        return false;
    }
    products_.clear();
    std::map<core::model::BatchId, core::units::Day> started;
    for (const auto& batch : *batches) {
        products_[batch.id] = core::services::product_key(batch.product);
        started.emplace(batch.id, batch.started);
    }
    auto newest_first = *pieces;
    std::sort(newest_first.begin(), newest_first.end(), [&](const auto& a, const auto& b) {
        const auto day_a = started.at(a.batch);
        const auto day_b = started.at(b.batch);
        return day_a != day_b ? day_b < day_a : b.id < a.id;
    });
    finished_.clear();
    for (const auto& piece : newest_first) {
        finished_.push_back({{products_[piece.batch], piece.form, piece.chamber}, piece.id});
    }
    revision_ = *revision;
    return true;
}

/// The newest ones of the kind. Without enough from its chamber the kind's chamber is dropped.
std::vector<PieceId> OwnLessons::teachers(Kind& kind) const {
    std::vector<PieceId> there;
    std::vector<PieceId> anywhere;
    for (const auto& [other, piece] : finished_) {
        if (other.product != kind.product || other.form != kind.form) {
            continue;
        }
        anywhere.push_back(piece);
        if (kind.chamber && other.chamber == kind.chamber) {
            there.push_back(piece);
        }
    }
    if (there.size() < enough_there) {
        kind.chamber.reset();
    }
    auto& chosen = kind.chamber ? there : anywhere;
    chosen.resize(std::min(chosen.size(), most));
    return chosen;
}

std::shared_ptr<const Lesson> OwnLessons::make(const std::vector<PieceId>& teachers,
                                               std::string key,
                                               core::services::PieceAir& air) const {
    std::vector<PieceRecord> records;
    for (const PieceId id : teachers) {
        auto history = book_.piece_history(id);
        if (!history) {
            continue;
        }
        PieceRecord record;
        record.kin = kin_of(book_, *history);
        record.air = air.around(*history);
        record.history = std::move(*history);
        records.push_back(std::move(record));
    }
    return records.size() < least
               ? nullptr
               : std::make_shared<const Lesson>(std::move(records), std::move(key));
}

std::shared_ptr<const Lesson> OwnLessons::of(const core::model::Piece& piece,
                                             core::services::PieceAir& air) {
    if (piece.state == core::model::PieceState::finished || !look_again()) {
        return nullptr;
    }
    const auto product = products_.find(piece.batch);
    if (product == products_.end() || product->second.empty()) {
        return nullptr;
    }
    Kind kind{product->second, piece.form, piece.chamber};
    const auto ids = teachers(kind);
    if (ids.size() < least) {
        return nullptr;
    }
    Kept& kept = lessons_[kind];
    if (kept.revision == revision_) {
        return kept.lesson;
    }
    // The book changed, but rarely what a finished piece was: then the old lesson still holds.
    std::string key;
    for (const PieceId id : ids) {
        key += std::to_string(id.row()) + '@' +
               std::to_string(book_.piece_revision(id).value_or(0)) + ' ';
    }
    if (!kept.lesson || kept.lesson->key() != key) {
        kept.lesson = make(ids, key, air);
    }
    kept.revision = revision_;
    return kept.lesson;
}

} // namespace ui::presenters
