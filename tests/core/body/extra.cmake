# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
find_package(OpenCV 4.6 REQUIRED COMPONENTS core imgproc imgcodecs objdetect)
target_link_libraries(test_body PRIVATE opencv_core opencv_imgproc opencv_imgcodecs opencv_objdetect)

# Developer's tool, not part of the tests: cmake --build ... --target body_probe
add_executable(body_probe EXCLUDE_FROM_ALL "${PROJECT_SOURCE_DIR}/tests/tools/body_probe.cpp")
target_link_libraries(body_probe PRIVATE plumbmark::body opencv_core opencv_imgproc opencv_imgcodecs)
