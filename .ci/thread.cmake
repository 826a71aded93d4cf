# cmake -C .ci/thread.cmake -S . -B build/thread: finds data races in core. Qt is left out, for it is not built for
# this sanitizer and would bring false reports.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "")
set(SANITIZE "thread" CACHE STRING "")
set(BUILD_APP OFF CACHE BOOL "")
