# How this project declares its rooms and its tests. Flags are set once, here.

find_program(SEAMCLOCK_CCACHE ccache)
if(SEAMCLOCK_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
    set(CMAKE_CXX_COMPILER_LAUNCHER ${SEAMCLOCK_CCACHE})
endif()

# Build types of our own: Check is what every test run uses, Sanitize and Tsan are deep stages. Release is for the shop.
set(CMAKE_CXX_FLAGS_CHECK "-O1 -D_GLIBCXX_ASSERTIONS")
set(CMAKE_CXX_FLAGS_SANITIZE
    "-O0 -g1 -fno-omit-frame-pointer -fsanitize=address,undefined -fno-sanitize-recover=all -D_GLIBCXX_ASSERTIONS")
set(CMAKE_CXX_FLAGS_TSAN "-O1 -g1 -fsanitize=thread")
# packaging/fuzz, with clang++: every room watched for coverage, so that libFuzzer sees which bytes lead somewhere new.
set(CMAKE_CXX_FLAGS_FUZZ "-O1 -g1 -fno-omit-frame-pointer -fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=all -D_GLIBCXX_ASSERTIONS")
set(CMAKE_EXE_LINKER_FLAGS_FUZZ "-fsanitize=address,undefined")
set(CMAKE_CXX_FLAGS_RELEASE "-O2")
# Mutation testing changes one source at a time: no warnings (as errors they would refuse good changes, "&&" beside
# "||"), a shared library for each room of core, so that one can be exchanged alone, and an object for each source of the
# rooms that it changes (ROOMS in tests/mutate/mutate.py).
set(CMAKE_CXX_FLAGS_MUTANTS "-O1 -w -D_GLIBCXX_ASSERTIONS")
set(CMAKE_EXE_LINKER_FLAGS_MUTANTS "-Wl,--enable-new-dtags")
set(CMAKE_SHARED_LINKER_FLAGS_MUTANTS "-Wl,--enable-new-dtags")
if(NOT CMAKE_BUILD_TYPE)
    set(CMAKE_BUILD_TYPE Release CACHE STRING "" FORCE)
endif()

add_library(seamclock_flags INTERFACE)
target_include_directories(seamclock_flags INTERFACE ${CMAKE_SOURCE_DIR})
target_compile_options(seamclock_flags INTERFACE
    $<$<NOT:$<CONFIG:Mutants>>:-Wall;-Wextra;-Wpedantic;-Wshadow;-Wconversion;-Werror;-Werror=switch>
    # of an unnamed namespace's type in a class's field: g++ tells the main file from a batch that includes it
    $<$<AND:$<BOOL:${CMAKE_UNITY_BUILD}>,$<CXX_COMPILER_ID:GNU>>:-Wno-subobject-linkage>
    -ffp-contract=off)   # the same estimate on every machine

# The sanitize stage judges a part of the rooms at a time, in less time where the rooms below them are only built: those
# have neither UBSan nor coverage.
set(SEAMCLOCK_JUDGED "" CACHE STRING "which rooms are judged: a regular expression over their folders; empty: all")

# The sanitize stage also measures which lines its tests reach.
option(SEAMCLOCK_COVERAGE "instrument the rooms for line coverage (g++)" OFF)
# g++ 12 counting lines takes a moved variant of app/horn for one without a value.
set(seamclock_coverage --coverage -Wno-maybe-uninitialized)

# What most sources of a kind include, compiled once. Off but in packaging/check, so that clang, clang-tidy and a developer
# see each file with the includes that it names.
option(SEAMCLOCK_PRECOMPILE "precompile the headers of GoogleTest and of Qt's widgets" OFF)

# seamclock_precompile(TARGET KIND HEADERS…): the first target of a kind compiles them, the others use what it made, so
# their flags must be the same.
function(seamclock_precompile target kind)
    if(NOT SEAMCLOCK_PRECOMPILE)
        return()
    endif()
    get_property(owner GLOBAL PROPERTY seamclock_precompiled_${kind})
    if(owner)
        target_precompile_headers(${target} REUSE_FROM ${owner})
    else()
        target_precompile_headers(${target} PRIVATE ${ARGN})
        set_property(GLOBAL PROPERTY seamclock_precompiled_${kind} ${target})
    endif()
endfunction()

# seamclock_precompile_test(TARGET KIND LIBRARY HEADERS…): tests share a set that a target of its own compiles, with no
# macro but those of LIBRARY: Qt6::Test defines one for each folder, SQLiteCpp one of its own, and what was compiled with a
# macro serves nobody who lacks it.
function(seamclock_precompile_test target kind library)
    set(owner seamclock_${kind}_headers)
    if(SEAMCLOCK_PRECOMPILE AND NOT TARGET ${owner})
        set(nothing ${CMAKE_BINARY_DIR}/${kind}_headers.cpp)
        file(CONFIGURE OUTPUT ${nothing} CONTENT "// its precompiled headers are all that it is for\n")
        add_library(${owner} OBJECT ${nothing})
        target_link_libraries(${owner} PRIVATE seamclock_flags ${library} GTest::gtest)
        target_compile_options(${owner} PRIVATE ${seamclock_test_options})
        seamclock_precompile(${owner} ${kind} ${ARGN})
    endif()
    seamclock_precompile(${target} ${kind})
endfunction()

# In packaging/check, which compiles everything anew, the sources of a target are compiled eight at a time (CMake's unity
# build: half of the compile time). SEPARATE names those whose own names meet a neighbour's, or ALL, where most have a tr()
# of their own; clang-tidy and a developer's build see every source by itself.
function(seamclock_separate which)
    if(which STREQUAL "ALL")
        set(which ${ARGN})
    endif()
    set_source_files_properties(${which} PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)
endfunction()

# seamclock_room(NAME SOURCES … HEADERS … USES rooms… LIBRARIES private libraries… SEPARATE sources…)
# A room is a static library; USES are the rooms below it, and the only ones it may include.
function(seamclock_room name)
    cmake_parse_arguments(ROOM "" "" "SOURCES;HEADERS;USES;LIBRARIES;SEPARATE" ${ARGN})
    seamclock_separate("${ROOM_SEPARATE}" ${ROOM_SOURCES})
    if(ROOM_SOURCES)
        set(kind STATIC)
        if(CMAKE_BUILD_TYPE STREQUAL Mutants AND CMAKE_CURRENT_SOURCE_DIR MATCHES "/core/")
            set(kind SHARED)
        endif()
        add_library(seamclock_${name} ${kind} ${ROOM_SOURCES})
        set(scope PUBLIC)
        target_link_libraries(seamclock_${name} PRIVATE ${ROOM_LIBRARIES})
    else()
        add_library(seamclock_${name} INTERFACE)
        set(scope INTERFACE)
    endif()
    target_sources(seamclock_${name} ${scope} FILE_SET HEADERS BASE_DIRS ${CMAKE_SOURCE_DIR} FILES ${ROOM_HEADERS})
    if(CMAKE_BUILD_TYPE STREQUAL Mutants AND CMAKE_CURRENT_SOURCE_DIR MATCHES "/core/(plan|weld|shift|procedure|bench)$")
        set_target_properties(seamclock_${name} PROPERTIES UNITY_BUILD OFF)
    endif()
    list(TRANSFORM ROOM_USES PREPEND seamclock_)
    target_link_libraries(seamclock_${name} ${scope} seamclock_flags ${ROOM_USES})
    file(RELATIVE_PATH folder ${CMAKE_SOURCE_DIR} ${CMAKE_CURRENT_SOURCE_DIR})
    if(ROOM_SOURCES AND NOT folder MATCHES "${SEAMCLOCK_JUDGED}")
        target_compile_options(seamclock_${name} PRIVATE $<$<CONFIG:Sanitize>:-fno-sanitize=undefined>)
    elseif(SEAMCLOCK_COVERAGE AND ROOM_SOURCES)
        target_compile_options(seamclock_${name} PRIVATE ${seamclock_coverage} -fprofile-update=atomic)
        target_link_options(seamclock_${name} PUBLIC --coverage)
    endif()
endfunction()

# UBSan is for the program's own code; in the tests' it takes a quarter of their compile time. Coverage is for both: what a
# header defines is compiled in the tests, too, and the linker keeps that copy.
set(seamclock_test_options $<$<CONFIG:Check,Mutants>:-O0> $<$<CONFIG:Sanitize>:-fno-sanitize=undefined>)
if(SEAMCLOCK_COVERAGE)
    list(APPEND seamclock_test_options ${seamclock_coverage})   # a lost count among threads is none that was never reached
endif()

# seamclock_test(NAME SOURCES … USES rooms… LIBRARIES … [LABELS deep|endure] [TIMEOUT s] [SERIAL] [QT] [UNSHARED]
# [SEPARATE …]): one GoogleTest program, each test a CTest test of its own. QT: it links Qt's widgets. UNSHARED: it is
# compiled otherwise than those that share precompiled headers. "deep" and "endure" keep it out of the quick run; one label
# at most, since gtest_discover_tests of CMake 3.25 loses the second; the target "labelled_endure" builds those alone.
function(seamclock_test name)
    cmake_parse_arguments(T "SERIAL;QT;UNSHARED" "TIMEOUT" "SOURCES;USES;LIBRARIES;LABELS;SEPARATE" ${ARGN})
    list(LENGTH T_LABELS labels)
    if(labels GREATER 1)
        message(FATAL_ERROR "seamclock_test(${name}): one label at most, got \"${T_LABELS}\"")
    endif()
    # Under the sanitizers a program is ten times slower: it can't keep the times that a recording or a screen judges.
    set(left_out FALSE)
    set(all)
    if(CMAKE_BUILD_TYPE STREQUAL Sanitize AND (T_LABELS OR T_SERIAL))
        set(left_out TRUE)
        set(all EXCLUDE_FROM_ALL)
    endif()
    seamclock_separate("${T_SEPARATE}" ${T_SOURCES})
    add_executable(${name} ${all} ${T_SOURCES})
    list(TRANSFORM T_USES PREPEND seamclock_)
    target_link_libraries(${name} PRIVATE seamclock_flags ${T_USES} ${T_LIBRARIES} GTest::gtest GTest::gtest_main)
    target_compile_definitions(${name} PRIVATE SEAMCLOCK_SOURCE_DIR="${CMAKE_SOURCE_DIR}" SEAMCLOCK_BIN_DIR="${CMAKE_BINARY_DIR}/bin")
    target_compile_options(${name} PRIVATE ${seamclock_test_options})
    set(plain <gtest/gtest.h> <algorithm> <chrono> <filesystem> <fstream> <functional> <map> <memory> <optional> <random>
        <set> <string> <variant> <vector>)
    if(T_UNSHARED)
        set_target_properties(${name} PROPERTIES DISABLE_PRECOMPILE_HEADERS ON)
    elseif(T_QT)
        seamclock_precompile_test(${name} screen_test seamclock_parts ${plain} <QApplication> <QImage> <QPainter> <QWidget>)
    else()
        seamclock_precompile_test(${name} test "" ${plain})
    endif()
    if(left_out)
        return()
    endif()
    if(NOT T_TIMEOUT)
        set(T_TIMEOUT 120)
    endif()
    set(properties TIMEOUT ${T_TIMEOUT} COST ${T_TIMEOUT})   # what may take longest begins first
    if(T_LABELS)
        list(APPEND properties LABELS "${T_LABELS}")
        if(NOT TARGET labelled_${T_LABELS})
            add_custom_target(labelled_${T_LABELS})
        endif()
        add_dependencies(labelled_${T_LABELS} ${name})
    endif()
    if(T_SERIAL)
        list(APPEND properties RUN_SERIAL TRUE)   # judges true time: nothing runs beside it
    endif()
    gtest_discover_tests(${name} DISCOVERY_MODE PRE_TEST PROPERTIES ${properties})
endfunction()
