# cmake -C .ci/asan.cmake -S . -B build/asan: finds wrong use of memory and undefined arithmetic.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1 -D_GLIBCXX_ASSERTIONS" CACHE STRING "")
set(SANITIZE "address,undefined" CACHE STRING "")
