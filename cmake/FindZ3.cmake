# Finds Z3, the theorem prover, and makes the target z3::libz3, which is also what Z3's own package calls it. That
# package is taken where there is one; Debian ships none.
find_package(Z3 CONFIG QUIET)
if(NOT TARGET z3::libz3)
  find_path(Z3_INCLUDE_DIR z3++.h PATH_SUFFIXES z3)
  find_library(Z3_LIBRARY z3)
  mark_as_advanced(Z3_INCLUDE_DIR Z3_LIBRARY)
  if(Z3_INCLUDE_DIR AND EXISTS "${Z3_INCLUDE_DIR}/z3_version.h")
    file(STRINGS "${Z3_INCLUDE_DIR}/z3_version.h" Z3_VERSION REGEX "Z3_FULL_VERSION")
    string(REGEX REPLACE "^[^\"]*\"([0-9.]+)\".*" "\\1" Z3_VERSION "${Z3_VERSION}")
  endif()
  include(FindPackageHandleStandardArgs)
  find_package_handle_standard_args(Z3 REQUIRED_VARS Z3_LIBRARY Z3_INCLUDE_DIR VERSION_VAR Z3_VERSION)
  if(Z3_FOUND)
    add_library(z3::libz3 UNKNOWN IMPORTED)
    set_target_properties(z3::libz3 PROPERTIES
      IMPORTED_LOCATION "${Z3_LIBRARY}" INTERFACE_INCLUDE_DIRECTORIES "${Z3_INCLUDE_DIR}")
  endif()
endif()
