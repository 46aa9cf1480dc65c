#include "ui/look/pieces.h"

#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <gtest/gtest.h>
#include <memory>

namespace {

int ink(QLabel* label, QSize size) {
    label->resize(size);
    const QImage image = label->grab().toImage();
    const QRgb ground = image.pixel(image.width() - 1, 0);
    int dark = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            dark += image.pixel(x, y) != ground ? 1 : 0;
        }
    }
    return dark;
}

} // namespace

// "T" and "e" stand closer than their widths say, but not when one of them is underlined.
TEST(Pieces, AFieldsLabelShowsItsLastLetterWhole) {
    QLineEdit field;
    for (const char* text : {"&Temperatures from", "&Target, loss", "Humidity", "&Yield, VAT"}) {
        std::unique_ptr<QLabel> label(
            ui::look::field_label(QString::fromLatin1(text), &field, nullptr));
        label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        label->ensurePolished();
        const QSize asked = label->sizeHint();
        EXPECT_EQ(ink(label.get(), asked), ink(label.get(), asked + QSize(40, 0))) << text;
        EXPECT_GT(ink(label.get(), asked), 20) << text;
    }
}
