# saltloft_embed(LAYER FUNCTION [BASE folder] file...): puts the files' bytes into the layer's
# library. With BASE the files' names keep their folders below it ("de/stock.md").
#
# The layer declares in a header of its own, in its own namespace:
#     std::span<const base::EmbeddedFile> FUNCTION();      // core/base/embedded.h
# and gets the files back, in the order given, each with its name (without folders) and text.
# The .cpp is made at build time from the files as they are then, so editing a file rebuilds it
# and a program never depends on where it was installed. Any bytes will do.
#
#     file(GLOB plans CONFIGURE_DEPENDS resources/plans/*.json)
#     saltloft_embed(core/planning built_in_plan_files ${plans})

set(SALTLOFT_EMBED_SCRIPT "${CMAKE_CURRENT_LIST_FILE}")

if(CMAKE_SCRIPT_MODE_FILE STREQUAL CMAKE_CURRENT_LIST_FILE)
  # Build time: cmake -DOUT= -DSPACE= -DFUNCTION= -DBASE= -DFILES=a|b -P SaltloftEmbed.cmake
  string(REPLACE "|" ";" FILES "${FILES}")
  set(text "// Made by packaging/cmake/SaltloftEmbed.cmake; edit the files, not this.\n")
  string(APPEND text "#include \"core/base/embedded.h\"\n\n#include <array>\n#include <span>\n\n")
  string(APPEND text "namespace ${SPACE} {\nstd::span<const core::base::EmbeddedFile> ${FUNCTION}();\n\n")
  set(entries "")
  set(number 0)
  foreach(file IN LISTS FILES)
    get_filename_component(name "${file}" NAME)
    if(BASE)
      file(RELATIVE_PATH name "${BASE}" "${file}")
    endif()
    # Bytes as hexadecimal: a file's own quotes, brackets and semicolons then mean nothing to
    # CMake or to the compiler.
    file(READ "${file}" hex HEX)
    string(REGEX REPLACE "([0-9a-f][0-9a-f])" "'\\\\x\\1'," bytes "${hex}")
    string(REGEX REPLACE "(('..[0-9a-f][0-9a-f]',){16})" "\\1\n    " bytes "${bytes}")
    string(APPEND text "static const char file_${number}[] = {\n    ${bytes}'\\0'};\n")
    string(APPEND entries
      "    core::base::EmbeddedFile{\"${name}\", {file_${number}, sizeof file_${number} - 1}},\n")
    math(EXPR number "${number} + 1")
  endforeach()
  string(APPEND text "\nstatic const std::array<core::base::EmbeddedFile, ${number}> files = {\n")
  string(APPEND text "${entries}};\n\nstd::span<const core::base::EmbeddedFile> ${FUNCTION}() {\n")
  string(APPEND text "    return files;\n}\n\n} // namespace ${SPACE}\n")
  file(WRITE "${OUT}" "${text}")
  return()
endif()

function(saltloft_embed layer function)
  cmake_parse_arguments(PARSE_ARGV 2 embed "" "BASE" "")
  set(files_in ${embed_UNPARSED_ARGUMENTS})
  saltloft_layer_target("${layer}" target)
  string(REPLACE "/" "::" space "${layer}")
  set(out "${CMAKE_BINARY_DIR}/embedded/${target}_${function}.cpp")
  list(JOIN files_in "|" files)
  add_custom_command(OUTPUT "${out}"
    COMMAND ${CMAKE_COMMAND} "-DOUT=${out}" "-DSPACE=${space}" "-DFUNCTION=${function}"
            "-DBASE=${embed_BASE}" "-DFILES=${files}" -P "${SALTLOFT_EMBED_SCRIPT}"
    DEPENDS ${files_in} "${SALTLOFT_EMBED_SCRIPT}"
    COMMENT "Embedding files of ${layer}" VERBATIM)
  target_sources(${target} PRIVATE "${out}")
  set_source_files_properties("${out}" PROPERTIES
    SKIP_AUTOMOC ON SKIP_UNITY_BUILD_INCLUSION ON)
endfunction()
