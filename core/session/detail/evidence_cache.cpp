// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/detail/evidence_cache.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

#include "analysis/evidence_io.h"
#include "base/files.h"

namespace plumbmark::session::detail {
namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t kMostBytes = 256U << 20;

/// The film's name first: the library drops what belongs to a film together with it.
fs::path fileFor(const store::Library& library, std::string_view film, const analysis::NetworkBytes& network,
                 const analysis::Request& request) {
    return library.folder() / "cache" /
           (std::string(film) + "-" + analysis::evidenceName(film, network, request).substr(0, 32));
}

void makeRoom(const fs::path& folder) {
    struct Kept {
        fs::path path;
        fs::file_time_type used;
        std::uintmax_t bytes = 0;
    };
    std::vector<Kept> all;
    std::uintmax_t total = 0;
    std::error_code error;
    for (fs::directory_iterator it(folder, error), end; !error && it != end; it.increment(error)) {
        std::error_code ignored;
        Kept kept{it->path(), it->last_write_time(ignored), it->file_size(ignored)};
        if (!ignored) {
            total += kept.bytes;
            all.push_back(std::move(kept));
        }
    }
    std::sort(all.begin(), all.end(), [](const Kept& a, const Kept& b) { return a.used < b.used; });
    for (const Kept& oldest : all) {
        if (total <= kMostBytes) {
            return;
        }
        fs::remove(oldest.path, error);
        total -= oldest.bytes;
    }
}

} // namespace

std::shared_ptr<const analysis::Evidence> keptEvidence(const store::Library& library, std::string_view film,
                                                       const analysis::NetworkBytes& network,
                                                       const analysis::Request& request) {
    const fs::path file = fileFor(library, film, network, request);
    std::ifstream in(file, std::ios::binary);
    if (!in) {
        return nullptr;
    }
    const std::vector<char> text{std::istreambuf_iterator<char>(in), {}};
    auto evidence =
        analysis::unpackEvidence({reinterpret_cast<const std::uint8_t*>(text.data()), text.size()}, request);
    std::error_code ignored;
    if (evidence == nullptr) {
        fs::remove(file, ignored);
    } else {
        fs::last_write_time(file, fs::file_time_type::clock::now(), ignored);
    }
    return evidence;
}

void keepEvidence(const store::Library& library, std::string_view film, const analysis::NetworkBytes& network,
                  const analysis::Request& request, const analysis::Evidence& evidence) {
    if (library.readOnly()) {
        return;
    }
    const fs::path file = fileFor(library, film, network, request);
    if (auto made = base::makeFolders(file.parent_path()); !made) {
        return;
    }
    const std::vector<std::uint8_t> bytes = analysis::packEvidence(evidence);
    (void)base::replaceFile(file, {reinterpret_cast<const char*>(bytes.data()), bytes.size()}).ok();
    makeRoom(file.parent_path());
}

} // namespace plumbmark::session::detail
