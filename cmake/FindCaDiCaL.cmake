# Finds CaDiCaL, the SAT solver, and makes the target cadical::cadical. No package of it comes with CMake files.
find_path(CaDiCaL_INCLUDE_DIR cadical.hpp)
find_library(CaDiCaL_LIBRARY cadical)
mark_as_advanced(CaDiCaL_INCLUDE_DIR CaDiCaL_LIBRARY)
include(FindPackageHandleStandardArgs)
find_package_handle_standard_args(CaDiCaL REQUIRED_VARS CaDiCaL_LIBRARY CaDiCaL_INCLUDE_DIR)
if(CaDiCaL_FOUND AND NOT TARGET cadical::cadical)
  add_library(cadical::cadical UNKNOWN IMPORTED)
  set_target_properties(cadical::cadical PROPERTIES
    IMPORTED_LOCATION "${CaDiCaL_LIBRARY}" INTERFACE_INCLUDE_DIRECTORIES "${CaDiCaL_INCLUDE_DIR}")
endif()
