// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

namespace plumbmark::coaching::detail {

/// The bytes of playbook/default.json.
[[nodiscard]] std::string_view defaultPlaybookText();

} // namespace plumbmark::coaching::detail
