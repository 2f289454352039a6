# The made swing finds its own key moments.
target_link_libraries(test_comparison PRIVATE plumbmark::swing)
