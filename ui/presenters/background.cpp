#include "ui/presenters/background.h"

#include <algorithm>

namespace ui::presenters {

namespace {

class Pool : public QThreadPool {
  public:
    Pool() {
        setMaxThreadCount(std::max(4, maxThreadCount()));
        setThreadPriority(
            QThread::LowPriority); // where the system knows of it, the window is first
    }
};

} // namespace

QThreadPool& background_pool() {
    static Pool pool;
    return pool;
}

} // namespace ui::presenters
