# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# A hash over every source file the pass over the pixels is made of. Kept evidence carries it, so that what another
# version of the program has kept is never taken for this one's. Run as a script (RECIPE_OUT set) it writes the header;
# included, it says when to.
set(recipe_modules base video marks scene body club swing analysis)
if(RECIPE_OUT)
  set(all "")
  foreach(module IN LISTS recipe_modules)
    file(GLOB files LIST_DIRECTORIES false RELATIVE "${RECIPE_CORE}" "${RECIPE_CORE}/${module}/*.cpp"
         "${RECIPE_CORE}/${module}/*.h" "${RECIPE_CORE}/${module}/detail/*.cpp" "${RECIPE_CORE}/${module}/detail/*.h")
    list(SORT files)
    foreach(name IN LISTS files)
      file(SHA256 "${RECIPE_CORE}/${name}" hash)
      string(APPEND all "${name} ${hash}\n")
    endforeach()
  endforeach()
  string(SHA256 recipe "${all}")
  file(CONFIGURE OUTPUT "${RECIPE_OUT}" @ONLY CONTENT [[
// Made by core/analysis/recipe.cmake; do not edit.
#pragma once
#include <string_view>
namespace plumbmark::analysis::detail {
inline constexpr std::string_view kRecipe = "@recipe@";
} // namespace plumbmark::analysis::detail
]])
else()
  set(recipe_inputs "")
  foreach(module IN LISTS recipe_modules)
    file(GLOB files CONFIGURE_DEPENDS "${CMAKE_CURRENT_SOURCE_DIR}/${module}/*.cpp" "${CMAKE_CURRENT_SOURCE_DIR}/${module}/*.h"
         "${CMAKE_CURRENT_SOURCE_DIR}/${module}/detail/*.cpp" "${CMAKE_CURRENT_SOURCE_DIR}/${module}/detail/*.h")
    list(APPEND recipe_inputs ${files})
  endforeach()
  set(recipe_header "${CMAKE_CURRENT_BINARY_DIR}/analysis/detail/recipe.h")
  add_custom_command(
    OUTPUT "${recipe_header}"
    COMMAND "${CMAKE_COMMAND}" -DRECIPE_OUT=${recipe_header} -DRECIPE_CORE=${CMAKE_CURRENT_SOURCE_DIR}
            -P "${CMAKE_CURRENT_LIST_DIR}/recipe.cmake"
    DEPENDS ${recipe_inputs} "${CMAKE_CURRENT_LIST_DIR}/recipe.cmake"
    COMMENT "Hashing the sources of the pass")
  target_sources(plumbmark_analysis PRIVATE "${recipe_header}")
  target_include_directories(plumbmark_analysis PRIVATE "${CMAKE_CURRENT_BINARY_DIR}")
endif()
