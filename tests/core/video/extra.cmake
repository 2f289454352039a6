# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# The awkward clips, and FFmpeg's own programs as the outside check.
if(NOT TARGET plumbmark::awkward)
  add_subdirectory("${PROJECT_SOURCE_DIR}/demo-data/awkward" "${CMAKE_BINARY_DIR}/demo-data/awkward")
endif()
target_link_libraries(test_video PRIVATE plumbmark::awkward)
find_program(PLUMBMARK_FFPROBE ffprobe)
find_program(PLUMBMARK_FFMPEG ffmpeg)
if(PLUMBMARK_FFPROBE AND PLUMBMARK_FFMPEG)
  target_compile_definitions(test_video PRIVATE FFPROBE_PROGRAM="${PLUMBMARK_FFPROBE}"
                                                FFMPEG_PROGRAM="${PLUMBMARK_FFMPEG}")
endif()
