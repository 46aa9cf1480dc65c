#pragma once

#include "core/services/batch_record.h"
#include "ui/print/sheet.h"
#include "ui/text/style.h"

#include <vector>

/// The parts that the batch record and its siblings are put together from.
namespace ui::print {

/// Builds one record's blocks; looks entries up by id.
class RecordSections {
  public:
    RecordSections(const core::services::BatchRecord& record, const text::Style& style)
        : record_(record), style_(style) {}

    [[nodiscard]] QString title_line() const; ///< "B07 · Coppa · started 1 Mar 2026"
    [[nodiscard]] std::vector<Block> identification() const;
    [[nodiscard]] std::vector<Block> pieces() const;
    [[nodiscard]] std::vector<Block> inputs() const;
    [[nodiscard]] std::vector<Block> doses() const;
    [[nodiscard]] std::vector<Block> stages() const;
    [[nodiscard]] std::vector<Block> climate() const;
    [[nodiscard]] std::vector<Block> weighings() const;
    [[nodiscard]] std::vector<Block> events() const;
    [[nodiscard]] std::vector<Block> deviations() const;
    [[nodiscard]] std::vector<Block> calibration() const;
    [[nodiscard]] std::vector<Block> laboratory() const;
    [[nodiscard]] std::vector<Block> decisions() const;
    [[nodiscard]] std::vector<Block> back() const;
    [[nodiscard]] std::vector<Block> forward() const;
    [[nodiscard]] std::vector<Block> balance() const;
    [[nodiscard]] std::vector<Block> signatures() const;

  private:
    template <class T, class Id>
    static const T* find(const core::exchange::Entries<T>& entries, Id id) {
        for (const auto& entry : entries) {
            if (entry.value.id == id) {
                return &entry.value;
            }
        }
        return nullptr;
    }
    [[nodiscard]] QString person(std::optional<core::model::PersonId> id) const;
    [[nodiscard]] QString entered(const std::optional<core::exchange::Stamp>& stamp) const;
    [[nodiscard]] QString piece_code(core::model::PieceId id) const;
    [[nodiscard]] QString chamber_name(std::optional<core::model::ChamberId> id) const;
    [[nodiscard]] QString stage_name(core::model::StageId id) const;
    [[nodiscard]] QString moment(core::units::Instant at) const;
    [[nodiscard]] QString mass(const std::optional<core::units::Mass>& mass,
                               std::optional<core::units::Mass> step = {}) const;
    [[nodiscard]] Table weighing_table(core::model::PieceId piece) const;

    const core::services::BatchRecord& record_;
    const text::Style& style_;
};

} // namespace ui::print
