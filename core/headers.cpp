// Nothing to compile: this file gives the targets that hold precompiled headers something to be built from.
