# Builds one static library a layer and links it to exactly the layers that
# tests/lint/layers.txt allows, so a forbidden call fails at link time as well as in the
# layer check. The list is the single source of truth for both.

set(SALTLOFT_LAYER_FILE "${CMAKE_SOURCE_DIR}/tests/lint/layers.txt")
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${SALTLOFT_LAYER_FILE}")

function(saltloft_layer_target layer out)
  string(REPLACE "/" "_" name "${layer}")
  set(${out} "saltloft_${name}" PARENT_SCOPE)
endfunction()

# saltloft_add_layers(PREFIX): a library for each layer whose name starts with PREFIX/.
function(saltloft_add_layers prefix)
  file(STRINGS "${SALTLOFT_LAYER_FILE}" lines REGEX "^${prefix}/")
  foreach(line IN LISTS lines)
    string(REGEX MATCH "^([^:]+):(.*)$" _ "${line}")
    set(layer "${CMAKE_MATCH_1}")
    string(STRIP "${CMAKE_MATCH_2}" uses)
    separate_arguments(uses)
    saltloft_layer_target("${layer}" target)
    file(GLOB sources CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/${layer}/*.cpp")
    file(GLOB headers CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/${layer}/*.h")
    if(sources)
      add_library(${target} STATIC ${sources} ${headers})
      saltloft_apart(${sources})
      if(SALTLOFT_WATCH_CORE AND layer MATCHES "^core/")
        target_compile_options(${target} PRIVATE ${SALTLOFT_WATCH_CORE} -fno-omit-frame-pointer
          # With the instrumentation GCC 12 takes the standard library's own members for unset.
          $<$<CXX_COMPILER_ID:GNU>:-Wno-maybe-uninitialized>)
      endif()
      set(scope PUBLIC)
    else()
      add_library(${target} INTERFACE)
      set(scope INTERFACE)
    endif()
    target_include_directories(${target} ${scope} "${CMAKE_SOURCE_DIR}")
    target_link_libraries(${target} ${scope} saltloft_options)
    foreach(use IN LISTS uses)
      saltloft_layer_target("${use}" use_target)
      target_link_libraries(${target} ${scope} ${use_target})
    endforeach()
  endforeach()
endfunction()

# saltloft_layer_uses(LAYER lib...): third-party libraries of one layer. The scope is hidden
# here because a layer that has headers only so far is an INTERFACE library.
function(saltloft_layer_uses layer)
  saltloft_layer_target("${layer}" target)
  get_target_property(type ${target} TYPE)
  if(type STREQUAL "INTERFACE_LIBRARY")
    target_link_libraries(${target} INTERFACE ${ARGN})
  else()
    target_link_libraries(${target} PUBLIC ${ARGN})
  endif()
endfunction()
