#include "ui/text/data_name.h"

#include <QCoreApplication>

namespace ui::text {
namespace {

// lupdate reads the list as sources of the context "Data".
constexpr const char* names[] = {
#include "ui/text/data_names.inc"
};

// Words that the core puts into findings as text; they stand in the middle of a sentence.
[[maybe_unused]] constexpr const char* words_of_findings[] = {
    QT_TRANSLATE_NOOP("Data", "nitrite"),
    QT_TRANSLATE_NOOP("Data", "nitrate"),
    QT_TRANSLATE_NOOP("Data", "temperature"),
    QT_TRANSLATE_NOOP("Data", "humidity"),
};

} // namespace

QString data_name(const QString& english) {
    // An empty source would be answered with the file's own header.
    return english.isEmpty() ? QString()
                             : QCoreApplication::translate("Data", english.toUtf8().constData());
}

QString data_name(const std::string& english) {
    return english.empty() ? QString() : QCoreApplication::translate("Data", english.c_str());
}

std::span<const char* const> data_names() {
    return names;
}

} // namespace ui::text
