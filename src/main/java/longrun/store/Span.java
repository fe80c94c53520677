package longrun.store;

/** The numbers of the first and last step kept of a house. */
record Span(int earliest, int latest) {}
