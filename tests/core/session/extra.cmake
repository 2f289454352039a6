# Swings in space with known truth (no picture is rendered).
if(PLUMBMARK_DEMO)
  target_link_libraries(test_session PRIVATE plumbmark::demo)
  target_compile_definitions(test_session PRIVATE PLUMBMARK_HAS_DEMO)
endif()
