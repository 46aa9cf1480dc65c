#pragma once

#include <optional>
#include <string>

namespace core::store {

/// Says "this instance writes this book" to other instances: an advisory lock on a file beside the
/// book, which the system lets go when the program ends in whatever way. Readers need no lock.
class InstanceLock {
  public:
    /// Takes the lock on `<book>.lock`, or gives nothing when another instance has it. Throws
    /// (fault.h) when the lock file cannot be made.
    static std::optional<InstanceLock> take(const std::string& book_path);
    /// What the instance that holds the lock said about itself; empty when unknown.
    static std::string holder(const std::string& book_path);

    InstanceLock(InstanceLock&& other) noexcept;
    InstanceLock& operator=(InstanceLock&& other) noexcept;
    ~InstanceLock();

  private:
    explicit InstanceLock(int descriptor) : descriptor_(descriptor) {}
    int descriptor_ = -1; ///< the system's own "none"
};

} // namespace core::store
