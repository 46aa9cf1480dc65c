#pragma once

#include <QThreadPool>
#include <QtConcurrent>

#include <utility>

namespace ui::presenters {

/// The threads of all long work: imports, forecasts, queries. Apart from Qt's own pool, because Qt
/// paints large areas on that one and the window waits for it: work of 40 ms there was a frame of
/// 40 ms. At least four threads, so that an import or two do not keep a query waiting.
QThreadPool& background_pool();

/// Runs `work` off the GUI thread; it holds all it needs by value.
template <class Work>
auto in_background(Work&& work) {
    return QtConcurrent::run(&background_pool(), std::forward<Work>(work));
}

} // namespace ui::presenters
