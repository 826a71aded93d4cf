# cmake -C .ci/core-only.cmake -S . -B build/core-only: core and its tests where Qt is not installed. Compiled headers
# are off, so that every file proves that it includes what it uses; clang-tidy reads this build too.
# Nobody runs what is built here, so it is built in the shortest time.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O0" CACHE STRING "")
set(BUILD_APP OFF CACHE BOOL "")
set(CMAKE_DISABLE_PRECOMPILE_HEADERS ON CACHE BOOL "")
# A library is built without those that it will be linked with.
set(CMAKE_OPTIMIZE_DEPENDENCIES ON CACHE BOOL "")
