#include "tests/support/ui/translation_file.h"

#include <QFile>
#include <QXmlStreamReader>

#include <stdexcept>

namespace test_support {
namespace {

Translation read_message(QXmlStreamReader& xml, const QString& context) {
    Translation message{.context = context};
    message.counted = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("source")) {
            message.source = xml.readElementText();
        } else if (xml.name() == QLatin1String("comment")) {
            message.comment = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation")) {
            message.finished = !xml.attributes().hasAttribute(QLatin1String("type"));
            if (!message.counted) {
                message.texts << xml.readElementText();
                continue;
            }
            while (xml.readNextStartElement()) {
                message.texts << xml.readElementText();
            }
        } else {
            xml.skipCurrentElement();
        }
    }
    return message;
}

} // namespace

std::vector<Translation> read_translations(const QString& file) {
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly)) {
        throw std::runtime_error(file.toStdString() + " is not there");
    }
    std::vector<Translation> all;
    QXmlStreamReader xml(&in);
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (xml.name() == QLatin1String("message")) {
            all.push_back(read_message(xml, context));
        }
    }
    if (xml.hasError() || all.empty()) {
        throw std::runtime_error(file.toStdString() + ": " + xml.errorString().toStdString());
    }
    return all;
}

QString language_file(const QString& code) {
    return QStringLiteral(SALTLOFT_SOURCE_DIR "/resources/languages/saltloft_%1.ts").arg(code);
}

} // namespace test_support
