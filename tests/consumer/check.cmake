# cmake -D BUILD=… -D WORK=… -D VERSION=… -D FLAGS=… -P check.cmake: installs what was built and uses it from
# outside, with the same compiler flags (a library with sanitizers cannot be linked without them).
cmake_policy(VERSION 3.25)
file(REMOVE_RECURSE ${WORK})

function(must outcome)
  execute_process(COMMAND ${ARGN} RESULT_VARIABLE code OUTPUT_VARIABLE told ERROR_VARIABLE told)
  if((outcome STREQUAL "pass" AND NOT code EQUAL 0) OR (outcome STREQUAL "fail" AND code EQUAL 0))
    message(FATAL_ERROR "must ${outcome}: ${ARGN}\n${told}")
  endif()
  set(told "${told}" PARENT_SCOPE)
endfunction()

must(pass ${CMAKE_COMMAND} --install ${BUILD} --prefix ${WORK}/prefix)
must(pass ${WORK}/prefix/bin/berthwright --version)
string(STRIP "${told}" told)
if(NOT told STREQUAL "berthwright ${VERSION}")
  message(FATAL_ERROR "the installed program says it is '${told}', the package is ${VERSION}")
endif()
set(configure ${CMAKE_COMMAND} -G Ninja -S ${CMAKE_CURRENT_LIST_DIR} -D CMAKE_PREFIX_PATH=${WORK}/prefix
    "-DCMAKE_CXX_FLAGS=${FLAGS}")
must(pass ${configure} -B ${WORK}/build -D WANTED_VERSION=${VERSION})
must(pass ${CMAKE_COMMAND} --build ${WORK}/build)
must(pass ${WORK}/build/consumer)

# Until 1.0 every minor version may break its users, so another one must be refused.
must(fail ${configure} -B ${WORK}/newer -D WANTED_VERSION=99.0)
if(NOT told MATCHES "not +compatible|compatible +with +requested +version")
  message(FATAL_ERROR "refused for another reason:\n${told}")
endif()

file(READ ${WORK}/build/.ninja_deps deps)
if(deps MATCHES "/(CGAL|boost|nlohmann|CLI|cairo|freetype2|qpdf)/")
  message(FATAL_ERROR "a guest's header reached the consumer: ${CMAKE_MATCH_0}")
endif()
file(GLOB_RECURSE headers ${WORK}/prefix/include/*.h)
list(LENGTH headers count)
if(count LESS 20)
  message(FATAL_ERROR "only ${count} headers installed")
endif()
