// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/output_file.h"

#include <cerrno>
#include <fcntl.h>
#include <string>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

#include "base/files.h"
#include "base/ids.h"

namespace plumbmark::exporting {
namespace fs = std::filesystem;
namespace {

std::string quoted(const fs::path& path) {
    return "\"" + path.string() + "\"";
}

fs::path folderOf(const fs::path& path) {
    return path.has_parent_path() ? path.parent_path() : fs::path(".");
}

/// Follows a link, so that a rename replaces the file and not the link.
fs::path resolved(const fs::path& path) {
    std::error_code error;
    if (!fs::is_symlink(fs::symlink_status(path, error))) {
        return path;
    }
    const fs::path target = fs::weakly_canonical(path, error);
    return error ? path : target;
}

struct Place {
    fs::path path;          ///< links followed
    bool regular = true;    ///< false: a pipe or device
    mode_t permissions = 0; ///< of the file there, or of any new one
};

base::Result<Place> lookAt(const fs::path& wanted) {
    Place place;
    place.path = resolved(wanted);
    if (place.path.empty()) {
        return base::inputError("output.no_name", "The name of an output file is empty; give it a name.");
    }
    struct stat there {};
    const bool exists = ::stat(place.path.c_str(), &there) == 0;
    if ((exists && S_ISDIR(there.st_mode)) || !place.path.has_filename()) {
        return base::inputError("output.is_folder",
                                quoted(wanted) + " is a folder; give the name of a file to write.");
    }
    if (exists && !S_ISREG(there.st_mode)) {
        place.regular = false;
        if (::access(place.path.c_str(), W_OK) != 0) {
            return base::inputError("output.not_writable",
                                    quoted(wanted) + " can't be written to; choose another name.");
        }
        return place;
    }
    const fs::path folder = folderOf(place.path);
    std::error_code error;
    if (!fs::is_directory(folder, error)) {
        return base::inputError("output.no_folder",
                                "The folder " + quoted(folder) +
                                    " does not exist; make it first or choose another place.");
    }
    if (place.path.filename().string().size() > 255) {
        return base::inputError("output.not_writable",
                                "The name of the output file is too long; choose a shorter one.");
    }
    // A trial file tells more than permission bits do: read-only disks, quotas, odd file systems. It also
    // tells the permissions that a new file gets here.
    const fs::path trial = folder / (".plumbmark-" + base::randomIds().next().hex() + ".trial");
    const int fd = ::open(trial.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0666);
    if (fd < 0) {
        return base::inputError("output.not_writable",
                                "Nothing can be written to the folder " + quoted(folder) + " (" +
                                    std::generic_category().message(errno) + "); choose another place.");
    }
    struct stat made {};
    ::fstat(fd, &made);
    ::close(fd);
    ::unlink(trial.c_str());
    place.permissions = (exists ? there.st_mode : made.st_mode) & 0777;
    return place;
}

base::Result<void> writeInto(const fs::path& device, const fs::path& wanted, std::string_view bytes) {
    const int fd = ::open(device.c_str(), O_WRONLY | O_CLOEXEC);
    int code = fd < 0 ? errno : 0;
    while (code == 0 && !bytes.empty()) {
        const ssize_t written = ::write(fd, bytes.data(), bytes.size());
        if (written > 0) {
            bytes.remove_prefix(static_cast<std::size_t>(written));
        } else if (errno != EINTR) {
            code = errno;
        }
    }
    if (fd >= 0 && ::close(fd) != 0 && code == 0) {
        code = errno;
    }
    if (code != 0) {
        return base::failure("output.write", "Writing to " + quoted(wanted) + " failed (" +
                                                 std::generic_category().message(code) +
                                                 "); choose another place.");
    }
    return {};
}

} // namespace

base::Result<void> checkWritable(const fs::path& path) {
    const auto place = lookAt(path);
    return place ? base::Result<void>{} : place.error();
}

base::Result<void> writeWhole(const fs::path& path, std::string_view bytes) {
    const auto place = lookAt(path);
    if (!place) {
        return place.error();
    }
    if (!place->regular) {
        return writeInto(place->path, path, bytes);
    }
    if (auto written = base::replaceFile(place->path, bytes); !written) {
        return written;
    }
    ::chmod(place->path.c_str(), place->permissions); // the file is whole either way
    return {};
}

base::Result<void> writeWhole(const fs::path& path, std::span<const std::byte> bytes) {
    return writeWhole(path, std::string_view(reinterpret_cast<const char*>(bytes.data()), bytes.size()));
}

} // namespace plumbmark::exporting
