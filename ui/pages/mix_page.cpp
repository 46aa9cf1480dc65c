#include "ui/pages/mix_page.h"

#include "ui/look/pieces.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/past_box.h"
#include "ui/presenters/workspace.h"
#include "ui/text/quantity_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QResizeEvent>
#include <QTableWidget>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

constexpr double steps_grams[] = {5, 1, 0.5, 0.1, 0.01, 0.001};

QFormLayout* form() {
    auto* made = new QFormLayout;
    made->setRowWrapPolicy(QFormLayout::WrapLongRows);
    made->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    return made;
}

QComboBox* box(const char* object_name, const QString& name) {
    auto* made = look::named(new QComboBox, object_name, name);
    made->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    made->setMinimumContentsLength(14);
    return made;
}

QTableWidget* table(const char* object_name, const QString& name) {
    auto* made = look::named(new QTableWidget, object_name, name);
    made->setEditTriggers(QAbstractItemView::NoEditTriggers);
    made->setSelectionBehavior(QAbstractItemView::SelectRows);
    made->setSelectionMode(QAbstractItemView::SingleSelection);
    made->setTabKeyNavigation(false);
    made->setShowGrid(false);
    made->setWordWrap(true);
    made->verticalHeader()->hide();
    made->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    made->horizontalHeader()->setHighlightSections(false);
    return made;
}

} // namespace

MixPage::MixPage(presenters::Workspace& workspace, QWidget* parent) : Page(workspace, parent) {
    auto* body = frame_page(this, tr("Mix bench")).body;
    halves_ = new QHBoxLayout;
    halves_->setSpacing(look::lines(this, 0.8));
    left_ = new QVBoxLayout;
    right_ = new QVBoxLayout;
    build_recipe(left_);
    build_circumstances(left_);
    build_wishes(left_);
    left_->addStretch(1);
    build_results(right_);
    right_->addStretch(1);
    halves_->addLayout(left_, 1);
    halves_->addLayout(right_, 1);
    body->addLayout(halves_);
    body->addStretch(1);
    auto entry = presenters::starting_entry(workspace_.style());
    entry.limits = workspace_.preferences().limit_set;
    show_entry(entry);
}

void MixPage::build_recipe(QVBoxLayout* column) {
    QVBoxLayout* inner = nullptr;
    auto* card = look::card(&inner);
    inner->addWidget(look::section_title(tr("The meat and the recipe")));
    auto* fields = form();
    meat_ = look::named(new QLineEdit, "mix_meat", tr("Weight of the meat"));
    meat_->setPlaceholderText(tr("1500 g; several pieces: 820 g; 1180 g"));
    meat_echo_ = look::caption({});
    meat_echo_->setObjectName(QStringLiteral("mix_meat_echo"));
    recipes_ = box("mix_recipes", tr("Recipe"));
    versions_ = box("mix_versions", tr("Version"));
    name_ = look::named(new QLineEdit, "mix_name", tr("Name of the recipe"));
    look::add_field(fields, tr("&Weight of the meat"), meat_);
    fields->addRow(QString(), meat_echo_);
    look::add_field(fields, tr("&Recipe"), recipes_);
    look::add_field(fields, tr("&Version"), versions_);
    look::add_field(fields, tr("&Name"), name_);
    inner->addLayout(fields);
    past_box_ = new PastBox("mix_past");
    inner->addWidget(past_box_);
    connect(past_box_, &PastBox::use, this, &MixPage::use_past);
    connect(past_box_, &PastBox::take_back, this, &MixPage::take_back_past);
    lines_ = new MixLines;
    inner->addWidget(lines_);
    auto* buttons = new look::SideBySide(26);
    auto* more = look::button("mix_add_line", tr("&Add a line"), look::ButtonLook::plain);
    auto* own =
        look::button("mix_add_own", tr("&Ingredient of my own..."), look::ButtonLook::plain);
    buttons->add(more, 0);
    buttons->add(own, 0);
    buttons->add_stretch();
    inner->addWidget(buttons);
    column->addWidget(card);
    connect(more, &QPushButton::clicked, this, [this] { lines_->add_line(); });
    connect(own, &QPushButton::clicked, this, &MixPage::add_own);
    connect(lines_, &MixLines::edited, this, &MixPage::recompute);
    connect(recipes_, &QComboBox::activated, this, [this] {
        const auto id = recipes_->currentData().toLongLong();
        if (id <= 0) {
            recipe_.reset();
            used_past_.reset();
            versions_->clear();
            auto entry = presenters::starting_entry(workspace_.style());
            entry.meat = meat_->text();
            entry.limits = workspace_.preferences().limit_set;
            show_entry(entry);
            return;
        }
        fill_versions(core::model::RecipeId::from_row(id));
    });
    connect(versions_, &QComboBox::activated, this, [this] {
        if (const auto version = version_chosen(versions_)) {
            load(*version);
        }
    });
    watch(meat_);
    watch(name_);
}

