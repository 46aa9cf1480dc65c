#include "ui/look/pieces.h"
#include "ui/pages/page_frame.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

/// What the program does not do for anybody, and what it cannot know. Text only.
class CautionsPage : public Page {
    Q_DECLARE_TR_FUNCTIONS(CautionsPage)
  public:
    CautionsPage(presenters::Workspace& workspace, QWidget* parent);
    void refresh() override {}
};

struct Caution {
    QString title;
    QString text;
};

QVector<Caution> cautions() {
    return {
        {CautionsPage::tr("A number is not a verdict"),
         CautionsPage::tr("Weight loss says how much water has gone, not whether a food may be "
                          "eaten. Pieces at their target can be raw inside; pieces short of it "
                          "can be finished. Look, touch, smell and cut before you decide. When "
                          "in doubt, throw it out.")},
        {CautionsPage::tr("Curing salt is weighed, never guessed"),
         CautionsPage::tr("Nitrite and nitrate are poisons in the wrong amount, and curing salts "
                          "differ tenfold in strength. Enter the strength from the label of the "
                          "packet in your hand. Use a scale that can weigh the dose. Keep curing "
                          "salt marked and away from kitchen salt.")},
        {CautionsPage::tr("Cold first, then time"),
         CautionsPage::tr("Cure in the cold, and keep the time the plan gives. A date on the "
                          "calendar is no reason for a stronger dose or a shorter cure. After a "
                          "failure of the fridge, what counts is how warm, how long and how far "
                          "along each piece was.")},
        {CautionsPage::tr("Instruments are often wrong"),
         CautionsPage::tr("Check the scale with a known weight, the thermometer in ice water, the "
                          "hygrometer over a salt slurry. A reading nobody has checked is a "
                          "guess with digits.")},
        {CautionsPage::tr("Limits belong to your law"),
         CautionsPage::tr("The limit sets here are quoted with their source and date. Those marked "
                          "unverified were not read in the issuer's own words. If you sell or "
                          "give food away, the code where you live, your licence and your "
                          "laboratory come before anything this program shows.")},
        {CautionsPage::tr("Estimates carry a range"),
         CautionsPage::tr("Forecasts, water activity and salt in the finished piece are estimates "
                          "from your entries and published formulas. The range is part of the "
                          "answer. Only a laboratory measures water activity and pH in your "
                          "piece.")},
        {CautionsPage::tr("Some people need more care"),
         CautionsPage::tr("Dry-cured meat that is not cooked is a risk for the pregnant, the very "
                          "young, the old and the ill. Pork and game can carry parasites that "
                          "curing alone may not kill; follow the official freezing or cooking "
                          "times for your country.")},
    };
}

CautionsPage::CautionsPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent) {
    auto* column = frame_page(this, tr("Cautions")).body;
    for (const auto& caution : cautions()) {
        column->addSpacing(look::lines(this, 0.3));
        column->addWidget(look::section_title(caution.title));
        auto* text = look::paragraph(caution.text);
        text->setMaximumWidth(look::lines(this, 42));
        // In a row of its own: a column asks a label's height for its own width, not for the
        // label's.
        auto* row = new QHBoxLayout;
        row->addWidget(text, 100);
        row->addStretch(1);
        column->addLayout(row);
    }
    column->addStretch(1);
}

} // namespace

PageEntry cautions_page() {
    return {"cautions", Side::house, CautionsPage::tr("Cautions"),
            CautionsPage::tr("What to keep in mind before trusting a number"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new CautionsPage(workspace, parent);
            }};
}

} // namespace ui::pages
