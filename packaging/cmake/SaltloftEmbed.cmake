# saltloft_embed(LAYER FOLDER): compiles the text files of FOLDER into the layer's library as
# raw strings, found by name through LAYER's embedded(). The program then needs no data path,
# and a changed file rebuilds one small source.
function(saltloft_embed layer folder)
  saltloft_layer_target("${layer}" target)
  string(REPLACE "/" "::" namespace "${layer}")
  file(GLOB files CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/${folder}/*.json")
  set(table "")
  foreach(path IN LISTS files)
    get_filename_component(name "${path}" NAME)
    file(READ "${path}" text)
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${path}")
    string(APPEND table
      "    if (file_name == \"${name}\") {\n        return R\"saltloft(${text})saltloft\";\n    }\n")
  endforeach()
  string(REPLACE "/" "_" stem "${layer}")
  set(source "${CMAKE_BINARY_DIR}/embedded/${stem}.cpp")
  file(CONFIGURE OUTPUT "${source}" CONTENT
"#include \"${layer}/embedded.h\"

namespace ${namespace} {

std::string_view embedded(std::string_view file_name) {
@table@    return {};
}

} // namespace ${namespace}
" @ONLY)
  target_sources(${target} PRIVATE "${source}")
endfunction()