void MixPage::build_circumstances(QVBoxLayout* column) {
    QVBoxLayout* inner = nullptr;
    auto* card = look::card(&inner);
    inner->addWidget(look::section_title(tr("How, and against which limits")));
    auto* fields = form();
    method_ = box("mix_method", tr("Method"));
    for (const auto method :
         {core::mix::Method::dry, core::mix::Method::box, core::mix::Method::immersion_pickup,
          core::mix::Method::immersion_equilibrium, core::mix::Method::equilibrium_brine,
          core::mix::Method::injected, core::mix::Method::marinade, core::mix::Method::wash}) {
        method_->addItem(presenters::method_words(method), static_cast<int>(method));
    }
    limits_ = box("mix_limits", tr("Limits"));
    limits_->addItem(tr("none chosen"), QString());
    for (const auto& choice : presenters::mix_limit_choices()) {
        limits_->addItem(choice.name, choice.id);
    }
    scale_ = box("mix_scale", tr("The scale shows steps of"));
    scale_->addItem(tr("not said"), 0.0);
    for (const double grams : steps_grams) {
        scale_->addItem(tr("%1 g").arg(workspace_.style().locale.toString(grams, 'g', 3)), grams);
    }
    scale_->setCurrentIndex(scale_->findData(1.0));
    uptake_ = look::named(new QLineEdit, "mix_uptake", tr("Pickle taken up"));
    uptake_->setPlaceholderText(tr("10 % of the meat"));
    uptake_label_ = look::field_label(tr("Pickle taken &up"), uptake_);
    loss_ = look::named(new QLineEdit, "mix_loss", tr("Expected loss of weight"));
    loss_->setPlaceholderText(tr("35 %, for limits on finished meat"));
    skin_ = look::named(new QCheckBox(tr("S&kin on")), "mix_skin", tr("Skin on"));
    fatty_ = look::named(new QCheckBox(tr("&Fatty cut (belly, jowl)")), "mix_fatty",
                         tr("Fatty cut (belly, jowl)"));
    look::add_field(fields, tr("&Method"), method_);
    fields->addRow(uptake_label_, uptake_);
    look::add_field(fields, tr("&Limits"), limits_);
    look::add_field(fields, tr("&Scale step"), scale_);
    look::add_field(fields, tr("Expected l&oss"), loss_);
    fields->addRow(skin_);
    fields->addRow(fatty_);
    inner->addLayout(fields);
    column->addWidget(card);
    for (QWidget* field :
         std::initializer_list<QWidget*>{method_, limits_, scale_, uptake_, loss_, skin_, fatty_}) {
        watch(field);
    }
}

