#include "ui/pages/new_batch_page.h"

#include "ui/look/adaptive.h"
#include "ui/look/pieces.h"
#include "ui/pages/page_frame.h"
#include "ui/pages/past_box.h"
#include "ui/pages/take_on_box.h"
#include "ui/pages/weighing_dialog.h"
#include "ui/presenters/workspace.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

QLineEdit* line(const char* object_name, const QString& name) {
    auto* made = look::named(new QLineEdit, object_name, name);
    made->setMaximumWidth(look::lines(made, 18));
    return made;
}

QFormLayout* form() {
    auto* made = new QFormLayout;
    made->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    made->setRowWrapPolicy(QFormLayout::WrapLongRows);
    return made;
}

} // namespace

NewBatchPage::NewBatchPage(presenters::Workspace& workspace, QWidget* parent)
    : Page(workspace, parent) {
    auto* body = frame_page(this, tr("New batch")).body;
    build_meat(body);
    build_pieces(body);
    build_cure(body);
    build_end(body);
    body->addStretch(1);
    start_over();
}

void NewBatchPage::build_meat(QVBoxLayout* body) {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    column->addWidget(look::section_title(tr("The meat")));
    auto* two = new look::SideBySide(40);
    auto* left = form();
    auto* right = form();
    code_ = line("new_code", tr("Batch code"));
    name_ = line("new_name", tr("Name"));
    product_ = look::named(new QComboBox, "new_product", tr("Product"));
    product_->setEditable(true);
    product_->lineEdit()->setObjectName(QStringLiteral("new_product_line"));
    product_->lineEdit()->setAccessibleName(tr("Product"));
    product_->setMinimumContentsLength(20);
    product_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    species_ = line("new_species", tr("Animal"));
    supplier_ = line("new_supplier", tr("Supplier"));
    lot_ = line("new_lot", tr("Supplier's lot"));
    started_ =
        new edits::DayField("new_started", tr("Started"), workspace_.style(), workspace_.today());
    started_->set_required(true);
    look::add_field(left, tr("Batch &code"), code_);
    look::add_field(left, tr("&Name"), name_);
    look::add_field(left, tr("&Product"), product_);
    look::add_field(left, tr("&Started"), started_);
    look::add_field(right, tr("&Animal"), species_);
    look::add_field(right, tr("S&upplier"), supplier_);
    look::add_field(right, tr("Supplier's &lot"), lot_);
    two->add(left, 1);
    two->add(right, 1);
    column->addWidget(two);
    past_box_ = new PastBox("new_past");
    column->addWidget(past_box_);
    connect(past_box_, &PastBox::use, this, &NewBatchPage::use_past);
    connect(past_box_, &PastBox::take_back, this, &NewBatchPage::take_back_past);
    body->addWidget(card);
    for (QWidget* field : std::initializer_list<QWidget*>{name_, product_, started_}) {
        watch(field);
    }
}

