# Truth of the demo swings (no picture is rendered).
if(PLUMBMARK_DEMO)
  target_link_libraries(test_reasoning PRIVATE plumbmark::demo)
  target_compile_definitions(test_reasoning PRIVATE PLUMBMARK_HAS_DEMO)
endif()
