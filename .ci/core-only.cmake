# cmake -C .ci/core-only.cmake -S . -B build/core-only: core and its tests where Qt is not installed. Compiled headers
# are off, so that every file proves that it includes what it uses; clang-tidy reads this build too.
set(BUILD_APP OFF CACHE BOOL "")
set(CMAKE_DISABLE_PRECOMPILE_HEADERS ON CACHE BOOL "")
