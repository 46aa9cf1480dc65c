#include "ui/pages/split_dialogs.h"

#include "ui/pages/event_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/text/quantity_words.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

namespace ui::pages {

using core::units::Mass;

SplitDialog::SplitDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                         QWidget* parent)
    : EntryDialog(workspace, "split_dialog",
                  tr("Cut %1 into pieces").arg(QString::fromStdString(line.piece().code)), parent),
      line_(line), codes_(workspace.rows(workspace.book().free_piece_codes(6))) {
    form()->addRow(look::caption(tr("Weigh each part without casing or net. Start weight and "
                                    "target are shared out in proportion; the family stays.")));
    before_ = new edits::MassField("split_before", tr("Net weight before"), workspace.style());
    before_->set_value(line.net);
    add_row(tr("Net weight &before"), before_);
    note_ = look::named(new QLineEdit, "split_note", tr("Note"));
    preview_ = look::paragraph({});
    preview_->setObjectName(QStringLiteral("split_preview"));
    auto* more = look::button("split_more", tr("&One part more"), look::ButtonLook::plain);
    add_child();
    add_child();
    auto* row = new QHBoxLayout;
    row->addWidget(more);
    row->addStretch(1);
    below()->addLayout(row);
    below()->addWidget(look::field_label(tr("&Note"), note_));
    below()->addWidget(note_);
    below()->addWidget(look::section_title(tr("What changes")));
    below()->addWidget(preview_);
    set_keep_words(tr("&Cut"));
    connect(more, &QPushButton::clicked, this, &SplitDialog::add_child);
    SplitDialog::edited();
}

void SplitDialog::add_child() {
    const std::size_t n = children_.size();
    if (n >= codes_.size() && n >= 2) {
        return;
    }
    const QByteArray number = QByteArray::number(static_cast<int>(n) + 1);
    Child child{look::named(new QLineEdit, ("split_code_" + number).constData(),
                            tr("Code of part %1").arg(n + 1)),
                new edits::MassField(("split_net_" + number).constData(),
                                     tr("Net weight of part %1").arg(n + 1), workspace().style())};
    child.code->setText(n < codes_.size() ? QString::fromStdString(codes_[n]) : QString());
    child.code->setMaximumWidth(look::lines(this, 5));
    child.net->set_required(true);
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(child.code, 0, Qt::AlignTop);
    layout->addWidget(child.net, 1);
    form()->addRow(look::field_label(tr("Part &%1: code, net weight").arg(n + 1), child.code), row);
    connect(child.net, &edits::EntryField::edited, this, &SplitDialog::edited);
    children_.push_back(child);
}

void SplitDialog::edited() {
    if (preview_ == nullptr) {
        return;
    }
    const auto& style = workspace().style();
    const auto before = before_->value();
    Mass parts = Mass::grams(0);
    QStringList words;
    for (const auto& child : children_) {
        const auto net = child.net->value();
        if (!net || !before || before->in_grams() <= 0) {
            continue;
        }
        parts += *net;
        const double share = *net / *before;
        QString part = tr("%1: %2 net").arg(child.code->text(), text::words(*net, style));
        if (line_.towards_target) {
            part += tr(", start %1").arg(text::words(line_.towards_target->start * share, style));
        }
        if (line_.target_net) {
            part += tr(", target %1 net").arg(text::words(*line_.target_net * share, style));
        }
        words << part;
    }
    if (before && !words.isEmpty()) {
        const Mass left = *before - parts;
        words
            << (left.in_grams() >= 0
                    ? tr("Not accounted for: %1").arg(text::words(left, style))
                    : tr("The parts weigh %1 more than the whole.").arg(text::words(-left, style)));
    }
    preview_->setText(words.isEmpty() ? text::unknown() : words.join(QLatin1Char('\n')));
}

std::optional<core::actions::Command> SplitDialog::command() {
    const auto before = before_->value();
    core::actions::SplitPiece split{.piece = line_.piece().id, .at = workspace().now()};
    split.net_before = before;
    split.note = note_->text().trimmed().toStdString();
    Mass parts = Mass::grams(0);
    for (const auto& child : children_) {
        const auto net = child.net->value();
        if (!net) {
            child.net->validate();
            child.net->setFocus();
            return {};
        }
        parts += *net;
        core::actions::NewPiece piece;
        piece.piece = line_.piece();
        piece.piece.id = {};
        piece.piece.parent = line_.piece().id;
        piece.piece.code = child.code->text().trimmed().toStdString();
        core::model::Weighing weighing{
            .taken_at = split.at, .on_scale = *net, .tare = Mass::grams(0)};
        if (!line_.history.weighings.empty()) {
            weighing.state = line_.history.weighings.back().state;
            weighing.scale_step = line_.history.weighings.back().scale_step;
        }
        piece.weighings = {weighing};
        split.children.push_back(std::move(piece));
    }
    if (before && parts > *before) {
        say(QStringLiteral("stop"), tr("The parts weigh more than the whole. Check the weights, or "
                                       "the net weight before the cut."));
        return {};
    }
    return split;
}

