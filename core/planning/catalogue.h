#pragma once

#include "core/base/embedded.h"
#include "core/base/result.h"
#include "core/model/finding.h"
#include "core/model/plan.h"

#include <span>
#include <string_view>
#include <vector>

namespace core::planning {

/// The files of resources/plans as built into the program.
std::span<const base::EmbeddedFile> built_in_plan_files();

/// The templates a plan can start from.
class Catalogue {
  public:
    /// Reads documents in the format of core/model/plan_document.h. Every fault of every file is
    /// reported, with the file's name in front of the place; a second template of the same id is
    /// a conflict.
    static tl::expected<Catalogue, std::vector<base::Error>>
    read(std::span<const base::EmbeddedFile> files);
    /// The built-in templates. They are checked by a test, so this cannot fail.
    static Catalogue built_in();

    [[nodiscard]] const std::vector<model::PlanTemplate>& templates() const& { return templates_; }
    const std::vector<model::PlanTemplate>& templates() const&& = delete; ///< would dangle
    /// Null when there is none.
    [[nodiscard]] const model::PlanTemplate* find(std::string_view id) const&;
    const model::PlanTemplate* find(std::string_view id) const&& = delete;
    /// Product families in the order of their first template.
    [[nodiscard]] std::vector<std::string> families() const;

  private:
    std::vector<model::PlanTemplate> templates_;
};

/// What would keep a template from being planned or would mislead, whoever wrote it. Codes, each
/// with the stage's name as place: stage_without_length (nothing says how long; stop),
/// repeat_past_end (stop), repeats_out_of_bounds (stop), repeats_overlap (stop),
/// same_room_unknown (caution), minimum_names_no_stage (stop), duplicate_stage_name (caution),
/// no_salt_stage (note).
model::Findings check_template(const model::PlanTemplate& plan);

} // namespace core::planning
