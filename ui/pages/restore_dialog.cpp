#include "ui/pages/restore_dialog.h"

#include "ui/look/fit.h"
#include "ui/look/pieces.h"
#include "ui/pages/table.h"
#include "ui/presenters/keeping_words.h"
#include "ui/text/error_words.h"
#include "ui/text/quantity_words.h"

#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMessageBox>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

QFileInfo file_of(const core::services::BookSummary& summary) {
    return QFileInfo(QString::fromStdString(summary.path));
}

/// Nothing is known of a backup that could not be looked into.
bool is_read(const core::services::BookSummary& summary) {
    return summary.schema_version > 0;
}

} // namespace

RestoreDialog::RestoreDialog(std::string book, text::Style style, QWidget* parent)
    : QDialog(parent), book_(std::move(book)), style_(std::move(style)),
      keeping_(new presenters::BookKeeping(this)) {
    look::named(this, "restore_dialog", tr("Restore a backup"));
    setWindowTitle(tr("Restore a backup"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(look::paragraph(
        tr("Puts an earlier copy in the place of the book %1. Choose a copy to see what would be "
           "lost and what would come back; nothing is changed before you confirm.")
            .arg(QFileInfo(QString::fromStdString(book_)).fileName())));
    build_table(column);
    busy_ = look::named(new QProgressBar, "restore_busy", tr("The backup is being read"));
    busy_->setRange(0, 0);
    busy_->hide();
    column->addWidget(busy_);
    banner_ = new look::Banner("restore_banner");
    column->addWidget(banner_);
    auto* buttons = new QHBoxLayout;
    auto* other = look::button("restore_other", tr("Another &file…"));
    auto* cancel = look::button("restore_cancel", tr("Cancel"));
    restore_ =
        look::button("restore_start", tr("&Restore this backup…"), look::ButtonLook::primary);
    restore_->setEnabled(false);
    buttons->addWidget(other);
    buttons->addStretch(1);
    buttons->addWidget(cancel);
    buttons->addWidget(restore_);
    column->addLayout(buttons);
    connect(other, &QPushButton::clicked, this, &RestoreDialog::browse);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(restore_, &QPushButton::clicked, this, &RestoreDialog::accept);
    connect(keeping_, &presenters::BookKeeping::preview_ended, this, &RestoreDialog::show_preview);
    look::resize_in_lines(this, 60, 30);
    fill();
}

std::vector<RestoreDialog::Rows::Column> RestoreDialog::columns() const {
    using Summary = core::services::BookSummary;
    const auto style = style_;
    const auto count = [style](const QString& header, std::int64_t Summary::*member) {
        return Rows::Column{
            header,
            [style, member](const Row& r) {
                return is_read(r.summary) ? presenters::number_words(r.summary.*member, style)
                                          : text::unknown();
            },
            [member](const Row& r) { return QVariant(qlonglong{r.summary.*member}); },
            true,
            {},
            {}};
    };
    const auto made = [](const Row& r) { return file_of(r.summary).lastModified(); };
    return {{tr("Made"),
             [style, made](const Row& r) {
                 return presenters::moment_words(
                     core::units::Instant::from_unix_seconds(made(r).toSecsSinceEpoch()), style);
             },
             [made](const Row& r) { return QVariant(made(r)); },
             false,
             {},
             {}},
            {tr("Last entry"),
             [style](const Row& r) {
                 return r.summary.last_change
                            ? presenters::moment_words(*r.summary.last_change, style)
                            : text::unknown();
             },
             [](const Row& r) {
                 return QVariant(
                     r.summary.last_change ? qlonglong{r.summary.last_change->unix_seconds()} : 0);
             },
             false,
             {},
             {}},
            count(tr("Batches"), &Summary::batches),
            count(tr("Pieces"), &Summary::pieces),
            count(tr("Weighings"), &Summary::weighings),
            {tr("Size"),
             [style](const Row& r) {
                 return style.locale.formattedDataSize(file_of(r.summary).size());
             },
             [](const Row& r) { return QVariant(file_of(r.summary).size()); },
             true,
             {},
             {}},
            {tr("File"),
             [](const Row& r) { return file_of(r.summary).fileName(); },
             {},
             false,
             [](const Row& r) { return file_of(r.summary).filePath(); },
             {}}};
}

void RestoreDialog::build_table(QVBoxLayout* column) {
    rows_ = new Rows(
        columns(), [](const Row& r) { return r.id; }, this);
    table_ = new Table("restore_backups", tr("Backups of this book"));
    table_->show_model(rows_);
    column->addWidget(table_, 1);
    connect(table_, &Table::current_changed, this, &RestoreDialog::look_at);
}

void RestoreDialog::fill() {
    const auto found = core::services::backups_of(book_);
    if (!found) {
        banner_->say(QStringLiteral("caution"), text::error_words(found.error()));
        return;
    }
    std::vector<Row> rows;
    for (const auto& summary : *found) {
        rows.push_back({summary, static_cast<qint64>(rows.size()) + 1});
    }
    if (rows.empty()) {
        banner_->say(QStringLiteral("note"),
                     tr("There is no backup in the folder “backups” beside the book. Choose a copy "
                        "you keep elsewhere with Another file."));
    }
    rows_->set_rows(std::move(rows));
}

void RestoreDialog::browse() {
    const QString path = QFileDialog::getOpenFileName(
        this, tr("Backup"), QFileInfo(QString::fromStdString(book_)).path(),
        tr("Saltloft books (*.saltloft);;All files (*)"));
    if (!path.isEmpty()) {
        add_file(path);
    }
}

void RestoreDialog::add_file(const QString& path) {
    auto rows = rows_->rows();
    const auto id = static_cast<qint64>(rows.size()) + 1;
    rows.push_back({{.path = path.toStdString()}, id});
    rows_->set_rows(std::move(rows));
    table_->set_current_id(id);
    look_at(id);
}

void RestoreDialog::look_at(qint64 id) {
    const int row = rows_->row_of(id);
    if (row < 0 || (rows_->row(row).summary.path == backup_ && keeping_->is_busy())) {
        return;
    }
    backup_ = rows_->row(row).summary.path;
    restore_->setEnabled(false);
    banner_->say({}, {});
    busy_->show();
    keeping_->preview(book_, backup_);
}

void RestoreDialog::show_preview() {
    busy_->hide();
    const auto& preview = *keeping_->previewed();
    if (!preview) {
        banner_->say(QStringLiteral("stop"), text::error_words(preview.error()));
        return;
    }
    // What is known now belongs into the list, too: a file from elsewhere came with its name only.
    for (std::size_t i = 0; i < rows_->rows().size(); ++i) {
        if (Row row = rows_->rows()[i]; row.summary.path == preview->backup.path) {
            row.summary = preview->backup;
            rows_->set_row(static_cast<int>(i), std::move(row));
        }
    }
    table_->fit_columns();
    const bool good = presenters::may_restore(*preview);
    const bool loses = preview->steps_lost > 0 || preview->current.schema_version == 0;
    banner_->say(!good   ? QStringLiteral("stop")
                 : loses ? QStringLiteral("caution")
                         : QStringLiteral("note"),
                 presenters::restore_words(*preview, style_));
    restore_->setEnabled(good);
}

void RestoreDialog::accept() {
    if (!restore_->isEnabled()) {
        return;
    }
    QMessageBox sure(QMessageBox::Question, tr("Restore a backup"),
                     tr("Put this backup in the place of the book?"), QMessageBox::NoButton, this);
    sure.setObjectName(QStringLiteral("restore_sure"));
    sure.setInformativeText(presenters::restore_words(*keeping_->previewed().value(), style_));
    auto* yes = sure.addButton(tr("Restore"), QMessageBox::AcceptRole);
    look::named(yes, "restore_yes", tr("Restore"));
    auto* no = sure.addButton(tr("Cancel"), QMessageBox::RejectRole);
    look::named(no, "restore_no", tr("Cancel"));
    sure.setDefaultButton(no);
    sure.exec();
    if (sure.clickedButton() == yes) {
        QDialog::accept();
    }
}

} // namespace ui::pages
