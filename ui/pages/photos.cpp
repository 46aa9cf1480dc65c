#include "ui/pages/photos.h"

#include "ui/look/fit.h"
#include "ui/look/pieces.h"
#include "ui/look/theme.h"
#include "ui/presenters/workspace.h"
#include "ui/text/date_words.h"
#include "ui/text/model_words.h"

#include <QBuffer>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QImageReader>
#include <QKeyEvent>
#include <QPainter>
#include <QSaveFile>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

/// The picture of a file's bytes, the right way up, no larger than `most`; null when it cannot be
/// read.
QImage picture_of(const std::vector<unsigned char>& bytes, QSize most) {
    QByteArray data(reinterpret_cast<const char*>(bytes.data()), // a byte is a byte
                    static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&data);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && (size.width() > most.width() || size.height() > most.height())) {
        // A photo of a phone is decoded small at once: it would fill the memory otherwise.
        reader.setScaledSize(size.scaled(most, Qt::KeepAspectRatio));
    }
    return reader.read();
}

QString name_of(const core::model::Note& note) {
    return QString::fromStdString(note.photo_name);
}

QString missing_words(const core::model::Note& note, bool there) {
    return there ? PhotoStrip::tr("The photo %1 cannot be shown: it is damaged, or of a kind that "
                                  "cannot be read here. Save a copy to try it elsewhere.")
                       .arg(name_of(note))
                 : PhotoStrip::tr("The photo %1 is no longer in the book. The note itself is kept.")
                       .arg(name_of(note));
}

/// A ground with a mark where a picture should be, so that the gap is seen.
QPixmap blank(QSize size, const QWidget* widget) {
    QPixmap pixmap(size);
    pixmap.fill(look::tokens().sunk);
    QPainter painter(&pixmap);
    painter.setPen(look::tokens().text);
    painter.setFont(widget->font());
    painter.drawRect(0, 0, size.width() - 1, size.height() - 1);
    painter.drawText(pixmap.rect(), Qt::AlignCenter, QStringLiteral("?"));
    return pixmap;
}

} // namespace

std::vector<core::model::Note> with_photos(std::vector<core::model::Note> notes) {
    std::erase_if(notes, [](const auto& note) { return note.photo_name.empty(); });
    return notes;
}

PhotoStrip::PhotoStrip(presenters::Workspace& workspace, const char* object_name, QWidget* parent)
    : QListWidget(parent), workspace_(workspace) {
    look::named(this, object_name, tr("Photos"));
    const int side = look::lines(this, 5);
    setViewMode(QListView::IconMode);
    setMovement(QListView::Static);
    setResizeMode(QListView::Adjust);
    setIconSize({side, side});
    setSpacing(look::lines(this, 0.2));
    setWordWrap(true);
    setMinimumHeight(side + look::lines(this, 2.6));
    const auto open = [this](const QListWidgetItem* item) {
        open_note(item->data(Qt::UserRole).toLongLong());
    };
    connect(this, &QListWidget::itemActivated, this, open);
    connect(this, &QListWidget::itemClicked, this, open);
}

void PhotoStrip::show_notes(std::vector<core::model::Note> notes) {
    notes = with_photos(std::move(notes));
    const auto same = [](const auto& a, const auto& b) { return a.id == b.id; };
    if (std::equal(notes.begin(), notes.end(), notes_.begin(), notes_.end(), same)) {
        return;
    }
    notes_ = std::move(notes);
    clear();
    for (const auto& note : notes_) {
        const auto bytes = workspace_.book().photo(note.id);
        const QImage image = bytes ? picture_of(*bytes, iconSize()) : QImage();
        const QString day =
            text::short_words(workspace_.style().zone.day_of(note.at), workspace_.style());
        auto* item = new QListWidgetItem(
            image.isNull() ? QIcon(blank(iconSize(), this)) : QIcon(QPixmap::fromImage(image)),
            image.isNull() ? tr("%1: not readable").arg(day) : day, this);
        item->setData(Qt::UserRole, static_cast<qlonglong>(note.id.row()));
        QString words = tr("Photo of %1, %2").arg(day, text::words(note.kind));
        if (!note.text.empty()) {
            words += QStringLiteral(": ") + QString::fromStdString(note.text);
        }
        if (image.isNull()) {
            words += QLatin1Char('\n') + missing_words(note, bytes && !bytes->empty());
        }
        item->setData(Qt::AccessibleTextRole, words);
        item->setToolTip(words);
    }
    if (count() > 0) {
        setCurrentRow(0);
    }
}

bool PhotoStrip::open_note(qint64 note) {
    for (std::size_t i = 0; i < notes_.size(); ++i) {
        if (notes_[i].id.row() == note) {
            setCurrentRow(static_cast<int>(i));
            PhotoDialog(workspace_, notes_, static_cast<int>(i), this).exec();
            return true;
        }
    }
    return false;
}

