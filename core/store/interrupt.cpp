#include "core/store/interrupt.h"

#include "core/store/connection.h"

#include <SQLiteCpp/Database.h>

#include <sqlite3.h>
#include <utility>

namespace core::store {

namespace {

constexpr int steps_between_looks = 4000; // of the engine: well below a millisecond

int is_asked_to_stop(void* stop) {
    return static_cast<const std::stop_token*>(stop)->stop_requested() ? 1 : 0;
}

} // namespace

Interruptible::Interruptible(Connection& connection, std::stop_token stop)
    : connection_(connection), stop_(std::move(stop)) {
    sqlite3_progress_handler(connection_.database().getHandle(), steps_between_looks,
                             is_asked_to_stop, &stop_);
}

Interruptible::~Interruptible() {
    sqlite3_progress_handler(connection_.database().getHandle(), 0, nullptr, nullptr);
}

} // namespace core::store
