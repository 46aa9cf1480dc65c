#include "core/services/demo_book.h"

#include "core/services/demo_teller.h"
#include "core/store/store.h"

namespace core::services {

namespace demo {

Teller::Teller(Book& book, const DemoOptions& options)
    : book_(book), options_(options), noise_(options.seed),
      midnight_(options.now.unix_seconds() / day_s * day_s) {}

units::Instant Teller::at(double days_ago, double hour) const {
    return units::Instant::from_unix_seconds(midnight_) - units::Duration::days(days_ago) +
           units::Duration::hours(hour);
}

units::Day Teller::day(int days_ago) const {
    return units::Day::from_days_since_epoch(static_cast<std::int32_t>(midnight_ / day_s)) -
           days_ago;
}

actions::Performed Teller::enter(const actions::Command& command, units::Instant entered,
                                 const std::string& why, bool by_second) {
    std::optional<model::PersonId> who;
    if (!people_.empty()) {
        who = people_[by_second ? people_.size() - 1 : 0];
    }
    auto done = book_.perform(command, {who, entered, why});
    if (!done) {
        throw store::Fault(done.error());
    }
    return std::move(*done);
}

void Teller::note(model::NoteKind kind, const std::string& text, int days_ago, model::BatchId batch,
                  std::optional<model::PieceId> piece) {
    if (batch.is_assigned()) {
        enter(actions::AddNote{{.batch = batch,
                                .piece = piece,
                                .at = at(days_ago, 10.5),
                                .kind = kind,
                                .text = text}},
              at(days_ago, 10.6));
    }
}

LiveBatch& Teller::batch(const std::string& code) {
    for (LiveBatch& batch : batches_) {
        if (batch.story->code == code) {
            return batch;
        }
    }
    store::refuse(base::ErrorCode::no_such_entry, "batch", code);
}

void Teller::tell() {
    set_up();
    for (const BatchStory& story : demo::batches()) {
        batches_.push_back({.story = &story});
    }
    static constexpr int first_day = 243;
    for (int ago = first_day; ago >= 0; --ago) {
        for (LiveBatch& batch : batches_) {
            const BatchStory& story = *batch.story;
            if (ago == story.started_days_ago && has_come(at(ago, 9.5))) {
                start(batch);
            }
            if (ago == story.started_days_ago - story.cure_days && batch.is_started &&
                has_come(at(ago, 9.3))) {
                end_cure(batch);
            }
            if (ago == days_ago_hung(story) && batch.is_started) {
                hang(batch);
            }
            if (ago == 1 && story.started_days_ago < 0) {
                plan_ahead(batch);
            }
        }
        import_climate(ago);
        calibrate(ago);
        const auto weekday = day(ago).weekday();
        // Sundays, for those who keep to it; pieces that dry in days are weighed every other day.
        if (weekday == std::chrono::Sunday) {
            weigh_round(ago, Rhythm::weekly);
        }
        if (ago % 2 == 0) {
            weigh_round(ago, Rhythm::every_other_day);
        }
        incidents(ago);
        close_finished_batches(ago);
    }
}

} // namespace demo

base::Status fill_demo_book(Book& book, const DemoOptions& options) {
    const auto empty = book.revision();
    if (!empty) {
        return tl::unexpected<base::Error>(empty.error());
    }
    if (*empty != 0) {
        return base::fault(base::ErrorCode::conflict, "the book is not empty", book.path());
    }
    return store::guarded([&] {
        const store::LazyWriting lazy(book.store().connection());
        demo::Teller(book, options).tell();
    });
}

} // namespace core::services
