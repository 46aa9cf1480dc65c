// The left side of the plan page: what is asked for.
#include "ui/look/pieces.h"
#include "ui/pages/plan_page.h"
#include "ui/presenters/workspace.h"
#include "ui/text/date_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QRadioButton>
#include <QStandardItemModel>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

constexpr std::size_t most_pieces = 30;

/// Templates under the names of their families, which cannot be picked themselves.
void fill_templates(QComboBox* box, const std::vector<presenters::PlanDraft::Choice>& choices) {
    QString family;
    for (const auto& choice : choices) {
        if (choice.family != family) {
            family = choice.family;
            box->addItem(family);
            auto* heading = qobject_cast<QStandardItemModel*>(box->model())->item(box->count() - 1);
            heading->setEnabled(false);
            QFont font = heading->font();
            font.setBold(true);
            heading->setFont(font);
        }
        box->addItem(choice.name, choice.id);
    }
}

} // namespace

QWidget* PlanPage::build_form() {
    QVBoxLayout* column = nullptr;
    auto* card = look::card(&column);
    column->addWidget(look::section_title(tr("What it will be")));
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    template_ = look::named(new QComboBox, "plan_template", tr("Kind of product"));
    template_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    template_->setMinimumContentsLength(18);
    template_->setMaxVisibleItems(20);
    fill_templates(template_, draft_->templates());
    product_ = look::named(new QComboBox, "plan_product", tr("Your name for the product"));
    product_->setEditable(true);
    product_->lineEdit()->setObjectName(QStringLiteral("plan_product_line"));
    product_->lineEdit()->setAccessibleName(tr("Your name for the product"));
    product_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    product_->setMinimumContentsLength(14);
    target_ = new edits::ShareField("plan_target", tr("Loss aimed for"), workspace_.style());
    chamber_ = look::named(new QComboBox, "plan_chamber", tr("Where it will hang"));
    chamber_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    chamber_->setMinimumContentsLength(14);
    look::add_field(form, tr("&Kind"), template_);
    look::add_field(form, tr("Your &name for it"), product_);
    look::add_field(form, tr("&Loss aimed for"), target_);
    look::add_field(form, tr("&Hangs in"), chamber_);
    column->addLayout(form);
    source_ = look::caption({});
    source_->setObjectName(QStringLiteral("plan_source"));
    column->addWidget(source_);
    build_pieces(column);
    build_when(column);
    column->addStretch(1);
    connect(template_, &QComboBox::currentIndexChanged, this, [this] {
        if (!filling_ && !template_->currentData().toString().isEmpty()) {
            draft_->set_template(template_->currentData().toString());
            fields_from_draft();
        }
    });
    connect(product_, &QComboBox::currentTextChanged, this, [this](const QString& text) {
        if (!filling_) {
            draft_->set_product(text);
        }
    });
    connect(target_, &edits::EntryField::edited, this, [this] {
        if (!filling_ && target_->is_good()) {
            draft_->set_target(target_->value());
        }
    });
    connect(chamber_, &QComboBox::currentIndexChanged, this, [this] {
        const qint64 id = chamber_->currentData().toLongLong();
        if (!filling_) {
            draft_->set_chamber(id > 0 ? std::optional(core::model::ChamberId::from_row(id))
                                       : std::nullopt);
        }
    });
    return card;
}

void PlanPage::build_pieces(QVBoxLayout* column) {
    column->addWidget(look::section_title(tr("The pieces")));
    piece_grid_ = new QGridLayout;
    piece_grid_->setHorizontalSpacing(look::lines(this, 0.4));
    int at = 0;
    for (const QString& head : {tr("Weight"), tr("Thickness"), tr("Shape")}) {
        piece_grid_->addWidget(look::caption(head), 0, at++);
    }
    piece_grid_->setColumnStretch(0, 1);
    piece_grid_->setColumnStretch(1, 1);
    piece_grid_->setColumnStretch(2, 2);
    column->addLayout(piece_grid_);
    auto* buttons = new look::SideBySide(20);
    auto* more = look::button("plan_more", tr("One piece &more"), look::ButtonLook::plain);
    auto* fewer = look::button("plan_fewer", tr("One piece &fewer"), look::ButtonLook::plain);
    buttons->add(more, 0);
    buttons->add(fewer, 0);
    buttons->add_stretch();
    column->addWidget(buttons);
    connect(more, &QPushButton::clicked, this, [this] {
        add_piece();
        take_pieces();
    });
    connect(fewer, &QPushButton::clicked, this, [this] {
        remove_piece();
        take_pieces();
    });
}

