// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/settings_model.h"
