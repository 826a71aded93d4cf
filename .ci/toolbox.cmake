# How everything is compiled: language, build type, compiler cache, sanitizers, warnings and the libraries used.

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
set(CMAKE_POSITION_INDEPENDENT_CODE ON)
set(CMAKE_RUNTIME_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/bin)

if(NOT CMAKE_BUILD_TYPE)
    set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "Debug, Release, RelWithDebInfo or MinSizeRel" FORCE)
endif()

# Assertions stay on in the build that people use: they are cheap here, and a wrong plan is worse than none.
string(REPLACE "-DNDEBUG" "" CMAKE_CXX_FLAGS_RELWITHDEBINFO "${CMAKE_CXX_FLAGS_RELWITHDEBINFO}")
# Names and lines for a back trace; what a debugger wants beside makes compiling a third slower.
string(REGEX REPLACE "-g *$" "-g1" CMAKE_CXX_FLAGS_RELWITHDEBINFO "${CMAKE_CXX_FLAGS_RELWITHDEBINFO}")

find_program(CCACHE ccache)
if(CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
    # ccache caches precompiled headers only when told that their time stamps and macros do not matter, and shares
    # between build folders only when told that where they are does not matter either.
    set(CMAKE_CXX_COMPILER_LAUNCHER
        ${CMAKE_COMMAND} -E env CCACHE_SLOPPINESS=pch_defines,time_macros,include_file_mtime,include_file_ctime
        CCACHE_BASEDIR=/ CCACHE_NOHASHDIR=1
        ${CCACHE})
    add_compile_options($<$<CXX_COMPILER_ID:GNU>:-fpch-preprocess>)
endif()

if(SANITIZE)
    add_compile_options(-fsanitize=${SANITIZE} -fno-omit-frame-pointer -fno-sanitize-recover=all)
    add_link_options(-fsanitize=${SANITIZE})
endif()

string(COMPARE NOTEQUAL "${SANITIZE}" "" SANITIZED)

# Every target of ours links this PRIVATE; the functions of rooms.cmake do so.
add_library(strict INTERFACE)
target_compile_options(strict INTERFACE
    -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion -Wnon-virtual-dtor -Woverloaded-virtual
    -Wold-style-cast
    $<$<BOOL:${WARNINGS_AS_ERRORS}>:-Werror>
    # GCC 12 reports overlapping and too long copies inside std::string that cannot happen (GCC bug 105651), the
    # latter where it optimizes most, as in a build of the type Release.
    $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>
    $<$<AND:$<CXX_COMPILER_ID:GNU>,$<CONFIG:Release>>:-Wno-stringop-overflow>
    # GCC's manual warns that sanitizers bring false reports of these.
    $<$<AND:$<CXX_COMPILER_ID:GNU>,$<BOOL:${SANITIZED}>>:-Wno-maybe-uninitialized>)

find_package(nlohmann_json REQUIRED)
find_package(tl-expected REQUIRED)
find_package(Threads REQUIRED)

if(BUILD_APP)
    find_package(Qt6 6.4 REQUIRED COMPONENTS Core DBus Gui Widgets Network Multimedia PrintSupport Svg Test)
    # From where this Qt keeps its tools first: one in the path may be of another Qt.
    find_program(LRELEASE lrelease HINTS ${QT6_INSTALL_PREFIX}/${QT6_INSTALL_BINS} NO_DEFAULT_PATH)
    find_program(LRELEASE NAMES lrelease-qt6 lrelease REQUIRED)
    find_package(SQLite3 REQUIRED)
    find_path(SPEECHD_INCLUDE speech-dispatcher/libspeechd.h REQUIRED)
    find_library(SPEECHD_LIBRARY speechd REQUIRED)
endif()

if(BUILD_TESTS)
    find_package(GTest REQUIRED)
    include(GoogleTest)
    find_package(rapidcheck REQUIRED)
    add_library(gecode INTERFACE)
    target_link_libraries(gecode INTERFACE gecodesearch gecodeminimodel gecodeint gecodekernel gecodesupport
        Threads::Threads)
endif()
