#Copyright 2026 The Plumbmark authors
#SPDX - License - Identifier : Apache - 2.0
find_package(nlohmann_json 3.11 REQUIRED)
target_link_libraries(test_exporting PRIVATE nlohmann_json::nlohmann_json)
    target_include_directories(test_exporting PRIVATE "${CMAKE_CURRENT_LIST_DIR}" "${PROJECT_SOURCE_DIR}/tests/hostile")
