#pragma once

#include "core/model/recipe.h"
#include "ui/pages/mix_lines.h"
#include "ui/pages/page.h"
#include "ui/presenters/mix_bench.h"
#include "ui/presenters/mix_tables.h"
#include "ui/presenters/own_past.h"

#include <QSet>
#include <memory>

class QCheckBox;
class QComboBox;
class QLabel;
class QFrame;
class QHBoxLayout;
class QLineEdit;
class QPushButton;
class QTableWidget;
class QVBoxLayout;

namespace ui::look {
class Banner;
}

namespace ui::pages {

class PastBox;

/// The mix bench: a recipe in any form on one side, what it really is for this meat and this
/// scale on the other. Everything follows every key press; recipes are kept in versions.
class MixPage : public Page {
    Q_OBJECT
  public:
    MixPage(presenters::Workspace& workspace, QWidget* parent);
    /// `row` is a recipe's id: that recipe's latest version is laid on the bench.
    void arrive(const Place& place) override;
    void refresh() override;
    std::vector<print::Printable> printables() override;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void build_recipe(QVBoxLayout* column);
    void build_circumstances(QVBoxLayout* column);
    void build_wishes(QVBoxLayout* column);
    void build_results(QVBoxLayout* column);
    void watch(QWidget* field);

    [[nodiscard]] presenters::MixEntry entered() const;
    void show_entry(const presenters::MixEntry& entry);
    void fill_recipes();
    void fill_versions(core::model::RecipeId recipe);
    void load(const core::model::RecipeVersion& version);
    [[nodiscard]] std::optional<core::model::RecipeVersion> version_chosen(QComboBox* box) const;

    void recompute();
    void show_faults(const std::vector<presenters::MixFault>& faults);
    void show_sheet(const core::mix::MixSheet& sheet, const core::mix::MixSheet* other);
    void show_findings(const core::model::Findings& findings);
    void show_standing(const core::model::Findings& findings);
    void fit_tables();
    void find_amounts();
    // What batches made from this recipe said: mix_page_past.cpp.
    void show_past();
    void use_past();
    void take_back_past();
    void add_own();
    /// False when it could not be kept; true also when there is no news.
    bool keep();
    void use_for_batch();

    /// Parts of the recipe on the bench that the form has no field for.
    presenters::MixEntry carried_;
    std::optional<core::model::RecipeId> recipe_;
    QString kept_document_;  ///< as last loaded or kept, to tell whether there is news
    QSet<QString> accepted_; ///< cautions taken on by name: code and place
    QStringList shown_findings_;
    presenters::OwnPast past_;
    std::optional<presenters::PastProposal> proposal_;
    /// The bench as it was before a proposal was used, and as it was right after.
    struct UsedPast {
        presenters::MixEntry before, after;
        QString reason;
    };
    std::optional<UsedPast> used_past_;
    PastBox* past_box_ = nullptr;
    core::model::Findings findings_now_;
    bool loading_ = false;

    QHBoxLayout* halves_ = nullptr;
    QVBoxLayout* left_ = nullptr;
    QVBoxLayout* right_ = nullptr;
    QFrame* scale_card_ = nullptr;
    QFrame* findings_card_ = nullptr;
    bool wide_ = true;
    QComboBox* recipes_ = nullptr;
    QComboBox* versions_ = nullptr;
    QComboBox* compare_ = nullptr;
    QLineEdit* name_ = nullptr;
    QLineEdit* meat_ = nullptr;
    QLabel* meat_echo_ = nullptr;
    QComboBox* method_ = nullptr;
    QComboBox* limits_ = nullptr;
    QComboBox* scale_ = nullptr;
    QLineEdit* uptake_ = nullptr;
    QLabel* uptake_label_ = nullptr;
    QLineEdit* loss_ = nullptr;
    QCheckBox* skin_ = nullptr;
    QCheckBox* fatty_ = nullptr;
    MixLines* lines_ = nullptr;
    QLineEdit* salt_wish_ = nullptr;
    QLineEdit* nitrite_wish_ = nullptr;
    look::Banner* said_ = nullptr;
    QTableWidget* weigh_ = nullptr;
    QTableWidget* dose_ = nullptr;
    QTableWidget* bounds_ = nullptr;
    QLabel* bounds_title_ = nullptr;
    QLabel* scale_words_ = nullptr;
    QLabel* standing_ = nullptr;
    QVBoxLayout* findings_ = nullptr;
    QLineEdit* why_ = nullptr;
    QPushButton* keep_ = nullptr;
    std::shared_ptr<const core::mix::MixSheet> shown_; ///< for print
    QPushButton* use_ = nullptr;
};

} // namespace ui::pages
