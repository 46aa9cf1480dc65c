#include "tests/support/ten_year_book.h"

#include "core/services/book.h"
#include "core/store/connection.h"
#include "core/store/store.h"
#include "tests/support/sample_entries.h"

#include <stdexcept>

namespace saltloft::testing {

using namespace core;

namespace {

template <class T>
T need(base::Result<T> result) {
    if (!result) {
        throw std::runtime_error(result.error().detail);
    }
    return std::move(*result);
}

} // namespace

void make_ten_year_book(const std::string& path, const BookSize& size) {
    static constexpr std::int64_t day = 86400;
    auto book = need(services::Book::create(path, {.now = at_s(test_now_s)}));
    const store::LazyWriting lazy(book.store().connection());
    const std::int64_t first = test_now_s - 3650 * day;
    for (int b = 0; b < size.batches; ++b) {
        const std::int64_t started = first + b * (3600 * day / size.batches);
        const std::string code = "B" + std::to_string(b);
        actions::StartBatch start{.batch = batch(code)};
        start.batch.started =
            units::Day::from_days_since_epoch(static_cast<std::int32_t>(started / day));
        const bool drying = (size.batches - b) * size.pieces_per_batch <= size.pieces_drying;
        start.batch.state = drying ? model::BatchState::in_progress : model::BatchState::finished;
        for (int p = 0; p < size.pieces_per_batch; ++p) {
            auto piece = new_piece(code + "-" + std::to_string(p), 1500);
            piece.weighings.front().taken_at = at_s(started);
            piece.piece.state = drying ? model::PieceState::drying : model::PieceState::finished;
            start.pieces.push_back(std::move(piece));
        }
        const auto made = need(book.perform(start, context("", started)));
        for (int w = 1; w < size.weighings_per_piece; ++w) {
            const std::int64_t at = started + 7 * day * w;
            actions::AddWeighings round;
            for (int p = 0; p < size.pieces_per_batch; ++p) {
                const auto id =
                    made.id<model::PieceId>(model::EntryKind::piece, static_cast<std::size_t>(p));
                round.weighings.push_back(weighing(id, 1500 - 20.0 * w - p, at, 45));
            }
            need(book.perform(round, context("", at)));
        }
    }
}

} // namespace saltloft::testing
