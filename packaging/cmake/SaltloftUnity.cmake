# A whole build from nothing (tests/run.sh) compiles several sources of a target in one go
# (CMAKE_UNITY_BUILD): most of a compiler's time goes into the same headers again and again.
# Helpers in unnamed namespaces then meet their neighbours. Where two have the same name for good
# reason, one file is listed in apart.txt and compiled alone. A compiler's "redefinition" in a file
# named unity_N_cxx.cxx means: rename or share the helper, or list the file.
file(STRINGS "${CMAKE_CURRENT_LIST_DIR}/apart.txt" saltloft_apart REGEX "^[^#]")

# saltloft_apart(FILE...): marks those of the files that are compiled alone. Called where the
# target is made, since a source's properties belong to its folder.
function(saltloft_apart)
  foreach(file IN LISTS ARGN)
    file(RELATIVE_PATH name "${CMAKE_SOURCE_DIR}" "${file}")
    if(name IN_LIST saltloft_apart)
      set_source_files_properties("${file}" PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)
    endif()
  endforeach()
endfunction()
