# The made swing finds its own key moments.
target_link_libraries(test_comparison PRIVATE plumbmark::swing)
# Pairs of swings in space with known truth (no picture is rendered).
if(PLUMBMARK_DEMO)
  target_link_libraries(test_comparison PRIVATE plumbmark::demo)
  target_compile_definitions(test_comparison PRIVATE PLUMBMARK_HAS_DEMO)
endif()
