# What `cmake --install` puts where, besides the programs, and the Debian package.
include(GNUInstallDirs)
