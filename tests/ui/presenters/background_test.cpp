#include "ui/presenters/background.h"

#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <QSemaphore>
#include <atomic>
#include <gtest/gtest.h>
#include <vector>

using ui::presenters::background_pool;
using ui::presenters::in_background;

TEST(Background, ComputesElsewhereAndHandsTheAnswerOver) {
    std::atomic<QThread*> where = nullptr;
    auto future = in_background([&] {
        where = QThread::currentThread();
        return 41 + 1;
    });
    while (!future.isFinished()) { // result() might run it here if it has not begun
        QThread::msleep(1);
    }
    EXPECT_EQ(future.result(), 42);
    EXPECT_NE(where, QThread::currentThread());
}

// Qt blends large areas on its own pool and waits for them. Work of ours there would hold the
// window for as long as it takes.
TEST(Background, PaintingDoesNotWaitForIt) {
    QSemaphore let_go;
    std::atomic<int> gave_up = 0;
    std::vector<QFuture<void>> all;
    for (int i = 0; i < background_pool().maxThreadCount(); ++i) {
        all.push_back(in_background([&] {
            if (!let_go.tryAcquire(1, 3000)) {
                ++gave_up;
            }
        }));
    }
    QImage image(1200, 1200, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    {
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        QPainterPath path;
        path.addEllipse(20.5, 20.5, 1150, 1150);
        QLinearGradient gradient(0, 0, 1200, 1200);
        gradient.setColorAt(0, QColor(200, 0, 0, 120));
        gradient.setColorAt(1, QColor(0, 0, 200, 120));
        painter.fillPath(path, gradient);
    }
    EXPECT_NE(image.pixelColor(600, 600), QColor(Qt::white));
    let_go.release(int(all.size()));
    for (auto& one : all) {
        one.waitForFinished();
    }
    EXPECT_EQ(gave_up, 0) << "the painting was over only when the work was";
}
