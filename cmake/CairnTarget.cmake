# What every target of the project shares: the language, the warnings and the sanitizers. None of it is exported.

if(PROJECT_IS_TOP_LEVEL AND NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES)
  set(CMAKE_BUILD_TYPE Release CACHE STRING "How to build" FORCE)
endif()

add_library(cairn_settings INTERFACE)
target_compile_features(cairn_settings INTERFACE cxx_std_20)
target_compile_options(cairn_settings INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wnon-virtual-dtor -Woverloaded-virtual
  # GCC 12 warns of copies that overlap and of comparisons that read too far inside its own std::string and std::vector,
  # where there are none.
  "$<$<AND:$<CXX_COMPILER_ID:GNU>,$<VERSION_LESS:$<CXX_COMPILER_VERSION>,13>>:-Wno-restrict;-Wno-stringop-overread>"
  $<$<BOOL:${CAIRN_WERROR}>:-Werror>)
if(CAIRN_SANITIZE)
  target_compile_options(cairn_settings INTERFACE -fsanitize=${CAIRN_SANITIZE} -fno-omit-frame-pointer
                         -fno-sanitize-recover=all)
  target_link_options(cairn_settings INTERFACE -fsanitize=${CAIRN_SANITIZE})
endif()

# cairn_floor(NAME SOURCES file... BELOW floor... LIBRARIES target...)
# One floor of src/ as an object library that sees the public headers, itself and the floors below it.
function(cairn_floor name)
  cmake_parse_arguments(arg "" "" "SOURCES;BELOW;LIBRARIES" ${ARGN})
  add_library(cairn_${name} OBJECT ${arg_SOURCES})
  target_include_directories(cairn_${name} PUBLIC
    ${PROJECT_SOURCE_DIR}/include ${PROJECT_SOURCE_DIR}/src)
  list(TRANSFORM arg_BELOW PREPEND cairn_)
  target_link_libraries(cairn_${name} PUBLIC ${arg_BELOW} PRIVATE cairn_settings ${arg_LIBRARIES})
  set_target_properties(cairn_${name} PROPERTIES POSITION_INDEPENDENT_CODE ON)
  set_property(GLOBAL APPEND PROPERTY CAIRN_FLOORS ${name})
endfunction()
