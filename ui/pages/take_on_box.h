#pragma once

#include "core/model/finding.h"
#include "core/model/ids.h"

#include <QWidget>
#include <optional>

class QCheckBox;

namespace ui::presenters {
class Workspace;
}

namespace ui::pages {

class PersonBox;

/// Where a person takes on the cautions shown above it: a tick that goes when the cautions change,
/// and who it is. Hidden while there is none. The cautions themselves stand on the page.
class TakeOnBox : public QWidget {
    Q_OBJECT
  public:
    /// The tick is named STEM, the person STEM_by.
    explicit TakeOnBox(const QByteArray& stem, QWidget* parent = nullptr);

    void load(presenters::Workspace& workspace); ///< the people, from the book
    /// Keeps the cautions among `findings`. Other ones than before must be read anew: the tick
    /// goes.
    void set_findings(const core::model::Findings& findings);
    [[nodiscard]] const core::model::Findings& cautions() const { return cautions_; }
    void forget(); ///< unticks, for the next batch

    /// What is still to be done, in words; empty when every caution is taken on by somebody. Puts
    /// the focus where it is to be done.
    QString missing();
    /// Who takes them on; absent where there is no caution, or where the book refused a new name.
    std::optional<core::model::PersonId> person(presenters::Workspace& workspace);

  private:
    QCheckBox* tick_;
    QWidget* by_row_;
    PersonBox* by_;
    core::model::Findings cautions_;
};

} // namespace ui::pages
