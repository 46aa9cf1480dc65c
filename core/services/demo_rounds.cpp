#include "core/services/demo_teller.h"

#include <algorithm>

namespace core::services::demo {

using namespace actions; // NOLINT(google-build-using-namespace): commands by the dozen
using model::EntryKind;

double Teller::on_scale(const LivePiece& piece, double days_ago) {
    const double net = piece.hung_net * piece.curve.remaining(piece.hung_ago - days_ago);
    // A draught, a hand, a swinging net: a tenth of a percent or so.
    return std::round(net * (1 + 0.0012 * noise_.normal()) + piece.tare);
}

void Teller::weigh_round(int days_ago, Rhythm rhythm) {
    const auto when = at(days_ago, 10);
    if (!has_come(when)) {
        return;
    }
    AddWeighings round;
    std::vector<LivePiece*> weighed;
    for (LiveBatch& batch : batches_) {
        for (LivePiece& piece : batch.pieces) {
            if (!piece.is_hanging || batch.story->rhythm != rhythm ||
                piece.hung_ago - days_ago < 1) {
                continue;
            }
            round.weighings.push_back({.piece = piece.id,
                                       .taken_at = when,
                                       .on_scale = grams(on_scale(piece, days_ago)),
                                       .tare = grams(piece.tare),
                                       .state = model::WeighedState::netted,
                                       .scale_step = grams(1)});
            weighed.push_back(&piece);
        }
    }
    if (round.weighings.empty()) {
        return;
    }
    const Performed made = enter(round, when, "", noise_.chance(0.3));
    for (std::size_t i = 0; i < weighed.size(); ++i) {
        weighed[i]->weighings.push_back(made.id<model::WeighingId>(EntryKind::weighing, i));
    }
    std::size_t next = 0;
    for (LiveBatch& batch : batches_) {
        for (LivePiece& piece : batch.pieces) {
            if (next < weighed.size() && weighed[next] == &piece) {
                const double net =
                    (round.weighings[next].on_scale - round.weighings[next].tare).in_grams();
                ++next;
                judge(batch, piece, 1 - net / piece.hung_net, days_ago);
            }
        }
    }
}

void Teller::judge(LiveBatch& batch, LivePiece& piece, double loss, int days_ago) {
    const double target = batch.story->target_loss;
    const auto when = at(days_ago, 11);
    // One that is nearly there is felt first and left for another week.
    if (loss >= target - 0.012 && loss < target && batch.story->code == std::string("B04") &&
        has_come(when)) {
        enter(SignDecision{{.piece = piece.id,
                            .at = when,
                            .verdict = model::Verdict::not_yet,
                            .signed_by = people_[0],
                            .evidence = R"({"invented":true,"felt":"soft in the middle"})",
                            .why = "Soft in the middle, a week more",
                            .weigh_again = day(days_ago - 7)}},
              when);
    } else if (loss >= target && has_come(when)) {
        finish(batch, piece, (1 - loss) * piece.hung_net, days_ago);
    }
}

void Teller::finish(LiveBatch& batch, LivePiece& piece, double net, int days_ago) {
    const auto when = at(days_ago, 11.2);
    const double percent = 100 * (1 - net / piece.hung_net);
    enter(SignDecision{{.piece = piece.id,
                        .at = when,
                        .verdict = model::Verdict::done,
                        .signed_by = people_[0],
                        .evidence = "{\"invented\":true,\"loss_percent\":" +
                                    std::to_string(std::round(percent * 10) / 10) + "}",
                        .why = "At target, firm through"}},
          when);
    piece.is_hanging = false;
    pack(piece, *batch.story, net, days_ago);
}

void Teller::pack(LivePiece& piece, const BatchStory& story, double net, int days_ago) {
    const auto when = at(days_ago, 15);
    if (!has_come(when)) {
        return;
    }
    const int parts = net > 900 ? 2 : 1;
    for (int i = 0; i < parts; ++i) {
        model::Pack pack{.piece = piece.id,
                         .code = "K" + std::to_string(++pack_number_),
                         .kind = parts == 1 ? model::PackKind::whole : model::PackKind::vacuum,
                         .packed_weight = grams(std::floor(net * 0.98 / parts)),
                         .weight_left = grams(0),
                         .packed_on = day(days_ago),
                         .keep_by = day(days_ago - (parts == 1 ? 90 : 180)),
                         .place = story.chamber == 0 ? "Fridge, shelf 1" : "Fridge, shelf 2"};
        packs_.push_back(enter(AddPack{pack}, when).id<model::PackId>(EntryKind::pack));
    }
}

void Teller::close_finished_batches(int days_ago) {
    for (LiveBatch& batch : batches_) {
        const bool all_down = std::none_of(batch.pieces.begin(), batch.pieces.end(),
                                           [](const LivePiece& p) { return p.is_hanging; });
        if (!batch.is_started || batch.stages.empty() || batch.pieces.empty() || !all_down ||
            batch.pieces.front().hung_ago == 0) {
            continue;
        }
        const auto when = at(days_ago, 16);
        if (!has_come(when)) {
            continue;
        }
        enter(EndStage{batch.stages[2], when, "all pieces decided"}, when);
        auto of = book_.batch(batch.id);
        of->state = model::BatchState::finished;
        enter(ChangeBatch{*of}, when);
        enter(RecordOutcome{{.batch = batch.id,
                             .salt = batch.story->recipe == 0 ? 1 : 0,
                             .texture = noise_.chance(0.5) ? 0 : 1,
                             .change_next_time = batch.story->recipe == 0
                                                     ? "A little less salt next time"
                                                     : "Keep as it is"}},
              when);
        batch.stages.clear(); // nothing more happens here
    }
}

} // namespace core::services::demo
