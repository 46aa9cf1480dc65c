# saltloft_languages(OUT): compiles resources/languages/*.ts at build time and names the .qm files,
# with the list of complete languages, in OUT. They go into the program by saltloft_embed, so that
# a language cannot be missing where the program was copied to.
#
# Unfinished texts are left out: English is better than a guess.
function(saltloft_languages out)
  file(GLOB texts CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/resources/languages/*.ts")
  set(made "")
  foreach(ts IN LISTS texts)
    get_filename_component(name "${ts}" NAME_WE)
    set(qm "${CMAKE_BINARY_DIR}/languages/${name}.qm")
    add_custom_command(OUTPUT "${qm}"
      COMMAND ${CMAKE_COMMAND} -E make_directory "${CMAKE_BINARY_DIR}/languages"
      COMMAND Qt6::lrelease -silent -nounfinished "${ts}" -qm "${qm}"
      DEPENDS "${ts}" COMMENT "Compiling ${name}.ts" VERBATIM)
    list(APPEND made "${qm}")
  endforeach()
  set(${out} ${made} "${CMAKE_SOURCE_DIR}/resources/languages/complete.txt" PARENT_SCOPE)
endfunction()
