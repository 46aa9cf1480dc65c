#include "ui/pages/pack_dialogs.h"

#include "ui/presenters/piece_line.h"
#include "ui/presenters/workspace.h"
#include "ui/text/quantity_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

QLineEdit* line(const char* object_name, const QString& label) {
    return look::named(new QLineEdit, object_name, label);
}

} // namespace

PackDialog::PackDialog(presenters::Workspace& workspace, std::optional<core::model::PieceId> piece,
                       QWidget* parent)
    : EntryDialog(workspace, "pack_dialog", tr("Pack a finished piece"), parent) {
    const auto& style = workspace.style();
    piece_ = look::named(new QComboBox, "pack_piece", tr("Piece"));
    core::services::PieceFilter finished;
    finished.states = {core::model::PieceState::finished};
    for (const auto& row : workspace.rows(workspace.book().pieces(finished))) {
        piece_->addItem(
            tr("%1 \u2013 %2")
                .arg(QString::fromStdString(row.code), QString::fromStdString(row.name)),
            static_cast<qlonglong>(row.id.row()));
    }
    code_ = line("pack_code", tr("Code on the pack"));
    kind_ = new edits::ChoiceBox<core::model::PackKind>("pack_kind", tr("How"));
    weight_ = new edits::MassField("pack_weight", tr("Weight"), style);
    weight_->set_required(true);
    packed_ = new edits::DayField("pack_day", tr("Packed on"), style, workspace.today());
    packed_->set_required(true);
    packed_->set_value(workspace.today());
    keep_by_ = new edits::DayField("pack_keep_by", tr("Keep until"), style, workspace.today());
    place_ = line("pack_place", tr("Where it lies"));
    add_row(tr("&Piece"), piece_);
    add_row(tr("&Code on the pack"), code_);
    add_row(tr("&How"), kind_);
    add_row(tr("&Weight"), weight_);
    add_row(tr("Packed &on"), packed_);
    add_row(tr("Keep &until, if you set a day"), keep_by_);
    add_row(tr("Where it &lies"), place_);
    below()->addWidget(look::caption(
        tr("How long a pack keeps depends on the product, its dryness and the cold. Follow your "
           "own code or laboratory; without one, look, smell and decide at each opening.")));
    connect(piece_, &QComboBox::currentIndexChanged, this, [this] { piece_chosen(); });
    if (piece) {
        piece_->setCurrentIndex(
            std::max(0, piece_->findData(static_cast<qlonglong>(piece->row()))));
    }
    piece_chosen();
}

void PackDialog::piece_chosen() {
    const auto id = core::model::PieceId::from_row(piece_->currentData().toLongLong());
    if (!id.is_assigned()) {
        say(QStringLiteral("note"),
            tr("No piece is finished yet. Sign a piece as done in its review first."));
        return;
    }
    const auto history = workspace().one(workspace().book().piece_history(id));
    const auto packs = workspace().rows(workspace().book().packs_of(id));
    if (!history) {
        return;
    }
    const auto line_now = presenters::line_in(workspace().book(), *history);
    code_->setText(QStringLiteral("%1-%2")
                       .arg(QString::fromStdString(history->piece.code))
                       .arg(packs.size() + 1));
    if (line_now.net) {
        auto left = *line_now.net;
        for (const auto& pack : packs) {
            left -= pack.packed_weight;
        }
        weight_->set_value(left.in_grams() > 0 ? std::optional(left) : std::nullopt);
    }
}

std::optional<core::actions::Command> PackDialog::command() {
    const auto id = core::model::PieceId::from_row(piece_->currentData().toLongLong());
    if (!id.is_assigned()) {
        piece_chosen();
        return {};
    }
    core::model::Pack pack{.piece = id,
                           .kind = kind_->value(),
                           .packed_weight = *weight_->value(),
                           .weight_left = *weight_->value(),
                           .packed_on = *packed_->value()};
    pack.code = code_->text().trimmed().toStdString();
    pack.keep_by = keep_by_->value();
    pack.place = place_->text().trimmed().toStdString();
    return core::actions::AddPack{pack};
}

PackChangeDialog::PackChangeDialog(presenters::Workspace& workspace, const core::model::Pack& pack,
                                   QWidget* parent)
    : EntryDialog(workspace, "pack_change_dialog",
                  tr("Change pack %1").arg(QString::fromStdString(pack.code)), parent),
      pack_(pack) {
    const auto& style = workspace.style();
    code_ = line("pack_code", tr("Code on the pack"));
    code_->setText(QString::fromStdString(pack.code));
    place_ = line("pack_place", tr("Where it lies"));
    place_->setText(QString::fromStdString(pack.place));
    opened_ = new edits::DayField("pack_opened", tr("Opened on"), style, workspace.today());
    opened_->set_value(pack.opened_on);
    keep_by_ = new edits::DayField("pack_keep_by", tr("Keep until"), style, workspace.today());
    keep_by_->set_value(pack.keep_by);
    add_row(tr("&Code on the pack"), code_);
    add_row(tr("Where it &lies"), place_);
    add_row(tr("&Opened on"), opened_);
    add_row(tr("Keep &until"), keep_by_);
}

std::optional<core::actions::Command> PackChangeDialog::command() {
    pack_.code = code_->text().trimmed().toStdString();
    pack_.place = place_->text().trimmed().toStdString();
    pack_.opened_on = opened_->value();
    pack_.keep_by = keep_by_->value();
    return core::actions::ChangePack{pack_};
}

TakeDialog::TakeDialog(presenters::Workspace& workspace, const core::model::Pack& pack,
                       QWidget* parent)
    : EntryDialog(workspace, "take_dialog",
                  tr("Take from pack %1").arg(QString::fromStdString(pack.code)), parent),
      pack_(pack) {
    const auto& style = workspace.style();
    kind_ = new edits::ChoiceBox<core::model::MoveKind>("take_kind", tr("What becomes of it"));
    amount_ = new edits::MassField("take_amount", tr("How much"), style);
    amount_->set_required(true);
    all_ = look::named(
        new QCheckBox(tr("&All that is left (%1)").arg(text::words(pack.weight_left, style))),
        "take_all", tr("All that is left"));
    to_whom_ = line("take_to_whom", tr("To whom"));
    note_ = line("take_note", tr("Note"));
    add_row(tr("&What becomes of it"), kind_);
    add_row(tr("&How much"), amount_);
    add_row({}, all_);
    add_row(tr("&To whom"), to_whom_);
    add_row(tr("&Note"), note_);
    connect(all_, &QCheckBox::toggled, this, [this](bool all) {
        if (all) {
            amount_->set_value(pack_.weight_left);
        }
        amount_->setEnabled(!all);
    });
}

std::optional<core::actions::Command> TakeDialog::command() {
    const auto amount = all_->isChecked() ? std::optional(pack_.weight_left) : amount_->value();
    if (!amount) {
        return {};
    }
    core::model::PackMove move{
        .pack = pack_.id, .kind = kind_->value(), .amount = *amount, .at = workspace().now()};
    move.to_whom = to_whom_->text().trimmed().toStdString();
    move.note = note_->text().trimmed().toStdString();
    return core::actions::MovePack{move};
}

} // namespace ui::pages
