// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <string_view>

#include "analysis/analysis.h"
#include "store/library.h"

namespace plumbmark::session::detail {

/// What one pass over a film has left behind, kept beside the library (folder cache/), so that a stored swing
/// opens at once. May be thrown away at any time: then the film is read again. Never grows over a quarter of
/// a gigabyte; the longest unused goes first.
[[nodiscard]] std::shared_ptr<const analysis::Evidence> keptEvidence(const store::Library& library,
                                                                     std::string_view filmSha256,
                                                                     const analysis::NetworkBytes& network,
                                                                     const analysis::Request& request);
/// A cache that cannot be written is no error.
void keepEvidence(const store::Library& library, std::string_view filmSha256,
                  const analysis::NetworkBytes& network, const analysis::Request& request,
                  const analysis::Evidence& evidence);

} // namespace plumbmark::session::detail
