#include "ui/pages/piece_dialog.h"

#include "ui/presenters/workspace.h"

#include <QFormLayout>
#include <QLineEdit>

namespace ui::pages {

QComboBox* chamber_box(presenters::Workspace& workspace, const char* object_name,
                       std::optional<core::model::ChamberId> chosen) {
    auto* box = look::named(new QComboBox, object_name, PieceDialog::tr("Chamber"));
    box->addItem(PieceDialog::tr("not in a chamber"), 0);
    for (const auto& chamber : workspace.rows(workspace.book().chambers())) {
        box->addItem(QString::fromStdString(chamber.name),
                     static_cast<qlonglong>(chamber.id.row()));
    }
    if (chosen) {
        box->setCurrentIndex(std::max(0, box->findData(static_cast<qlonglong>(chosen->row()))));
    }
    return box;
}

std::optional<core::model::ChamberId> chosen_chamber(const QComboBox* box) {
    const qlonglong row = box->currentData().toLongLong();
    return row > 0 ? std::optional(core::model::ChamberId::from_row(row)) : std::nullopt;
}

PieceDialog::PieceDialog(presenters::Workspace& workspace, core::model::BatchId batch,
                         QWidget* parent)
    : EntryDialog(workspace, "piece_dialog", tr("Add a piece"), parent), fresh_(true) {
    piece_.batch = batch;
    piece_.state = core::model::PieceState::curing;
    const auto codes = workspace.rows(workspace.book().free_piece_codes(1));
    piece_.code = codes.empty() ? std::string() : codes.front();
    build();
    fill();
}

PieceDialog::PieceDialog(presenters::Workspace& workspace, const core::model::Piece& piece,
                         QWidget* parent)
    : EntryDialog(workspace, "piece_dialog",
                  tr("Change piece %1").arg(QString::fromStdString(piece.code)), parent),
      piece_(piece), fresh_(false) {
    build();
    fill();
}

void PieceDialog::build() {
    const auto& style = workspace().style();
    code_ = look::named(new QLineEdit, "piece_code", tr("Code on the tag"));
    code_->setMaxLength(8);
    add_row(tr("&Code on the tag"), code_);
    name_ = look::named(new QLineEdit, "piece_name", tr("Cut or description"));
    add_row(tr("C&ut or description"), name_);
    form_ = new edits::ChoiceBox<core::model::Form>("piece_form", tr("Shape"));
    add_row(tr("&Shape"), form_);
    thickness_ = new edits::LengthField("piece_thickness", tr("Thickness"), style);
    add_row(tr("&Thickness"), thickness_);
    connect(form_, &QComboBox::currentIndexChanged, this,
            [this] { thickness_->set_placeholder(text::thickness_hint(form_->value())); });
    if (fresh_) {
        raw_ = new edits::MassField("piece_raw", tr("Raw weight"), style);
        raw_->set_required(true);
        add_row(tr("&Raw weight"), raw_);
    }
    fat_ = new edits::ShareField("piece_fat", tr("Fat, as a share of the raw piece"), style);
    add_row(tr("&Fat share, if known"), fat_);
    skin_ = new edits::ChoiceBox<core::model::SkinSide>("piece_skin", tr("Skin"));
    add_row(tr("S&kin"), skin_);
    target_ = new edits::ShareField("piece_target", tr("Loss aimed for"), style);
    add_row(tr("&Loss aimed for"), target_);
    reference_ =
        new edits::ChoiceBox<core::model::ReferenceWeight>("piece_reference", tr("Counted from"));
    add_row(tr("Counted f&rom"), reference_);
    chamber_ = chamber_box(workspace(), "piece_chamber", piece_.chamber);
    add_row(tr("Cha&mber"), chamber_);
    position_ = look::named(new QLineEdit, "piece_position", tr("Hook, rail or shelf"));
    add_row(tr("&Hook, rail or shelf"), position_);
    order_ = new edits::NumberField("piece_order", tr("Order in the weigh-in round"), style);
    add_row(tr("&Order in the round"), order_);
}

void PieceDialog::fill() {
    code_->setText(QString::fromStdString(piece_.code));
    name_->setText(QString::fromStdString(piece_.name));
    form_->set_value(piece_.form);
    thickness_->set_placeholder(text::thickness_hint(piece_.form));
    thickness_->set_value(piece_.thickness);
    fat_->set_value(piece_.fat);
    skin_->set_value(piece_.skin);
    reference_->set_value(piece_.target ? piece_.target->reference
                                        : core::model::ReferenceWeight::hung);
    if (piece_.target) {
        target_->set_value(piece_.target->loss);
    }
    position_->setText(QString::fromStdString(piece_.position));
    order_->set_value(static_cast<double>(piece_.hanging_order));
}

std::optional<core::actions::Command> PieceDialog::command() {
    piece_.code = code_->text().trimmed().toStdString();
    piece_.name = name_->text().trimmed().toStdString();
    piece_.form = form_->value();
    piece_.thickness = thickness_->value();
    piece_.fat = fat_->value();
    piece_.skin = skin_->value();
    piece_.target.reset();
    if (const auto loss = target_->value()) {
        piece_.target = core::model::Target{*loss, reference_->value()};
    }
    piece_.chamber = chosen_chamber(chamber_);
    piece_.position = position_->text().trimmed().toStdString();
    piece_.hanging_order = static_cast<int>(order_->value().value_or(piece_.hanging_order));
    if (piece_.code.empty()) {
        say(QStringLiteral("stop"), tr("Give the piece a code: two or three letters or digits."));
        code_->setFocus();
        return {};
    }
    if (!fresh_) {
        return core::actions::ChangePiece{piece_};
    }
    core::model::Weighing raw{.taken_at = workspace().now(),
                              .on_scale = *raw_->value(),
                              .tare = core::units::Mass::grams(0)};
    raw.state = core::model::WeighedState::raw;
    return core::actions::AddPiece{{piece_, {raw}}};
}

} // namespace ui::pages
