#pragma once

#include <stop_token>

namespace core::store {

class Connection;

/// While it lives, what the connection runs ends with a fault (cancelled) once `stop` is asked for.
class Interruptible {
  public:
    Interruptible(Connection& connection, std::stop_token stop);
    ~Interruptible();
    Interruptible(const Interruptible&) = delete;
    Interruptible& operator=(const Interruptible&) = delete;

  private:
    Connection& connection_;
    std::stop_token stop_; ///< stays where it is: the engine's callback looks at it
};

} // namespace core::store