void NewBatchPage::build_pieces(QVBoxLayout* body) {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    column->addWidget(look::section_title(tr("The pieces")));
    column->addWidget(look::caption(tr("Raw weight as it goes into the cure, without wrapping. "
                                       "Measure the thickness at the thickest point.")));
    piece_rows_ = new QVBoxLayout;
    piece_rows_->setSpacing(look::lines(this, 0.4));
    column->addLayout(piece_rows_);
    auto* buttons = new QHBoxLayout;
    auto* more = look::button("new_more", tr("One piece &more"), look::ButtonLook::plain);
    auto* fewer = look::button("new_fewer", tr("One piece &fewer"), look::ButtonLook::plain);
    buttons->addWidget(more);
    buttons->addWidget(fewer);
    buttons->addStretch(1);
    column->addLayout(buttons);
    connect(more, &QPushButton::clicked, this, [this] {
        add_piece();
        recompute();
        pieces_.back().raw->setFocus();
    });
    connect(fewer, &QPushButton::clicked, this, [this] {
        remove_piece();
        recompute();
    });
    auto* layout = form();
    target_ = new edits::ShareField("new_target", tr("Loss aimed for"), workspace_.style());
    reference_ =
        new edits::ChoiceBox<core::model::ReferenceWeight>("new_reference", tr("Counted from"));
    reference_->set_value(core::model::ReferenceWeight::hung);
    plan_ = look::named(new QComboBox, "new_plan", tr("Plan"));
    plan_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    plan_->setMinimumContentsLength(16);
    plan_->addItem(tr("no plan"), QString());
    for (const auto& choice : presenters::plan_templates()) {
        plan_->addItem(choice.name, choice.id);
    }
    plan_words_ = look::caption({});
    plan_words_->setObjectName(QStringLiteral("new_plan_words"));
    look::add_field(layout, tr("Loss aimed f&or"), target_);
    look::add_field(layout, tr("Counted f&rom"), reference_);
    look::add_field(layout, tr("Pl&an"), plan_);
    column->addLayout(layout);
    column->addWidget(plan_words_);
    body->addWidget(card);
    for (QWidget* field : std::initializer_list<QWidget*>{target_, reference_, plan_}) {
        watch(field);
    }
}

void NewBatchPage::build_cure(QVBoxLayout* body) {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    column->addWidget(look::section_title(tr("The cure: dry, weighed, all of it taken up")));
    column->addWidget(
        look::caption(tr("Shares are of the raw weight. Curing salt counts by the strength on its "
                         "packet, not by its name or colour.")));
    auto* two = new look::SideBySide(40);
    auto* left = form();
    auto* right = form();
    const auto& style = workspace_.style();
    salt_ = new edits::ShareField("new_salt", tr("Salt"), style);
    sugar_ = new edits::ShareField("new_sugar", tr("Sugar"), style);
    cure_ = look::named(new QComboBox, "new_cure", tr("Curing salt"));
    cure_->addItem(tr("none"), QString());
    for (const auto& choice : presenters::curing_salts()) {
        cure_->addItem(choice.name, choice.id);
    }
    cure_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    cure_->setMinimumContentsLength(18);
    cure_dose_ = new edits::ShareField("new_cure_dose", tr("Curing salt, dose"), style);
    nitrite_ = new edits::ShareField("new_nitrite", tr("Nitrite on the label"), style);
    nitrite_->set_placeholder(tr("as listed"));
    nitrate_ = new edits::ShareField("new_nitrate", tr("Nitrate on the label"), style);
    nitrate_->set_placeholder(tr("as listed"));
    scale_ = scale_box(workspace_, "new_scale", core::units::Mass::grams(1));
    look::add_field(left, tr("Sal&t"), salt_);
    look::add_field(left, tr("Su&gar"), sugar_);
    look::add_field(left, tr("Weighed &on"), scale_);
    look::add_field(right, tr("Curing salt"), cure_);
    look::add_field(right, tr("&Dose of it"), cure_dose_);
    look::add_field(right, tr("N&itrite on the label"), nitrite_);
    look::add_field(right, tr("Nitrat&e on the label"), nitrate_);
    two->add(left, 1);
    two->add(right, 1);
    column->addWidget(two);
    for (QWidget* field : std::initializer_list<QWidget*>{salt_, sugar_, cure_, cure_dose_,
                                                          nitrite_, nitrate_, scale_}) {
        watch(field);
    }
    sheet_ = new Sheet(
        {}, [](const SheetRow&) { return qint64(0); }, this);
    sheet_table_ = new Table("new_sheet", tr("Mix sheet: what to weigh for each piece"));
    sheet_table_->show_model(sheet_);
    sheet_table_->setSortingEnabled(false);
    sheet_table_->grow_with_rows(true);
    column->addWidget(sheet_table_);
    dose_ = look::paragraph({});
    dose_->setObjectName(QStringLiteral("new_dose"));
    column->addWidget(dose_);
    findings_ = new QVBoxLayout;
    findings_->setSpacing(look::lines(this, 0.3));
    column->addLayout(findings_);
    body->addWidget(card);
}

