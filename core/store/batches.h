#pragma once

#include "core/model/batch.h"
#include "core/model/plan.h"
#include "core/store/entries.h"
#include "core/store/filters.h"

#include <string>
#include <vector>

/// Batches with their outcome, accepted cautions and stages. All throw (see fault.h).
namespace core::store {

std::vector<model::Batch> batches(Connection& book, const BatchFilter& filter); ///< newest first
std::optional<model::Batch> batch_by_code(Connection& book, const std::string& code);
std::vector<std::string> products(Connection& book);

/// Counts shown beside a batch in a list.
struct BatchCounts {
    model::BatchId batch;
    int pieces = 0; ///< not split up, merged away or discarded
    int drying = 0;
    int finished = 0;
    std::optional<units::Instant> last_weighed;
};
std::vector<BatchCounts> batch_counts(Connection& book);

void put_outcome(Connection& book, const model::Outcome& outcome);
std::optional<model::Outcome> outcome(Connection& book, model::BatchId batch);
std::vector<model::Outcome> outcomes(Connection& book);

/// Of one batch and its pieces, or of all when absent; by time.
std::vector<model::Acceptance> acceptances(Connection& book, std::optional<model::BatchId> batch);

std::vector<model::Stage> stages(Connection& book, model::BatchId batch); ///< by order
/// Begun in this chamber and not ended before `from`, begun before `to`; by start.
std::vector<model::Stage> stages_in(Connection& book, model::ChamberId chamber, units::Instant from,
                                    units::Instant to);
/// Not ended, of planned and running batches; by planned start.
std::vector<model::Stage> open_stages(Connection& book);

/// `text` as a LIKE pattern for "contains", with its own wildcards escaped by '\'.
std::string contains_pattern(const std::string& text);

} // namespace core::store