void PlanPage::add_piece() {
    if (pieces_.size() >= most_pieces) {
        return;
    }
    const int n = static_cast<int>(pieces_.size()) + 1;
    const QByteArray number = QByteArray::number(n);
    const auto name = [&](const char* stem) { return QByteArray(stem) + number; };
    const auto& style = workspace_.style();
    PieceRow piece{new edits::MassField(name("plan_weight_").constData(),
                                        tr("Weight of piece %1").arg(n), style),
                   new edits::LengthField(name("plan_thickness_").constData(),
                                          tr("Thickness of piece %1").arg(n), style),
                   new edits::ChoiceBox<core::model::Form>(name("plan_form_").constData(),
                                                           tr("Shape of piece %1").arg(n))};
    piece.form->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    piece.form->setMinimumContentsLength(2);
    piece.form->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    piece.form->set_value(draft_->pieces().empty() ? core::model::Form::slab
                                                   : draft_->pieces().back().form);
    int at = 0;
    for (QWidget* field :
         std::initializer_list<QWidget*>{piece.weight, piece.thickness, piece.form}) {
        piece_grid_->addWidget(field, n, at++, Qt::AlignTop);
    }
    const auto take = [this] { take_pieces(); };
    connect(piece.weight, &edits::EntryField::edited, this, take);
    connect(piece.thickness, &edits::EntryField::edited, this, take);
    connect(piece.form, &QComboBox::currentIndexChanged, this, take);
    pieces_.push_back(piece);
}

void PlanPage::remove_piece() {
    if (pieces_.size() <= 1) {
        return;
    }
    const PieceRow piece = pieces_.back();
    pieces_.pop_back();
    for (QWidget* field :
         std::initializer_list<QWidget*>{piece.weight, piece.thickness, piece.form}) {
        piece_grid_->removeWidget(field);
        field->deleteLater();
    }
}

void PlanPage::take_pieces() {
    if (filling_) {
        return;
    }
    std::vector<presenters::DraftPiece> pieces;
    for (const auto& row : pieces_) {
        pieces.push_back({.code = {},
                          .form = row.form->value(),
                          .thickness = row.thickness->value(),
                          .weight = row.weight->value()});
    }
    draft_->set_pieces(std::move(pieces));
}

void PlanPage::build_when(QVBoxLayout* column) {
    column->addWidget(look::section_title(tr("When")));
    forwards_ = look::named(new QRadioButton(tr("&Start on")), "plan_forwards", tr("Start on"));
    backwards_ =
        look::named(new QRadioButton(tr("Be &ready by")), "plan_backwards", tr("Be ready by"));
    forwards_->setChecked(true);
    auto* way = new QHBoxLayout;
    way->addWidget(forwards_);
    way->addWidget(backwards_);
    way->addStretch(1);
    column->addLayout(way);
    day_ = new edits::DayField("plan_day", tr("Day"), workspace_.style(), workspace_.today());
    day_->set_required(true);
    column->addWidget(day_);
    slack_ = look::named(new QCheckBox(tr("Keep slac&k for slow pieces")), "plan_slack",
                         tr("Keep slack for slow pieces"));
    slack_->setChecked(true);
    slack_->setVisible(false);
    column->addWidget(slack_);
    connect(backwards_, &QRadioButton::toggled, this, [this](bool on) {
        slack_->setVisible(on);
        draft_->set_backwards(on);
    });
    connect(day_, &edits::EntryField::edited, this, [this] {
        if (const auto day = day_->value(); !filling_ && day) {
            draft_->set_day(*day);
        }
    });
    connect(slack_, &QCheckBox::toggled, draft_, &presenters::PlanDraft::set_cautious);
}

void PlanPage::fields_from_draft() {
    filling_ = true;
    template_->setCurrentIndex(template_->findData(draft_->template_id()));
    product_->setEditText(draft_->product());
    target_->set_value(draft_->target());
    day_->set_value(draft_->day());
    while (pieces_.size() < std::max<std::size_t>(1, draft_->pieces().size())) {
        add_piece();
    }
    while (pieces_.size() > std::max<std::size_t>(1, draft_->pieces().size())) {
        remove_piece();
    }
    for (std::size_t i = 0; i < draft_->pieces().size(); ++i) {
        pieces_[i].weight->set_value(draft_->pieces()[i].weight);
        pieces_[i].thickness->set_value(draft_->pieces()[i].thickness);
        pieces_[i].form->set_value(draft_->pieces()[i].form);
    }
    filling_ = false;
}

} // namespace ui::pages
