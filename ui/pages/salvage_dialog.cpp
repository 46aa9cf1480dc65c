#include "ui/pages/salvage_dialog.h"

#include "ui/look/fit.h"
#include "ui/look/pieces.h"
#include "ui/pages/table.h"
#include "ui/text/error_words.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

/// A name beside the damaged book that is not there yet.
QString free_name(const QString& damaged) {
    const QFileInfo file(damaged);
    for (int n = 1;; ++n) {
        QString name = file.path() + QLatin1Char('/') + file.completeBaseName() +
                       (n == 1 ? QStringLiteral("-salvaged.saltloft")
                               : QStringLiteral("-salvaged-%1.saltloft").arg(n));
        if (!QFileInfo::exists(name)) {
            return name;
        }
    }
}

} // namespace

SalvageDialog::SalvageDialog(std::string damaged, text::Style style, core::units::Instant now,
                             QWidget* parent)
    : QDialog(parent), damaged_(std::move(damaged)), style_(std::move(style)), now_(now),
      keeping_(new presenters::BookKeeping(this)) {
    look::named(this, "salvage_dialog", tr("Salvage into a new book"));
    setWindowTitle(tr("Salvage into a new book"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(look::paragraph(
        tr("Carries every entry of %1 that can still be read into a new book. The damaged book "
           "is not changed; keep it until you have looked through the new one.")
            .arg(QFileInfo(QString::fromStdString(damaged_)).fileName())));
    build_file(column);
    build_table(column);
    busy_ = look::named(new QProgressBar, "salvage_busy", tr("The book is being carried over"));
    busy_->setRange(0, 0);
    busy_->hide();
    column->addWidget(busy_);
    banner_ = new look::Banner("salvage_banner");
    column->addWidget(banner_);
    auto* buttons = new QHBoxLayout;
    close_ = look::button("salvage_close", tr("&Close"));
    start_ = look::button("salvage_start", tr("&Salvage"), look::ButtonLook::primary);
    open_ = look::button("salvage_open", tr("&Open the new book"), look::ButtonLook::primary);
    open_->hide();
    buttons->addStretch(1);
    buttons->addWidget(close_);
    buttons->addWidget(start_);
    buttons->addWidget(open_);
    column->addLayout(buttons);
    connect(close_, &QPushButton::clicked, this, &SalvageDialog::reject);
    connect(start_, &QPushButton::clicked, this, &SalvageDialog::start);
    connect(open_, &QPushButton::clicked, this, &QDialog::accept);
    connect(keeping_, &presenters::BookKeeping::salvage_ended, this, &SalvageDialog::show_report);
    look::resize_in_lines(this, 36, 26);
}

void SalvageDialog::build_file(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    file_ = look::named(new QLineEdit, "salvage_file", tr("The new book"));
    file_->setText(free_name(QString::fromStdString(damaged_)));
    choose_ = look::button("salvage_choose", tr("C&hoose…"));
    row->addWidget(look::field_label(tr("&New book"), file_));
    row->addWidget(file_, 1);
    row->addWidget(choose_);
    column->addLayout(row);
    connect(choose_, &QPushButton::clicked, this, &SalvageDialog::browse);
}

void SalvageDialog::build_table(QVBoxLayout* column) {
    using Line = presenters::SalvageLine;
    const auto style = style_;
    lines_ = new Lines(
        {{tr("Kind of entry"), [](const Line& l) { return l.kind; }, {}, false, {}, {}},
         {tr("Carried over"),
          [style](const Line& l) { return presenters::number_words(l.kept, style); },
          [](const Line& l) { return QVariant(qlonglong{l.kept}); },
          true,
          {},
          {}},
         {tr("Known to be lost"),
          [style](const Line& l) { return presenters::number_words(l.lost, style); },
          [](const Line& l) { return QVariant(qlonglong{l.lost}); },
          true,
          {},
          [](const Line& l) { return l.lost > 0; }}},
        [this](const Line& l) {
            for (std::size_t i = 0; i < lines_->rows().size(); ++i) {
                if (lines_->rows()[i].kind == l.kind) {
                    return static_cast<qint64>(i) + 1;
                }
            }
            return qint64{0};
        },
        this);
    table_ = new Table("salvage_lines", tr("What was carried over"));
    table_->show_model(lines_);
    table_->set_filling_column(0);
    column->addWidget(table_, 1);
}

QString SalvageDialog::target() const {
    return file_->text().trimmed();
}

void SalvageDialog::browse() {
    const QString path = QFileDialog::getSaveFileName(this, tr("New book"), target(),
                                                      tr("Saltloft books (*.saltloft)"));
    if (!path.isEmpty()) {
        file_->setText(path);
    }
}

void SalvageDialog::start() {
    QString path = target();
    if (path.isEmpty()) {
        banner_->say(QStringLiteral("stop"), tr("Name the file of the new book."));
        file_->setFocus();
        return;
    }
    if (!path.endsWith(QLatin1String(".saltloft"))) {
        path += QLatin1String(".saltloft");
    }
    file_->setText(path);
    if (QFileInfo::exists(path)) {
        banner_->say(QStringLiteral("stop"),
                     tr("%1 is there already and is not replaced. Choose another name.").arg(path));
        file_->setFocus();
        return;
    }
    for (QWidget* widget : {static_cast<QWidget*>(file_), static_cast<QWidget*>(choose_),
                            static_cast<QWidget*>(start_), static_cast<QWidget*>(close_)}) {
        widget->setEnabled(false);
    }
    banner_->say({}, {});
    busy_->show();
    keeping_->salvage(damaged_, path.toStdString(), now_);
}

void SalvageDialog::show_report() {
    busy_->hide();
    close_->setEnabled(true);
    const auto& report = *keeping_->salvaged();
    if (!report) {
        banner_->say(
            QStringLiteral("stop"),
            tr("Nothing could be carried over. %1").arg(text::error_words(report.error())));
        for (QWidget* widget : {static_cast<QWidget*>(file_), static_cast<QWidget*>(choose_),
                                static_cast<QWidget*>(start_)}) {
            widget->setEnabled(true);
        }
        return;
    }
    lines_->set_rows(presenters::salvage_lines(*report));
    banner_->say(core::services::lost_rows(*report) == 0 ? QStringLiteral("done")
                                                         : QStringLiteral("caution"),
                 presenters::salvage_words(*report, style_));
    start_->hide();
    open_->show();
    open_->setFocus();
}

void SalvageDialog::reject() {
    // A salvage is not broken off: its file is only there once it is whole.
    if (!keeping_->is_busy()) {
        QDialog::reject();
    }
}

} // namespace ui::pages
