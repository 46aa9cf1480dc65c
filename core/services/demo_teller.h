#pragma once

// Internal to the demo book: tells the story day by day, entering each thing as its people would
// have, with the moment it was entered.

#include "core/services/book.h"
#include "core/services/demo_book.h"
#include "core/services/demo_noise.h"
#include "core/services/demo_story.h"
#include "core/store/fault.h"

#include <map>
#include <string>
#include <vector>

namespace core::services::demo {

inline constexpr std::int64_t day_s = 86400;
/// The cellar's cooler trips at eight in the evening of the twenty-seventh day before the last.
inline constexpr double upset_begins_days_ago = 26 + 4.0 / 24;

/// How many days before the story's end a batch is hung.
inline int days_ago_hung(const BatchStory& story) {
    return story.started_days_ago - story.cure_days - story.rest_days;
}

/// A piece while the story goes on.
struct LivePiece {
    model::PieceId id;
    std::string code;
    double raw = 0;      ///< grams
    double hung_net = 0; ///< grams; 0 until it hangs
    double tare = 0;     ///< grams
    double hung_ago = 0; ///< days ago when it was hung
    Curve curve{};
    bool is_hanging = false;
    std::vector<model::WeighingId> weighings; ///< while hanging
};

struct LiveBatch {
    const BatchStory* story = nullptr;
    model::BatchId id;
    std::vector<model::StageId> stages; ///< cure, rest, dry
    std::vector<LivePiece> pieces;
    bool is_started = false;
};

class Teller {
  public:
    Teller(Book& book, const DemoOptions& options);
    /// Throws store::Fault when the book refuses something.
    void tell();

  private:
    // people, places, instruments: demo_setup.cpp
    void set_up();
    void add_people();
    void add_chambers();
    void add_instruments();
    void add_recipes_and_lots();
    void calibrate(int days_ago);

    // batches: demo_batches.cpp
    void start(LiveBatch& batch);
    void plan_ahead(LiveBatch& batch);
    void end_cure(LiveBatch& batch);
    void hang(LiveBatch& batch);
    void hang_piece(LiveBatch& batch, LivePiece& piece, units::Instant at);
    actions::StartBatch plan_of(const LiveBatch& batch);
    std::vector<model::Stage> stages_of(const BatchStory& story, units::Day first) const;

    // weighing and judging: demo_rounds.cpp
    void weigh_round(int days_ago, Rhythm rhythm);
    double on_scale(const LivePiece& piece, double days_ago);
    void judge(LiveBatch& batch, LivePiece& piece, double loss, int days_ago);
    void finish(LiveBatch& batch, LivePiece& piece, double net, int days_ago);
    void pack(LivePiece& piece, const BatchStory& story, double net, int days_ago);
    void close_finished_batches(int days_ago);

    // the chambers' loggers: demo_climate.cpp
    void import_climate(int days_ago);
    [[nodiscard]] double load_of(int chamber, double days_ago) const;
    model::ClimateReading reading_at(int chamber, units::Instant moment);

    // what else happened: demo_incidents.cpp
    void incidents(int days_ago);
    void split_round();
    void swap_digits(int days_ago);
    void forget_tare(int days_ago);
    void discard_one();
    void move_to_cellar();
    void cellar_upset();
    void short_notes(int days_ago);
    void sell_packs(int days_ago);

    /// `hour` may have a fraction. Moments after `now` do not happen.
    [[nodiscard]] units::Instant at(double days_ago, double hour) const;
    [[nodiscard]] units::Day day(int days_ago) const;
    [[nodiscard]] bool has_come(units::Instant moment) const { return moment <= options_.now; }
    actions::Performed enter(const actions::Command& command, units::Instant entered,
                             const std::string& why = {}, bool by_second = false);
    void note(model::NoteKind kind, const std::string& text, int days_ago, model::BatchId batch,
              std::optional<model::PieceId> piece = {});
    LiveBatch& batch(const std::string& code);

    Book& book_;
    const DemoOptions options_;
    Noise noise_;
    std::int64_t midnight_ = 0; ///< of the day of `now`, UTC
    std::vector<model::PersonId> people_;
    std::vector<model::ChamberId> chambers_;
    std::vector<model::SensorId> sensors_;
    std::vector<units::Instant> climate_until_; ///< of each sensor
    std::vector<model::InstrumentId> instruments_;
    std::vector<model::RecipeVersionId> recipes_;
    std::vector<model::LotId> lots_; ///< salt, cure, spice
    std::vector<LiveBatch> batches_;
    std::vector<model::PackId> packs_;
    int pack_number_ = 0;
};

inline units::Mass grams(double v) {
    return units::Mass::grams(v);
}

} // namespace core::services::demo
