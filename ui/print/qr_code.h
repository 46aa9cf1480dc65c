#pragma once

#include <QRectF>
#include <optional>
#include <string>
#include <vector>

class QPainter;

namespace ui::print {

/// A QR code (ISO/IEC 18004) as a square of dark and light modules, without its quiet zone.
struct QrCode {
    int size = 0;           ///< modules a side
    std::vector<bool> dark; ///< row by row
    [[nodiscard]] bool is_dark(int row, int column) const {
        return dark[static_cast<std::size_t>(row) * static_cast<std::size_t>(size) +
                    static_cast<std::size_t>(column)];
    }
};

/// The smallest code that holds `text` with error correction level Q: a quarter of it may be
/// under grease. Absent when the text is empty or too long for any code.
std::optional<QrCode> qr_code(const std::string& text);

/// Paints the code black on white into the largest square in `area`, with the quiet zone of four
/// modules that the standard asks for. Modules are whole device pixels where there are enough, so
/// that no scanner meets grey edges.
void paint(const QrCode& code, QPainter& painter, const QRectF& area);

} // namespace ui::print
