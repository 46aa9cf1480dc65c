#include "ui/presenters/latest.h"

#include <QThread>
#include <atomic>
#include <gtest/gtest.h>
#include <vector>

using ui::presenters::Latest;

TEST(Latest, HandsOutTheNewestAnswerOnlyAndComputesElsewhere) {
    std::vector<int> answers;
    std::atomic<QThread*> where = nullptr;
    std::atomic<int> computed = 0;
    Latest<int> latest([&](int answer) { answers.push_back(answer); });
    for (int i = 1; i <= 5; ++i) {
        latest.ask([&, i] {
            where = QThread::currentThread();
            ++computed;
            QThread::msleep(10);
            return i;
        });
    }
    EXPECT_TRUE(latest.is_busy());
    // Not latest.wait(): that may run what has not begun on this thread.
    while (latest.is_busy()) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    EXPECT_EQ(answers, std::vector<int>{5});
    EXPECT_EQ(computed, 2) << "the first, and the newest of those that waited";
    EXPECT_NE(where, QThread::currentThread());
}

TEST(Latest, GoingAwayWhileBusyHandsOutNothing) {
    int answers = 0;
    {
        Latest<int> latest([&](int) { ++answers; });
        latest.ask([] {
            QThread::msleep(20);
            return 1;
        });
    }
    QCoreApplication::processEvents();
    EXPECT_EQ(answers, 0);
}
