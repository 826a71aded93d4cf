# The functions that each room (a folder with its own CMakeLists.txt) describes itself with.

# add_room(name): takes in the folder `name` once it has a CMakeLists.txt.
function(add_room name)
    if(EXISTS ${CMAKE_CURRENT_SOURCE_DIR}/${name}/CMakeLists.txt)
        add_subdirectory(${name})
    endif()
endfunction()

# What is the same for every target of ours: warnings, and includes written from the root of the tree.
function(basinbell_common name)
    target_link_libraries(${name} PRIVATE strict)
    target_include_directories(${name} PUBLIC ${PROJECT_SOURCE_DIR})
endfunction()

# What is the same for every target that uses Qt: signals and slots, and no silent turning of bytes into text.
function(basinbell_uses_qt name)
    # Qt 6.4's moc stops at GCC 12's <concepts> ('Parse error at "std"'), which <compare> brings in; it needs none of it.
    set_target_properties(${name} PROPERTIES AUTOMOC ON AUTOMOC_MOC_OPTIONS -D_GLIBCXX_CONCEPTS)
    target_compile_definitions(${name} PRIVATE
        QT_NO_KEYWORDS QT_NO_CAST_FROM_ASCII QT_NO_CAST_TO_ASCII QT_NO_FOREACH)
endfunction()

# basinbell_library(name SOURCES a.cpp ... [LINKS target ...])
# A static library of core. LINKS are handed on to whoever links it. With no SOURCES it is headers only.
function(basinbell_library name)
    cmake_parse_arguments(PARSE_ARGV 1 room "" "" "SOURCES;LINKS")
    if(NOT room_SOURCES)
        add_library(${name} INTERFACE)
        target_include_directories(${name} INTERFACE ${PROJECT_SOURCE_DIR})
        target_link_libraries(${name} INTERFACE ${room_LINKS})
        return()
    endif()
    add_library(${name} STATIC ${room_SOURCES})
    basinbell_common(${name})
    target_link_libraries(${name} PUBLIC ${room_LINKS})
    target_precompile_headers(${name} REUSE_FROM core_headers)
endfunction()

# basinbell_app_library(name SOURCES a.cpp a.h ... [LINKS target ...])
# A static library of app, with Qt's moc. A header with Q_OBJECT whose .cpp has another name must be listed too.
function(basinbell_app_library name)
    cmake_parse_arguments(PARSE_ARGV 1 room "" "" "SOURCES;LINKS")
    add_library(${name} STATIC ${room_SOURCES})
    basinbell_common(${name})
    basinbell_uses_qt(${name})
    target_link_libraries(${name} PUBLIC ${room_LINKS} Qt6::Core)
    if("Qt6::Widgets" IN_LIST room_LINKS)
        target_precompile_headers(${name} REUSE_FROM widget_headers)
    else()
        target_precompile_headers(${name} REUSE_FROM app_headers)
    endif()
endfunction()

# basinbell_program(name SOURCES main.cpp [LINKS target ...])
# A program that is installed. It lands in <build>/bin. Keep main small: the work belongs in a library.
function(basinbell_program name)
    cmake_parse_arguments(PARSE_ARGV 1 room "" "" "SOURCES;LINKS")
    add_executable(${name} ${room_SOURCES})
    basinbell_common(${name})
    basinbell_uses_qt(${name})
    target_link_libraries(${name} PRIVATE ${room_LINKS} Qt6::Core)
    install(TARGETS ${name})
endfunction()

