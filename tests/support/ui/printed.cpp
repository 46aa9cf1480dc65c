#include "tests/support/ui/printed.h"

#include <QDir>
#include <QFileInfo>
#include <QProcess>
#include <QStandardPaths>
#include <stdexcept>

namespace test_support {
namespace {

QByteArray run(const QString& program, const QStringList& arguments, int also_fine = 0) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForStarted() || !process.waitForFinished(120'000)) {
        throw std::runtime_error(program.toStdString() + " did not run: install the packages of "
                                                         "packaging/packages.txt");
    }
    if (process.exitCode() != 0 && process.exitCode() != also_fine) {
        throw std::runtime_error(program.toStdString() + ": " +
                                 process.readAllStandardError().toStdString());
    }
    return process.readAllStandardOutput();
}

} // namespace

QString pdf_text(const QString& pdf) {
    return QString::fromUtf8(run(QStringLiteral("pdftotext"),
                                 {QStringLiteral("-layout"), pdf, QStringLiteral("-")}))
        // Fonts with ligatures give "fi" back as one character.
        .normalized(QString::NormalizationForm_KC)
        .simplified();
}

QStringList pdf_pages(const QString& pdf, const QString& folder, int dots_per_inch) {
    const QString stem = QFileInfo(pdf).completeBaseName();
    run(QStringLiteral("pdftoppm"),
        {QStringLiteral("-png"), QStringLiteral("-r"), QString::number(dots_per_inch), pdf,
         folder + QLatin1Char('/') + stem});
    QStringList pages;
    for (const QFileInfo& page :
         QDir(folder).entryInfoList({stem + QStringLiteral("-*.png")}, QDir::Files, QDir::Name)) {
        pages.append(page.filePath());
    }
    return pages;
}

QStringList codes_on(const QString& picture) {
    constexpr int nothing_found = 4; // zbarimg's own exit code
    const QString out = QString::fromUtf8(
        run(QStringLiteral("zbarimg"),
            {QStringLiteral("--quiet"), QStringLiteral("--raw"), picture}, nothing_found));
    QStringList codes = out.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    codes.sort();
    return codes;
}

} // namespace test_support
