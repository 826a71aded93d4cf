# What `cmake --install` puts where, besides the programs, and the Debian package that `cpack` makes.
include(GNUInstallDirs)

set(shared ${CMAKE_INSTALL_DATADIR}/basinbell)
foreach(folder demo schema)
    install(DIRECTORY resources/${folder} DESTINATION ${shared} FILES_MATCHING PATTERN *.json)
endforeach()
if(BUILD_APP)
    install(FILES resources/desktop/basinbell.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
    install(FILES resources/icons/basinbell.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
endif()

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME basinbell)
set(CPACK_PACKAGE_CONTACT "The Basinbell developers <basinbell@example.org>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "${PROJECT_DESCRIPTION}")
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Plugins are loaded by name, so the search for linked libraries does not find them.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6svg6, qt6-translations-l10n, fonts-dejavu-core, tzdata")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "speech-dispatcher-espeak-ng")
include(CPack)
