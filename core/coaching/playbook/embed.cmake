# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# The playbook that comes with the program is data in default.json and travels inside the binary, so that no
# install step can lose it. Written as bytes: compilers limit the length of one literal.
set(playbook_file "${CMAKE_CURRENT_LIST_DIR}/default.json")
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${playbook_file}")
file(READ "${playbook_file}" playbook_text HEX)
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," playbook_bytes "${playbook_text}")
set(playbook_source "${CMAKE_CURRENT_BINARY_DIR}/coaching/default_playbook.cpp")
file(CONFIGURE OUTPUT "${playbook_source}" @ONLY CONTENT [[
// Made from core/coaching/playbook/default.json; do not edit.
#include "coaching/detail/default_playbook.h"
namespace plumbmark::coaching::detail {
namespace {
constexpr unsigned char kBytes[] = {@playbook_bytes@};
}
std::string_view defaultPlaybookText() { return {reinterpret_cast<const char*>(kBytes), sizeof(kBytes)}; }
} // namespace plumbmark::coaching::detail
]])
target_sources(plumbmark_coaching PRIVATE "${playbook_source}")