void NewBatchPage::build_end(QVBoxLayout* body) {
    take_on_ = new TakeOnBox("new_accept");
    body->addWidget(take_on_);
    wrong_ = new look::Banner("new_wrong", this);
    body->addWidget(wrong_);
    auto* buttons = new QHBoxLayout;
    start_ = look::button("new_start", tr("Start the &batch"), look::ButtonLook::primary);
    buttons->addWidget(start_);
    buttons->addStretch(1);
    body->addLayout(buttons);
    connect(start_, &QPushButton::clicked, this, &NewBatchPage::start);
}

void NewBatchPage::watch(QWidget* field) {
    if (auto* entry = qobject_cast<edits::EntryField*>(field)) {
        connect(entry, &edits::EntryField::edited, this, &NewBatchPage::recompute);
    } else if (auto* box = qobject_cast<QComboBox*>(field)) {
        connect(box, &QComboBox::currentTextChanged, this, &NewBatchPage::recompute);
    } else if (auto* text = qobject_cast<QLineEdit*>(field)) {
        connect(text, &QLineEdit::textEdited, this, &NewBatchPage::recompute);
    }
}

void NewBatchPage::add_piece() {
    const int n = static_cast<int>(pieces_.size());
    const QByteArray number = QByteArray::number(n + 1);
    const auto name = [&](const char* stem) { return QByteArray(stem) + number; };
    const auto& style = workspace_.style();
    PieceRow piece{line(name("new_piece_code_").constData(), tr("Code of piece %1").arg(n + 1)),
                   line(name("new_piece_name_").constData(), tr("Cut of piece %1").arg(n + 1)),
                   new edits::MassField(name("new_piece_raw_").constData(),
                                        tr("Raw weight of piece %1").arg(n + 1), style),
                   new edits::LengthField(name("new_piece_thickness_").constData(),
                                          tr("Thickness of piece %1").arg(n + 1), style),
                   new edits::ChoiceBox<core::model::Form>(name("new_piece_form_").constData(),
                                                           tr("Shape of piece %1").arg(n + 1))};
    piece.code->setMaximumWidth(look::lines(this, 4));
    piece.raw->set_required(true);
    piece.form->set_value(pieces_.empty() ? core::model::Form::cylinder
                                          : pieces_.back().form->value());
    if (static_cast<std::size_t>(n) < free_codes_.size()) {
        piece.code->setText(QString::fromStdString(free_codes_[static_cast<std::size_t>(n)]));
    }
    // Placeholders instead of column heads: in a narrow window the fields stand below each other.
    piece.code->setPlaceholderText(tr("code"));
    piece.name->setPlaceholderText(tr("cut or description"));
    piece.raw->set_placeholder(tr("raw weight"));
    piece.thickness->set_placeholder(tr("thickness"));
    piece.row = new look::SideBySide(40);
    for (QWidget* field : std::initializer_list<QWidget*>{piece.code, piece.name, piece.raw,
                                                          piece.thickness, piece.form}) {
        piece.row->add(field, field == piece.name ? 2 : 1);
        watch(field);
    }
    piece_rows_->addWidget(piece.row);
    pieces_.push_back(piece);
}

void NewBatchPage::remove_piece() {
    if (pieces_.size() <= 1) {
        return;
    }
    const PieceRow piece = pieces_.back();
    pieces_.pop_back();
    piece_rows_->removeWidget(piece.row);
    piece.row->deleteLater();
}

PageEntry new_batch_page() {
    return {"new_batch", Side::inner, NewBatchPage::tr("New batch"),
            NewBatchPage::tr("Meat, pieces, cure and plan of a new batch"),
            [](presenters::Workspace& workspace, QWidget* parent) -> Page* {
                return new NewBatchPage(workspace, parent);
            }};
}

} // namespace ui::pages
