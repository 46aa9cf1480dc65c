#pragma once

#include "core/base/result.h"

#include <QDialog>
#include <vector>

namespace ui::pages {

/// What can be done when a book does not open.
enum class WayOut { restore, salvage, open_another, make_new };

/// The ways that make sense for this fault. A file that is no book is only replaced by a backup
/// when it has some: else it is more likely somebody's letter, opened by mistake.
/// `has_window`: another book is open, so nobody is left without one.
std::vector<WayOut> ways_out(const core::base::Error& error, bool has_backups, bool has_window);

/// Says why a book did not open, and offers what can be done.
class OpenTroubleDialog : public QDialog {
    Q_OBJECT
  public:
    OpenTroubleDialog(const core::base::Error& error, const std::vector<WayOut>& ways,
                      QWidget* parent);
    /// What was chosen, once accepted.
    [[nodiscard]] WayOut way() const { return way_; }

  private:
    WayOut way_ = WayOut::open_another;
};

} // namespace ui::pages
