// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "store/detail/lock.h"

#include <cerrno>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include "store/detail/db.h"

namespace plumbmark::store::detail {

base::Result<Lock> Lock::take(const std::filesystem::path& file) {
    const int fd = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600);
    if (fd < 0) {
        return base::inputError("library.folder",
                                "The library's folder cannot be written; check its permissions.");
    }
    Lock lock(fd);
    lock.alone_ = ::flock(fd, LOCK_EX | LOCK_NB) == 0;
    if (!lock.alone_ && !lock.share()) {
        return databaseError(SQLITE_BUSY);
    }
    return lock;
}

Lock::~Lock() {
    if (fd_ >= 0) {
        ::close(fd_);
    }
}

bool Lock::share() {
    alone_ = false;
    int code = 0;
    while ((code = ::flock(fd_, LOCK_SH)) != 0 && errno == EINTR) {
    }
    return code == 0;
}

} // namespace plumbmark::store::detail