PhotoView::PhotoView(QWidget* parent) : QWidget(parent) {
    setMinimumSize(look::lines(this, 16), look::lines(this, 10));
}

void PhotoView::show_image(QImage image) {
    image_ = std::move(image);
    update();
}

void PhotoView::paintEvent(QPaintEvent* /*event*/) {
    if (image_.isNull()) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    QSize size = image_.size();
    if (size.width() > width() || size.height() > height()) {
        size.scale(this->size(), Qt::KeepAspectRatio);
    }
    const QRect place(QPoint((width() - size.width()) / 2, (height() - size.height()) / 2), size);
    painter.drawImage(place, image_);
}

PhotoDialog::PhotoDialog(presenters::Workspace& workspace, std::vector<core::model::Note> notes,
                         int index, QWidget* parent)
    : QDialog(parent), workspace_(workspace), notes_(std::move(notes)) {
    look::named(this, "photo_dialog", tr("Photo"));
    auto* column = new QVBoxLayout(this);
    view_ = look::named(new PhotoView(this), "photo_view", tr("Photo"));
    column->addWidget(view_, 1);
    wrong_ = new look::Banner("photo_wrong", this);
    column->addWidget(wrong_);
    words_ = look::paragraph({});
    words_->setObjectName(QStringLiteral("photo_words"));
    column->addWidget(words_);
    auto* row = new QHBoxLayout;
    before_ = look::button("photo_before", tr("&Previous"));
    after_ = look::button("photo_after", tr("&Next"));
    save_ = look::button("photo_save", tr("&Save a copy…"));
    auto* close = look::button("photo_close", tr("&Close"), look::ButtonLook::primary);
    row->addWidget(before_);
    row->addWidget(after_);
    row->addStretch(1);
    row->addWidget(save_);
    row->addWidget(close);
    column->addLayout(row);
    connect(before_, &QPushButton::clicked, this, [this] { show_photo(index_ - 1); });
    connect(after_, &QPushButton::clicked, this, [this] { show_photo(index_ + 1); });
    connect(save_, &QPushButton::clicked, this, &PhotoDialog::save_copy);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    for (auto* button : {before_, after_, save_, close}) {
        button->installEventFilter(this);
    }
    close->setDefault(true);
    close->setFocus();
    look::resize_in_lines(this, 44, 34);
    show_photo(index);
}

/// A button with the focus would take the arrows to walk to its neighbour.
bool PhotoDialog::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && step(static_cast<QKeyEvent*>(event)->key())) {
        return true;
    }
    return QDialog::eventFilter(watched, event);
}

void PhotoDialog::keyPressEvent(QKeyEvent* event) {
    if (!step(event->key())) {
        QDialog::keyPressEvent(event);
    }
}

bool PhotoDialog::step(int key) {
    if (key != Qt::Key_Left && key != Qt::Key_Right) {
        return false;
    }
    show_photo(index_ + (key == Qt::Key_Right ? 1 : -1));
    return true;
}

void PhotoDialog::show_photo(int index) {
    const int count = static_cast<int>(notes_.size());
    if (index < 0 || index >= count) {
        return;
    }
    index_ = index;
    const auto& note = notes_[static_cast<std::size_t>(index)];
    auto bytes = workspace_.one(workspace_.book().photo(note.id));
    bytes_ = bytes ? std::move(*bytes) : std::vector<unsigned char>();
    constexpr QSize screen(3840, 2160); // more than a screen shows is not decoded
    view_->show_image(picture_of(bytes_, screen));
    wrong_->say(view_->is_empty() ? QStringLiteral("caution") : QString(),
                view_->is_empty() ? missing_words(note, !bytes_.empty()) : QString());
    const QString words =
        tr("%1 of %2 · %3 · %4 · %5")
            .arg(index + 1)
            .arg(count)
            .arg(text::words(note.at, workspace_.style()), text::words(note.kind), name_of(note));
    words_->setText(
        note.text.empty() ? words : words + QLatin1Char('\n') + QString::fromStdString(note.text));
    view_->setAccessibleDescription(words_->text());
    setWindowTitle(tr("Photo %1").arg(name_of(note)));
    before_->setEnabled(index > 0);
    after_->setEnabled(index + 1 < count);
    save_->setEnabled(!bytes_.empty());
}

void PhotoDialog::save_copy() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save a copy of the photo"), name_of(notes_[static_cast<std::size_t>(index_)]));
    if (path.isEmpty()) {
        return;
    }
    QSaveFile file(path);
    const auto size = static_cast<qint64>(bytes_.size());
    const bool written = file.open(QIODevice::WriteOnly) &&
                         file.write(reinterpret_cast<const char*>(bytes_.data()), size) == size &&
                         file.commit();
    wrong_->say(written ? QStringLiteral("done") : QStringLiteral("stop"),
                written ? tr("The copy is in %1.").arg(path)
                        : tr("%1 could not be written. Choose another place.").arg(path));
}

} // namespace ui::pages
