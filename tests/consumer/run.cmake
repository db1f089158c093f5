# Builds and runs tests/consumer/project in the folder WORK; WAY says how it comes by cairn (see CMakeLists.txt here).
cmake_minimum_required(VERSION 3.25)

function(run)
  execute_process(COMMAND ${ARGN} COMMAND_ERROR_IS_FATAL ANY)
endfunction()

file(REMOVE_RECURSE ${WORK})
file(MAKE_DIRECTORY ${WORK})
# Blanks in the path, since other people's paths have them.
file(COPY ${SOURCES}/tests/consumer/project DESTINATION "${WORK}/somebody else")

set(how -G ${GENERATOR} -DCMAKE_CXX_COMPILER=${COMPILER} -DCMAKE_BUILD_TYPE=Debug)
if(WAY STREQUAL "installed")
  run(${CMAKE_COMMAND} --install ${BUILD} --config ${CONFIG} --prefix "${WORK}/first place")
  file(RENAME "${WORK}/first place" "${WORK}/moved here")
  file(GLOB_RECURSE written "${WORK}/moved here/${LIBRARIES}/cmake/cairn/*.cmake")
  foreach(file IN LISTS written)
    file(READ ${file} text)
    foreach(place IN ITEMS ${SOURCES} ${BUILD} ${WORK})
      string(FIND "${text}" "${place}" found)
      if(NOT found EQUAL -1)
        message(FATAL_ERROR "${file} names ${place}, which an installed package must not")
      endif()
    endforeach()
  endforeach()
  if(SANITIZE)
    string(APPEND FLAGS " -fsanitize=${SANITIZE}")
  endif()
  list(APPEND how "-DCMAKE_PREFIX_PATH=${WORK}/moved here" "-DCMAKE_CXX_FLAGS=${FLAGS}")
  run("${WORK}/moved here/bin/cairn" --version)
else()
  # Built without optimisation: what is asked is whether it builds, and time is short.
  list(APPEND how -DCAIRN_SOURCES=${SOURCES})
endif()

run(${CMAKE_COMMAND} -S "${WORK}/somebody else/project" -B "${WORK}/somebody else/build" ${how})
run(${CMAKE_COMMAND} --build "${WORK}/somebody else/build" --target consumer --parallel 2)

file(COPY ${SOURCES}/tests/consumer/append.yaml DESTINATION "${WORK}/somebody else")
execute_process(COMMAND "${WORK}/somebody else/build/consumer" WORKING_DIRECTORY "${WORK}/somebody else"
  OUTPUT_VARIABLE told RESULT_VARIABLE status)
message("${told}")
if(NOT status EQUAL 0 OR NOT told MATCHES "proved")
  message(FATAL_ERROR "the consumer ended with ${status}")
endif()
