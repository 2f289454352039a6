# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
find_package(OpenCV 4.6 REQUIRED COMPONENTS core imgcodecs features2d)
target_link_libraries(test_club PRIVATE opencv_core opencv_imgcodecs opencv_features2d)

# Developer's tool: errors of shaft and ball on a clip with known truth. Built on demand.
add_executable(club_probe EXCLUDE_FROM_ALL "${PROJECT_SOURCE_DIR}/tests/tools/club_probe.cpp")
target_link_libraries(club_probe PRIVATE plumbmark::club plumbmark_flags nlohmann_json::nlohmann_json)
