#include "ui/pages/pack_dialogs.h"

#include "ui/look/fit.h"
#include "ui/pages/keep_by_fields.h"
#include "ui/presenters/hang_again.h"
#include "ui/presenters/piece_line.h"
#include "ui/presenters/workspace.h"
#include "ui/text/quantity_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

QString missing_reason() {
    return PackDialog::tr("This day is your own. Say why in a few words, or choose a rule.");
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
    code_ = look::text_line("pack_code", tr("Code on the pack"));
    kind_ = new edits::ChoiceBox<core::model::PackKind>("pack_kind", tr("How"));
    weight_ = new edits::MassField("pack_weight", tr("Weight"), style);
    weight_->set_required(true);
    packed_ = new edits::DayField("pack_day", tr("Packed on"), style, workspace.today());
    packed_->set_required(true);
    packed_->set_value(workspace.today());
    place_ = look::text_line("pack_place", tr("Where it lies"));
    auto* keep = new KeepByFields(workspace, this);
    add_row(tr("&Piece"), piece_);
    add_row(tr("&Code on the pack"), code_);
    add_row(tr("&How"), kind_);
    add_row(tr("&Weight"), weight_);
    add_row(tr("Packed &on"), packed_);
    add_row(tr("Where it &lies"), place_);
    add_row(tr("&Rule for keeping it"), keep->rule());
    form()->addRow(QString(), keep->source());
    add_row(tr("Keep &until"), keep->day());
    add_row(tr("Wh&y this day"), keep->why());
    below()->addWidget(look::caption(
        tr("Such a day says when to look, not what to think of it. Look, smell and decide at each "
           "opening.")));
    keep_ = keep;
    look::resize_in_lines(this, 34, 32);
    connect(kind_, &QComboBox::currentIndexChanged, this, &PackDialog::offer_rules);
    offer_rules();
    connect(piece_, &QComboBox::currentIndexChanged, this, [this] { piece_chosen(); });
    if (piece) {
        piece_->setCurrentIndex(
            std::max(0, piece_->findData(static_cast<qlonglong>(piece->row()))));
    }
    piece_chosen();
}

void PackDialog::offer_rules() {
    keep_->offer(kind_->value(), packed_->value(), {});
}

void PackDialog::edited() {
    if (keep_ != nullptr && sender() == packed_) {
        offer_rules();
    }
}

QString PackDialog::why() const {
    return keep_->reason();
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
    if (keep_->reason_is_missing()) {
        say(QStringLiteral("stop"), missing_reason());
        keep_->why()->setFocus();
        return {};
    }
    core::model::Pack pack{.piece = id,
                           .kind = kind_->value(),
                           .packed_weight = *weight_->value(),
                           .weight_left = *weight_->value(),
                           .packed_on = *packed_->value()};
    pack.code = code_->text().trimmed().toStdString();
    keep_->write_to(pack);
    pack.place = place_->text().trimmed().toStdString();
    return core::actions::AddPack{pack};
}

PackChangeDialog::PackChangeDialog(presenters::Workspace& workspace, const core::model::Pack& pack,
                                   QWidget* parent)
    : EntryDialog(workspace, "pack_change_dialog",
                  tr("Change pack %1").arg(QString::fromStdString(pack.code)), parent),
      pack_(pack) {
    const auto& style = workspace.style();
    code_ = look::text_line("pack_code", tr("Code on the pack"));
    code_->setText(QString::fromStdString(pack.code));
    place_ = look::text_line("pack_place", tr("Where it lies"));
    place_->setText(QString::fromStdString(pack.place));
    opened_ = new edits::DayField("pack_opened", tr("Opened on"), style, workspace.today());
    opened_->set_value(pack.opened_on);
    kind_ = new edits::ChoiceBox<core::model::PackKind>("pack_kind", tr("How"));
    kind_->set_value(pack.kind);
    auto* keep = new KeepByFields(workspace, this);
    keep->start_from(pack);
    add_row(tr("&Code on the pack"), code_);
    add_row(tr("&How"), kind_);
    add_row(tr("Where it &lies"), place_);
    add_row(tr("&Opened on"), opened_);
    add_row(tr("&Rule for keeping it"), keep->rule());
    form()->addRow(QString(), keep->source());
    add_row(tr("Keep &until"), keep->day());
    add_row(tr("Wh&y this day"), keep->why());
    keep_ = keep;
    const auto offer = [this] { keep_->offer(kind_->value(), pack_.packed_on, opened_->value()); };
    connect(kind_, &QComboBox::currentIndexChanged, this, offer);
    offer();
    look::resize_in_lines(this, 34, 32);
}

