# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# An outside reader of QR codes: zbar (Debian package libzbar-dev).
find_package(PkgConfig REQUIRED)
pkg_check_modules(TEST_ZBAR REQUIRED IMPORTED_TARGET zbar)
target_link_libraries(test_transfer PRIVATE PkgConfig::TEST_ZBAR)