void MixPage::build_wishes(QVBoxLayout* column) {
    QVBoxLayout* inner = nullptr;
    auto* card = look::card(&inner);
    inner->addWidget(look::section_title(tr("Find the amounts")));
    inner->addWidget(look::caption(
        tr("Tick Hold on the lines that must stay, say what you want, and the other lines are "
           "found. What cannot be met is named.")));
    auto* fields = form();
    salt_wish_ = look::named(new QLineEdit, "mix_salt_wish", tr("Salt wanted, of the meat"));
    salt_wish_->setPlaceholderText(tr("2.75 %"));
    nitrite_wish_ =
        look::named(new QLineEdit, "mix_nitrite_wish", tr("Nitrite wanted, of the meat"));
    nitrite_wish_->setPlaceholderText(tr("120 ppm"));
    look::add_field(fields, tr("Salt wan&ted"), salt_wish_);
    look::add_field(fields, tr("Nitrite wante&d"), nitrite_wish_);
    inner->addLayout(fields);
    auto* find = look::button("mix_find", tr("&Find the rest"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(find);
    buttons->addStretch(1);
    inner->addLayout(buttons);
    said_ = new look::Banner("mix_said", this);
    inner->addWidget(said_);
    column->addWidget(card);
    connect(find, &QPushButton::clicked, this, &MixPage::find_amounts);
    watch(salt_wish_);
    watch(nitrite_wish_);
}

void MixPage::build_results(QVBoxLayout* column) {
    QVBoxLayout* inner = nullptr;
    scale_card_ = look::card(&inner);
    inner->addWidget(look::section_title(tr("Put on the scale")));
    weigh_ = table("mix_weigh", tr("What to put on the scale"));
    inner->addWidget(weigh_);
    scale_words_ = look::paragraph({});
    scale_words_->setObjectName(QStringLiteral("mix_scale_words"));
    inner->addWidget(scale_words_);
    inner->addSpacing(look::lines(this, 0.3));
    inner->addWidget(look::section_title(tr("What that is")));
    compare_ = box("mix_compare", tr("Compare with another recipe"));
    auto* side = form();
    look::add_field(side, tr("&Compare with"), compare_);
    inner->addLayout(side);
    dose_ = table("mix_dose", tr("What the meat gets"));
    inner->addWidget(dose_);
    bounds_title_ = look::section_title(tr("Against the limits"));
    bounds_ = table("mix_bounds", tr("The dose against the limits"));
    inner->addWidget(bounds_title_);
    inner->addWidget(bounds_);
    column->addWidget(scale_card_);
    findings_card_ = look::card(&inner);
    inner->addWidget(look::section_title(tr("Look at this first")));
    standing_ = look::paragraph({});
    standing_->setObjectName(QStringLiteral("mix_standing"));
    inner->addWidget(standing_);
    findings_ = new QVBoxLayout;
    findings_->setSpacing(look::lines(this, 0.3));
    inner->addLayout(findings_);
    why_ = look::named(new QLineEdit, "mix_why", tr("Why this version"));
    why_->setPlaceholderText(tr("what changed, for your later self"));
    auto* keeping = form();
    look::add_field(keeping, tr("Wh&y"), why_);
    inner->addLayout(keeping);
    keep_ = look::button("mix_keep", tr("&Keep this recipe"), look::ButtonLook::primary);
    auto* buttons = new look::SideBySide(28);
    use_ = look::button("mix_use", tr("Use it for a &batch…"));
    buttons->add(keep_, 0);
    buttons->add(use_, 0);
    buttons->add_stretch();
    inner->addWidget(buttons);
    inner->addWidget(look::caption(
        tr("These sums are no verdict on the food. Local codes, licensed practice and laboratory "
           "measurement come first.")));
    column->addWidget(findings_card_);
    connect(keep_, &QPushButton::clicked, this, &MixPage::keep);
    connect(use_, &QPushButton::clicked, this, &MixPage::use_for_batch);
    connect(compare_, &QComboBox::activated, this, &MixPage::recompute);
}

void MixPage::watch(QWidget* field) {
    if (auto* choice = qobject_cast<QComboBox*>(field)) {
        connect(choice, &QComboBox::currentIndexChanged, this, &MixPage::recompute);
    } else if (auto* line = qobject_cast<QLineEdit*>(field)) {
        connect(line, &QLineEdit::textEdited, this, &MixPage::recompute);
    } else if (auto* tick = qobject_cast<QCheckBox*>(field)) {
        connect(tick, &QCheckBox::toggled, this, &MixPage::recompute);
    }
}

void MixPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    // Two halves where both have room for their fields and tables; else one column, in which the
    // sheet comes right after the recipe so that it is seen while the weight is typed.
    const bool wide = event->size().width() > look::lines(this, 72);
    if (wide != wide_) {
        wide_ = wide;
        auto* column = wide ? right_ : left_;
        const int at = wide ? 0 : 1;
        column->insertWidget(at, scale_card_);
        column->insertWidget(at + 1, findings_card_);
        halves_->setStretchFactor(right_, wide ? 1 : 0);
    }
    // Rows are as high as their words need at the new width, once the layout has given it.
    QMetaObject::invokeMethod(this, &MixPage::fit_tables, Qt::QueuedConnection);
}

PageEntry mix_page() {
    return {"mix", Side::book, MixPage::tr("Mix bench"),
            MixPage::tr("What to weigh for this meat, and what dose that really is"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new MixPage(workspace, parent);
            }};
}

} // namespace ui::pages
