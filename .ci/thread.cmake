# cmake -C .ci/thread.cmake -S . -B build/thread: finds data races. Qt is not built for this sanitizer, so what Qt itself
# does is not looked at (TSAN_OPTIONS=ignore_noninstrumented_modules=1), and what is handed from thread to thread lies
# under locks of the standard library, which are.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "")
set(SANITIZE "thread" CACHE STRING "")
