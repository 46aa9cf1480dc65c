# cmake -DROOT=<source folder> -DOUT=<file> -P DataNames.cmake
#
# Writes one QT_TRANSLATE_NOOP("Data", "...") a line for every name in resources/facts and
# resources/plans that the window shows (ui/text/data_name.h). In the order of the files, with
# repetitions: packaging/languages.sh sorts. What is a title (a law, a source, a species of
# microbe) stays as it is in every language and is left out.

file(WRITE "${OUT}" "")

# say(JSON path...): the text there, if there is one.
function(say json)
  string(JSON text ERROR_VARIABLE missing GET "${json}" ${ARGN})
  if(missing OR text STREQUAL "")
    return()
  endif()
  string(REPLACE "\\" "\\\\" text "${text}")
  string(REPLACE "\"" "\\\"" text "${text}")
  file(APPEND "${OUT}" "QT_TRANSLATE_NOOP(\"Data\", \"${text}\"),\n")
endfunction()

# say_all(FILE list fields...): these fields of each entry of a file's list.
function(say_all file list)
  file(READ "${ROOT}/resources/facts/${file}" json)
  string(JSON count LENGTH "${json}" ${list})
  math(EXPR last "${count} - 1")
  foreach(i RANGE ${last})
    foreach(field IN LISTS ARGN)
      say("${json}" ${list} ${i} ${field})
    endforeach()
  endforeach()
endfunction()

say_all(ingredients.json ingredients name)
say_all(measures.json measures name)
say_all(limits.json sets name note)
say_all(hurdles.json hurdles name)
say_all(keeping.json rules name note)

file(GLOB plans "${ROOT}/resources/plans/*.json")
list(SORT plans)
foreach(plan IN LISTS plans)
  file(READ "${plan}" json)
  foreach(field name family species)
    say("${json}" ${field})
  endforeach()
  string(JSON count LENGTH "${json}" stages)
  math(EXPR last "${count} - 1")
  foreach(i RANGE ${last})
    say("${json}" stages ${i} name)
    say("${json}" stages ${i} note)
  endforeach()
endforeach()
