// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

namespace plumbmark::records::kind {

/// Belongs to a shot: somebody else shows there what the plan asks for. {"of": player} where that is another
/// player of the coach's, empty where it is the coach.
inline constexpr std::string_view demonstration = "demonstration";

} // namespace plumbmark::records::kind
