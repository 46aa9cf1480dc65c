#include "ui/presenters/hang_again.h"

#include "core/actions/hanging.h"

namespace ui::presenters {

bool hangs_whole(const core::services::Book& book, const core::model::Pack& pack,
                 core::units::Mass net) {
    const auto packs = book.packs_of(pack.piece);
    const auto weighings = book.weighings(pack.piece);
    return packs && weighings && core::actions::hangs_whole(pack, packs->size(), *weighings, net);
}

} // namespace ui::presenters
