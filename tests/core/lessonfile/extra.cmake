# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# An outside reader for the files we write: libzip with its strictest checks.
find_package(PkgConfig REQUIRED)
pkg_check_modules(TEST_ZIP REQUIRED IMPORTED_TARGET libzip)
target_link_libraries(test_lessonfile PRIVATE PkgConfig::TEST_ZIP)
