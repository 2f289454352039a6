// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

#include "base/files.h"
#include "base/result.h"

namespace plumbmark::lessonfile {

/// The device's own key (Ed25519). It says "from the same device as before", not who that is: a person
/// decides once whom a key belongs to.
class DeviceKey {
  public:
    /// Reads the key, or makes one where there is none (mode 0600). Errors: "key.damaged" (failure), those of
    /// writing.
    static base::Result<DeviceKey> open(const std::filesystem::path& file,
                                        base::FileCalls& calls = base::systemFileCalls());
    /// 64 hex digits.
    [[nodiscard]] const std::string& publicKey() const { return publicHex_; }
    /// 128 hex digits.
    [[nodiscard]] std::string sign(std::string_view text) const;

  private:
    DeviceKey() = default;
    struct Secret;
    std::shared_ptr<const Secret> secret_;
    std::string publicHex_;
};

[[nodiscard]] bool signatureFits(std::string_view text, const std::string& publicKey,
                                 const std::string& signature);

/// Four groups of a key for people to compare: "1f3a-77c0-9be2-04d1".
[[nodiscard]] std::string keyForPeople(std::string_view publicKey);

} // namespace plumbmark::lessonfile
