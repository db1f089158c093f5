# Install rules, and the package that find_package(cairn) finds.
include(CMakePackageConfigHelpers)

install(TARGETS cairn EXPORT cairn-targets ARCHIVE DESTINATION ${CMAKE_INSTALL_LIBDIR})
install(TARGETS cairn_program RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(DIRECTORY include/cairn DESTINATION ${CMAKE_INSTALL_INCLUDEDIR})
install(EXPORT cairn-targets NAMESPACE cairn:: DESTINATION ${CMAKE_INSTALL_LIBDIR}/cmake/cairn)

configure_package_config_file(cmake/cairn-config.cmake.in ${PROJECT_BINARY_DIR}/cairn-config.cmake
  INSTALL_DESTINATION ${CMAKE_INSTALL_LIBDIR}/cmake/cairn)
write_basic_package_version_file(${PROJECT_BINARY_DIR}/cairn-config-version.cmake COMPATIBILITY SameMinorVersion)
install(FILES ${PROJECT_BINARY_DIR}/cairn-config.cmake ${PROJECT_BINARY_DIR}/cairn-config-version.cmake
  cmake/FindCaDiCaL.cmake
  cmake/FindZ3.cmake
  DESTINATION ${CMAKE_INSTALL_LIBDIR}/cmake/cairn)
