#include "ui/print/qr_code.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <memory>
#include <qrencode.h>

namespace ui::print {

std::optional<QrCode> qr_code(const std::string& text) {
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> made(
        text.empty() ? nullptr : QRcode_encodeString(text.c_str(), 0, QR_ECLEVEL_Q, QR_MODE_8, 1),
        &QRcode_free);
    if (!made) {
        return {};
    }
    QrCode code;
    code.size = made->width;
    const auto modules =
        static_cast<std::size_t>(made->width) * static_cast<std::size_t>(made->width);
    code.dark.reserve(modules);
    for (std::size_t i = 0; i < modules; ++i) {
        code.dark.push_back((made->data[i] & 1U) != 0);
    }
    return code;
}

void paint(const QrCode& code, QPainter& painter, const QRectF& area) {
    constexpr int quiet_zone = 4;
    const double side = std::min(area.width(), area.height());
    double module = side / (code.size + 2 * quiet_zone);
    if (module >= 1) {
        module = std::floor(module);
    }
    const double whole = module * (code.size + 2 * quiet_zone);
    const QPointF corner(std::round(area.center().x() - whole / 2),
                         std::round(area.center().y() - whole / 2));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::white);
    painter.drawRect(QRectF(corner, QSizeF(whole, whole)));
    painter.setBrush(Qt::black);
    for (int row = 0; row < code.size; ++row) {
        // One rectangle a run of dark modules: neighbours painted apart show hairlines in viewers.
        for (int column = 0; column < code.size; ++column) {
            int run = 0;
            while (column + run < code.size && code.is_dark(row, column + run)) {
                ++run;
            }
            if (run > 0) {
                painter.drawRect(QRectF(corner.x() + (quiet_zone + column) * module,
                                        corner.y() + (quiet_zone + row) * module, run * module,
                                        module));
                column += run;
            }
        }
    }
    painter.restore();
}

} // namespace ui::print