void PackChangeDialog::edited() {
    if (keep_ != nullptr && sender() == opened_) {
        keep_->offer(kind_->value(), pack_.packed_on, opened_->value());
    }
}

QString PackChangeDialog::why() const {
    return keep_->reason();
}

std::optional<core::actions::Command> PackChangeDialog::command() {
    if (keep_->reason_is_missing()) {
        say(QStringLiteral("stop"), missing_reason());
        keep_->why()->setFocus();
        return {};
    }
    pack_.kind = kind_->value();
    pack_.code = code_->text().trimmed().toStdString();
    pack_.place = place_->text().trimmed().toStdString();
    pack_.opened_on = opened_->value();
    keep_->write_to(pack_);
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
    to_whom_ = look::text_line("take_to_whom", tr("To whom"));
    note_ = look::text_line("take_note", tr("Note"));
    add_row(tr("&What becomes of it"), kind_);
    add_row(tr("&How much"), amount_);
    add_row({}, all_);
    add_row(tr("&To whom"), to_whom_);
    add_row(tr("&Note"), note_);
    build_hanging();
    connect(all_, &QCheckBox::toggled, this, [this](bool all) {
        if (all) {
            amount_->set_value(pack_.weight_left);
        }
        amount_->setEnabled(!all);
        edited();
    });
    connect(kind_, &QComboBox::currentIndexChanged, this, [this] { edited(); });
    TakeDialog::edited();
}

void TakeDialog::build_hanging() {
    const auto codes = workspace().rows(workspace().book().free_piece_codes(1));
    new_code_ = look::text_line("take_code", tr("Code of the new piece"));
    new_code_->setText(codes.empty() ? QString() : QString::fromStdString(codes.front()));
    add_row(tr("&Code of the new piece"), new_code_);
    what_ = look::paragraph({});
    what_->setObjectName(QStringLiteral("take_what"));
    below()->addWidget(what_);
}

std::optional<core::units::Mass> TakeDialog::amount() const {
    return all_->isChecked() ? std::optional(pack_.weight_left) : amount_->value();
}

void TakeDialog::edited() {
    if (what_ == nullptr) {
        return;
    }
    const bool hangs = kind_->value() == core::model::MoveKind::re_hung;
    const auto net = amount();
    const bool whole = hangs && presenters::hangs_whole(workspace().book(), pack_,
                                                        net.value_or(pack_.weight_left));
    form()->setRowVisible(to_whom_, !hangs);
    form()->setRowVisible(new_code_, hangs && !whole);
    what_->setVisible(hangs);
    if (!hangs) {
        return;
    }
    const auto history = workspace().one(workspace().book().piece_history(pack_.piece));
    if (!history) {
        return;
    }
    const auto& style = workspace().style();
    const auto now = presenters::line_in(workspace().book(), *history);
    const QString code = QString::fromStdString(history->piece.code);
    const QString lost =
        now.towards_target ? text::words(now.towards_target->loss, style) : text::unknown();
    what_->setText(
        whole ? tr("Piece %1 itself hangs again, at %2 lost. It is on the hanging page and the day "
                   "sheet from now on; undo takes it back.")
                    .arg(code, lost)
              : tr("%1 of piece %2 becomes a piece of its own, which starts at the loss the whole "
                   "had (%3). It is on the hanging page and the day sheet from now on; undo takes "
                   "it back.")
                    .arg(text::words(net.value_or(pack_.weight_left), style), code, lost));
}

std::optional<core::actions::Command> TakeDialog::command() {
    const auto taken = amount();
    if (!taken) {
        return {};
    }
    core::model::PackMove move{
        .pack = pack_.id, .kind = kind_->value(), .amount = *taken, .at = workspace().now()};
    const bool hangs = move.kind == core::model::MoveKind::re_hung;
    move.to_whom = (hangs ? new_code_ : to_whom_)->text().trimmed().toStdString();
    move.note = note_->text().trimmed().toStdString();
    return core::actions::MovePack{move};
}

} // namespace ui::pages