MergeDialog::MergeDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                         QWidget* parent)
    : EntryDialog(workspace, "merge_dialog",
                  tr("Weigh %1 with others as one").arg(QString::fromStdString(line.piece().code)),
                  parent),
      line_(line) {
    others_ = look::named(new QListWidget, "merge_others", tr("Weighed together with"));
    core::services::PieceFilter filter;
    filter.batch = line.piece().batch;
    filter.states = {line.piece().state};
    for (const auto& piece : workspace.rows(workspace.book().pieces(filter))) {
        if (piece.id == line.piece().id) {
            continue;
        }
        auto* item = new QListWidgetItem(
            tr("%1 \u2013 %2")
                .arg(QString::fromStdString(piece.code), QString::fromStdString(piece.name)),
            others_);
        item->setCheckState(Qt::Unchecked);
        item->setData(Qt::UserRole, static_cast<qlonglong>(piece.id.row()));
    }
    others_->setFixedHeight(look::lines(this, 6));
    const auto codes = workspace.rows(workspace.book().free_piece_codes(1));
    code_ = look::named(new QLineEdit, "merge_code", tr("Code of the bundle"));
    code_->setText(codes.empty() ? QString() : QString::fromStdString(codes.front()));
    net_ =
        new edits::MassField("merge_on_scale", tr("All together on the scale"), workspace.style());
    net_->set_required(true);
    tare_ = new edits::MassField("merge_tare", tr("Tare"), workspace.style());
    tare_->set_value(line.tare);
    note_ = look::named(new QLineEdit, "merge_note", tr("Note"));
    add_row(tr("&Weighed together with"), others_);
    add_row(tr("&Code of the bundle"), code_);
    add_row(tr("&All together on the scale"), net_);
    add_row(tr("&Tare"), tare_);
    add_row(tr("&Note"), note_);
    preview_ = look::paragraph({});
    preview_->setObjectName(QStringLiteral("merge_preview"));
    below()->addWidget(look::section_title(tr("What changes")));
    below()->addWidget(preview_);
    connect(others_, &QListWidget::itemChanged, this, &MergeDialog::edited);
    MergeDialog::edited();
}

std::vector<core::model::PieceId> MergeDialog::marked() const {
    std::vector<core::model::PieceId> members{line_.piece().id};
    for (int row = 0; row < others_->count(); ++row) {
        if (others_->item(row)->checkState() == Qt::Checked) {
            members.push_back(core::model::PieceId::from_row(
                others_->item(row)->data(Qt::UserRole).toLongLong()));
        }
    }
    return members;
}

void MergeDialog::edited() {
    if (preview_ == nullptr) {
        return;
    }
    const auto on_scale = net_->value();
    const auto members = marked();
    if (!on_scale || members.size() < 2) {
        preview_->setText(others_->count() == 0
                              ? tr("No other piece of this batch is at the same stage: there is "
                                   "none to weigh it with.")
                              : tr("Mark the pieces and weigh them together; the new start and "
                                   "target then stand here."));
        return;
    }
    // The bundle as the book will have it, so that the numbers are those of its own page.
    core::services::PieceHistory bundle;
    bundle.piece = line_.piece();
    bundle.piece.id = {};
    bundle.piece.parent.reset();
    core::model::Weighing weighing{.taken_at = workspace().now(),
                                   .on_scale = *on_scale,
                                   .tare = tare_->value().value_or(Mass::grams(0))};
    if (!line_.history.weighings.empty()) {
        weighing.state = line_.history.weighings.back().state;
    }
    bundle.weighings = {weighing};
    bundle.events = {{.kind = core::model::EventKind::merged, .at = workspace().now()}};
    presenters::Kin kin;
    std::optional<Mass> apart = Mass::grams(0);
    for (const auto& member : members) {
        auto history = workspace().one(workspace().book().piece_history(member));
        if (!history) {
            return;
        }
        const auto one = presenters::line_in(workspace().book(), *history);
        apart = apart && one.net ? std::optional(*apart + *one.net) : std::nullopt;
        kin.members.push_back(std::move(*history));
    }
    const auto& style = workspace().style();
    const auto merged = presenters::line_of(std::move(bundle), std::move(kin));
    QStringList words;
    words << tr("Weighed apart: %1 net; together: %2 net")
                 .arg(text::words_or_unknown(apart, style),
                      text::words(*on_scale - weighing.tare, style));
    words << change_words(line_, merged, style);
    preview_->setText(words.join(QLatin1Char('\n')));
}

std::optional<core::actions::Command> MergeDialog::command() {
    core::actions::MergePieces merge{.at = workspace().now()};
    merge.members = marked();
    if (merge.members.size() < 2) {
        say(QStringLiteral("stop"), tr("Mark at least one other piece."));
        return {};
    }
    merge.into.piece = line_.piece();
    merge.into.piece.id = {};
    merge.into.piece.parent.reset();
    merge.into.piece.code = code_->text().trimmed().toStdString();
    merge.into.piece.count = static_cast<int>(merge.members.size());
    merge.note = note_->text().trimmed().toStdString();
    core::model::Weighing weighing{.taken_at = merge.at,
                                   .on_scale = *net_->value(),
                                   .tare = tare_->value().value_or(Mass::grams(0))};
    if (!line_.history.weighings.empty()) {
        weighing.state = line_.history.weighings.back().state;
    }
    merge.into.weighings = {weighing};
    return merge;
}

} // namespace ui::pages
