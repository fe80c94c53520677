package longrun.checked.report;

/**
 * What a build found where something was worked out a second way.
 *
 * @param count houses compared
 * @param seed of the first
 * @param worst the largest difference, in the unit of its {@link longrun.checked.SecondWay}
 * @param when, as the build wrote it
 */
public record Found(long count, long seed, double worst, String when) {}
