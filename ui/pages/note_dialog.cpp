#include "ui/pages/note_dialog.h"

#include "ui/presenters/workspace.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QImageReader>
#include <QLabel>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

constexpr qint64 largest_photo =
    qint64{12} * 1024 * 1024; // a phone's photo; the book should stay small

} // namespace

NoteDialog::NoteDialog(presenters::Workspace& workspace, std::optional<core::model::PieceId> piece,
                       std::optional<core::model::BatchId> batch, QWidget* parent)
    : EntryDialog(workspace, "note_dialog", tr("Add a note"), parent), note_{.at =
                                                                                 workspace.now()} {
    note_.piece = piece;
    note_.batch = batch;
    kind_ = new edits::ChoiceBox<core::model::NoteKind>("note_kind", tr("About"));
    text_ = look::named(new QPlainTextEdit, "note_text", tr("Note"));
    text_->setTabChangesFocus(true);
    text_->setFixedHeight(look::lines(this, 6));
    add_row(tr("&About"), kind_);
    add_row(tr("&Note"), text_);
    auto* row = new QHBoxLayout;
    auto* choose = look::button("note_photo", tr("Add a &photo…"));
    photo_ = look::caption({});
    row->addWidget(choose);
    row->addWidget(photo_, 1);
    below()->addLayout(row);
    connect(choose, &QPushButton::clicked, this, &NoteDialog::choose_photo);
}

void NoteDialog::choose_photo() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Add a photo"), {},
                                                      tr("Pictures (*.jpg *.jpeg *.png)"));
    if (!path.isEmpty()) {
        add_photo(path);
    }
}

bool NoteDialog::add_photo(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > largest_photo) {
        say(QStringLiteral("stop"),
            tr("This photo cannot be read or is larger than 12 MB. Choose a smaller copy."));
        return false;
    }
    if (!QImageReader(path).canRead()) {
        say(QStringLiteral("stop"),
            tr("%1 is not a picture that can be shown. Choose a JPEG or PNG file.")
                .arg(QFileInfo(path).fileName()));
        return false;
    }
    const QByteArray bytes = file.readAll();
    note_.photo.assign(bytes.begin(), bytes.end());
    note_.photo_name = QFileInfo(path).fileName().toStdString();
    photo_->setText(QString::fromStdString(note_.photo_name));
    say({}, {});
    return true;
}

std::optional<core::actions::Command> NoteDialog::command() {
    note_.kind = kind_->value();
    note_.text = text_->toPlainText().trimmed().toStdString();
    if (note_.text.empty() && note_.photo.empty()) {
        say(QStringLiteral("stop"), tr("Write a few words or add a photo."));
        text_->setFocus();
        return {};
    }
    return core::actions::AddNote{note_};
}

} // namespace ui::pages
