# GCC 12 sees uninitialised members inside std::regex when sanitizers are on; the file has none of its own.
target_compile_options(test_store PRIVATE -Wno-maybe-uninitialized)
