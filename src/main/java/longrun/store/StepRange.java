package longrun.store;

/**
 * Which steps of a house are kept.
 *
 * @param earliest the number of the first step kept
 * @param latest the number of the last step kept
 */
record StepRange(int earliest, int latest) {}