# basinbell_test(name LABEL fast|slow|simulation SOURCES a_test.cpp ... [LINKS target ...]
#                [DEPENDS program ...] [DEFINITIONS X=1 ...] [TIMEOUT seconds] [SERIAL] [OPTIMIZED]
#                [COMPUTING b.cpp ...])
# One test executable for one folder; every TEST in it becomes a test of ctest that bears the label.
# GoogleTest, GoogleMock and a main are linked. A test that links a target of app or Qt gets a main that makes an
# offscreen QApplication with a home of its own. SOURCE_DIR is defined as the root of the tree. Name in DEPENDS the
# programs that the test starts; PROGRAM_DIR is then the folder they are in. Use SERIAL where time is measured, and
# OPTIMIZED where the test itself computes: the others are compiled in the shortest time, what they test is optimised.
# COMPUTING are sources that are optimised in a test that is not.
function(basinbell_test name)
    cmake_parse_arguments(PARSE_ARGV 1 room "SERIAL;OPTIMIZED" "LABEL;TIMEOUT" "SOURCES;COMPUTING;LINKS;DEPENDS;DEFINITIONS")
    if(NOT room_LABEL MATCHES "^(fast|slow|simulation)$")
        message(FATAL_ERROR "basinbell_test(${name}): LABEL is '${room_LABEL}'; it must be fast, slow or simulation.")
    endif()
    add_executable(${name} ${room_SOURCES} ${room_COMPUTING})
    set_source_files_properties(${room_COMPUTING} PROPERTIES COMPILE_OPTIONS -O2 SKIP_PRECOMPILE_HEADERS ON)
    basinbell_common(${name})
    target_compile_definitions(${name} PRIVATE ${room_DEFINITIONS} SOURCE_DIR="${PROJECT_SOURCE_DIR}")
    target_link_libraries(${name} PRIVATE ${room_LINKS} GTest::gmock GTest::gtest)
    set_target_properties(${name} PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/test-bin)
    if("${room_LINKS}" MATCHES "(^|;)(app_|Qt6::)")
        basinbell_uses_qt(${name})
        target_link_libraries(${name} PRIVATE qt_test_main)
    else()
        target_link_libraries(${name} PRIVATE GTest::gtest_main)
    endif()
    if(NOT room_OPTIMIZED)
        target_compile_options(${name} PRIVATE -O0)
        if("${room_LINKS}" MATCHES "(^|;)(app_|Qt6::)")
            target_precompile_headers(${name} REUSE_FROM qt_test_headers)
        else()
            target_precompile_headers(${name} REUSE_FROM test_headers)
        endif()
    endif()
    if(room_DEPENDS)
        add_dependencies(${name} ${room_DEPENDS})
        target_compile_definitions(${name} PRIVATE PROGRAM_DIR="${CMAKE_RUNTIME_OUTPUT_DIRECTORY}")
    endif()
    basinbell_discover(${name} "${room_LABEL}" "${room_TIMEOUT}" ${room_SERIAL})
endfunction()

# Registers the cases of one test executable, each with a home apart from the user's own.
function(basinbell_discover name label timeout serial)
    if(NOT timeout)
        set(timeout_fast 120)
        set(timeout_slow 600)
        set(timeout_simulation 1200)
        set(timeout ${timeout_${label}})
    endif()
    set(home ${PROJECT_BINARY_DIR}/test-home)
    file(MAKE_DIRECTORY ${home})
    file(CHMOD ${home} PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE)
    gtest_discover_tests(${name} DISCOVERY_MODE PRE_TEST DISCOVERY_TIMEOUT 60 TEST_LIST ${name}_cases
        PROPERTIES LABELS ${label} TIMEOUT ${timeout} RUN_SERIAL ${serial})

    # gtest_discover_tests takes the list of an environment apart, so it is given to the cases once they are known.
    set(environment HOME=${home} XDG_RUNTIME_DIR=${home} LANG=C.UTF-8 LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen)
    set(script ${CMAKE_CURRENT_BINARY_DIR}/${name}_environment.cmake)
    file(CONFIGURE OUTPUT ${script} @ONLY CONTENT [[
foreach(case IN LISTS @name@_cases)
    set_tests_properties(${case} PROPERTIES ENVIRONMENT "@environment@")
endforeach()
]])
    set_property(DIRECTORY APPEND PROPERTY TEST_INCLUDE_FILES ${script})
endfunction()
