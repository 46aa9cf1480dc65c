#include "ui/pages/print_dialog.h"

#include "ui/look/fit.h"
#include "ui/look/pieces.h"
#include "ui/presenters/workspace.h"
#include "ui/text/error_words.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPrinterInfo>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {

PrintDialog::PrintDialog(presenters::Workspace& workspace, std::vector<print::Printable> printables,
                         QWidget* parent)
    : QDialog(parent), workspace_(workspace), printables_(std::move(printables)),
      printer_(std::make_unique<QPrinter>(QPrinter::HighResolution)) {
    look::named(this, "print_dialog", tr("Print"));
    setWindowTitle(tr("Print"));
    look::resize_in_lines(this, 46, 34);
    auto* row = new QHBoxLayout(this);
    preview_ = look::named(new QPrintPreviewWidget(printer_.get(), this), "print_preview",
                           tr("Preview of the paper"));
    connect(preview_, &QPrintPreviewWidget::paintRequested, this, [this](QPrinter* printer) {
        if (paper_) {
            print::print_paper(*paper_, *printer, stamp(), workspace_.style());
        }
    });
    row->addWidget(build_list(), 1);
    row->addWidget(preview_, 3);
    for (const auto& printable : printables_) {
        list_->addItem(printable.title);
    }
    connect(list_, &QListWidget::currentRowChanged, this, &PrintDialog::choose);
    list_->setCurrentRow(0);
    list_->setFocus();
}

PrintDialog::~PrintDialog() {
    delete preview_; // it paints on the printer, which goes first otherwise
}

QWidget* PrintDialog::build_list() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(look::section_title(tr("What to print")));
    list_ = look::named(new QListWidget, "print_list", tr("What to print"));
    list_->setWordWrap(true);
    column->addWidget(list_, 1);
    said_ = look::paragraph({});
    said_->setObjectName(QStringLiteral("print_said"));
    column->addWidget(said_);
    save_ = look::button("print_save", tr("&Save as PDF…"));
    print_ = look::button("print_print", tr("&Print…"), look::ButtonLook::primary);
    auto* close = look::button("print_close", tr("&Close"));
    const bool printers = !QPrinterInfo::availablePrinterNames().isEmpty();
    print_->setEnabled(printers);
    if (!printers) {
        said_->setText(
            tr("No printer is set up on this computer; a PDF can be printed elsewhere."));
    }
    for (auto* button : {print_, save_, close}) {
        column->addWidget(button);
    }
    connect(save_, &QPushButton::clicked, this, &PrintDialog::save);
    connect(print_, &QPushButton::clicked, this, &PrintDialog::print);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    return side;
}

print::PrintStamp PrintDialog::stamp() const {
    return {workspace_.now(), QStringLiteral("saltloft " SALTLOFT_VERSION)};
}

void PrintDialog::choose(int row) {
    if (row < 0 || row >= static_cast<int>(printables_.size())) {
        return;
    }
    paper_.reset();
    auto made = printables_[static_cast<std::size_t>(row)].make();
    if (made) {
        paper_ = *std::move(made);
        printer_->setPageLayout(print::layout_of(*paper_, workspace_.style()));
    } else {
        said_->setText(text::error_words(made.error()));
    }
    save_->setEnabled(paper_.has_value());
    preview_->updatePreview();
    preview_->fitInView();
}

void PrintDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    preview_->fitInView(); // the sizes before the first showing mean nothing
}

int PrintDialog::pages() const {
    return preview_->pageCount();
}

QString PrintDialog::save_as(const QString& path) {
    if (!paper_) {
        return {};
    }
    const auto pages = print::write_paper(*paper_, path, stamp(), workspace_.style());
    QString sentence = !pages        ? text::error_words(pages.error())
                       : *pages == 0 ? tr("There is nothing to print.")
                                     : tr("%n page(s) in %1.", nullptr, *pages).arg(path);
    said_->setText(sentence);
    return sentence;
}

void PrintDialog::save() {
    const auto row = static_cast<std::size_t>(list_->currentRow());
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save as PDF"), printables_[row].file_name + QStringLiteral(".pdf"),
        tr("PDF (*.pdf)"));
    if (!path.isEmpty()) {
        save_as(path);
    }
}

void PrintDialog::print() {
    QPrintDialog dialog(printer_.get(), this);
    if (paper_ && dialog.exec() == QDialog::Accepted) {
        const int pages = print::print_paper(*paper_, *printer_, stamp(), workspace_.style());
        said_->setText(pages > 0 ? tr("%n page(s) sent to the printer.", nullptr, pages)
                                 : tr("The printer took nothing. Try a PDF instead."));
    }
}

} // namespace ui::pages
