# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# core_module(NAME DEPENDS other modules... LIBS third-party targets...)
#   One declaration per module of core/. Folder = namespace = target = test folder:
#   core/NAME/*.h|*.cpp -> plumbmark::NAME, tests/core/NAME/*_test.cpp -> test_NAME.
#   The declarations also feed the structure test, which reads every #include in core/ and fails
#   when a file includes a module that its own module does not declare.
#   Third-party libraries are linked PRIVATE, so their headers cannot leak through a public header.

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_POSITION_INDEPENDENT_CODE ON)

if(NOT CMAKE_BUILD_TYPE)
  set(CMAKE_BUILD_TYPE Release CACHE STRING "" FORCE)
endif()

find_program(PLUMBMARK_CCACHE ccache)
if(PLUMBMARK_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  set(CMAKE_CXX_COMPILER_LAUNCHER "${PLUMBMARK_CCACHE}")
endif()

add_library(plumbmark_flags INTERFACE)
target_compile_options(plumbmark_flags INTERFACE -Wall -Wextra -Wpedantic)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
  # False alarm of GCC 12 about adding std::strings (GCC bug 105329).
  target_compile_options(plumbmark_flags INTERFACE -Wno-restrict)
endif()
if(PLUMBMARK_WERROR)
  target_compile_options(plumbmark_flags INTERFACE -Werror)
endif()
if(PLUMBMARK_SANITIZE)
  # Applied globally: one object without them would hide errors in its callers. The rows of pixels of
  # *_kernels.cpp are the exception (core_module): sanitizers keep them from vector code, four times slower, and
  # a test of their own runs each against its definition between pages that nobody may touch.
  add_compile_options(-fsanitize=address,undefined -fno-omit-frame-pointer -fno-sanitize-recover=undefined)
  add_link_options(-fsanitize=address,undefined)
endif()

set_property(GLOBAL PROPERTY PLUMBMARK_MODULE_TABLE "")

function(core_module name)
  cmake_parse_arguments(M "" "" "DEPENDS;LIBS" ${ARGN})
  file(GLOB sources CONFIGURE_DEPENDS "${CMAKE_CURRENT_SOURCE_DIR}/${name}/*.cpp"
       "${CMAKE_CURRENT_SOURCE_DIR}/${name}/detail/*.cpp")
  list(FILTER sources EXCLUDE REGEX "/main\\.cpp$")
  string(REPLACE ";" "," row "${M_DEPENDS}")
  set_property(GLOBAL APPEND PROPERTY PLUMBMARK_MODULE_TABLE "${name}:${row}")
  list(TRANSFORM M_DEPENDS PREPEND "plumbmark::")
  if(sources)
    add_library(plumbmark_${name} STATIC ${sources})
    target_include_directories(plumbmark_${name} PUBLIC "${PROJECT_SOURCE_DIR}/core")
    target_link_libraries(plumbmark_${name} PUBLIC ${M_DEPENDS} PRIVATE plumbmark_flags ${M_LIBS})
    target_compile_options(plumbmark_${name} PRIVATE -Wshadow)
    if(PLUMBMARK_SANITIZE)
      set(kernels ${sources})
      list(FILTER kernels INCLUDE REGEX "_kernels\\.cpp$")
      set_source_files_properties(${kernels} PROPERTIES COMPILE_OPTIONS "-fno-sanitize=all;-O3")
    endif()
  else()
    # Values only: headers.
    add_library(plumbmark_${name} INTERFACE)
    target_include_directories(plumbmark_${name} INTERFACE "${PROJECT_SOURCE_DIR}/core")
    target_link_libraries(plumbmark_${name} INTERFACE ${M_DEPENDS})
  endif()
  add_library(plumbmark::${name} ALIAS plumbmark_${name})
endfunction()
