#include "core/store/instance_lock.h"

#include "core/store/fault.h"

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <sys/file.h>
#include <unistd.h>
#include <utility>

namespace core::store {

namespace {

std::string lock_path(const std::string& book_path) {
    return book_path + ".lock";
}

void write_who(int descriptor) {
    std::array<char, 256> host{};
    gethostname(host.data(), host.size() - 1);
    const std::string who = "process " + std::to_string(getpid()) + " on " + host.data() + "\n";
    // A courtesy to the other instance's message; the lock holds without it.
    if (ftruncate(descriptor, 0) == 0) {
        [[maybe_unused]] const auto written = write(descriptor, who.data(), who.size());
    }
}

} // namespace

std::optional<InstanceLock> InstanceLock::take(const std::string& book_path) {
    const std::string path = lock_path(book_path);
    const int descriptor = open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
    if (descriptor < 0) {
        const bool full = errno == ENOSPC || errno == EDQUOT;
        refuse(full ? base::ErrorCode::disk_full : base::ErrorCode::no_permission,
               std::strerror(errno), path);
    }
    if (flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
        const int why = errno;
        close(descriptor);
        if (why == EWOULDBLOCK) {
            return std::nullopt;
        }
        refuse(base::ErrorCode::io_failure, std::strerror(why), path);
    }
    write_who(descriptor);
    return InstanceLock(descriptor);
}

std::string InstanceLock::holder(const std::string& book_path) {
    std::ifstream file(lock_path(book_path));
    std::string line;
    std::getline(file, line);
    return line;
}

InstanceLock::InstanceLock(InstanceLock&& other) noexcept
    : descriptor_(std::exchange(other.descriptor_, -1)) {}

InstanceLock& InstanceLock::operator=(InstanceLock&& other) noexcept {
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

InstanceLock::~InstanceLock() {
    if (descriptor_ >= 0) {
        close(descriptor_); // lets the lock go; the file stays, so that no two can race for it
    }
}

} // namespace core::store
