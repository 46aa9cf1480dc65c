#pragma once

#include <QElapsedTimer>
#include <ctime>

/// What a person waits, and what of it is the thread's own work: on a busy machine only the second
/// is the program's.
struct Spent {
    double wall = 0; ///< ms
    double own = 0;  ///< ms of this thread's processor time
};

/// Processor time of the calling thread so far, in milliseconds.
inline double own_ms() {
    timespec t{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
    return static_cast<double>(t.tv_sec) * 1e3 + static_cast<double>(t.tv_nsec) / 1e6;
}

template <class F>
Spent spent(const F& what) {
    QElapsedTimer clock;
    clock.start();
    const double own = own_ms();
    what();
    return {static_cast<double>(clock.nsecsElapsed()) / 1e6, own_ms() - own};
}
