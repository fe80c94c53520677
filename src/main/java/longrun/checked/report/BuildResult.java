package longrun.checked.report;

/**
 * What a build found when it worked something out a second way.
 *
 * @param count how many houses or other things were compared
 * @param seed the seed of the first
 * @param worst the largest difference, in the unit of its {@link longrun.checked.SecondWay}
 * @param when the time of the test, as the build wrote it
 */
public record BuildResult(long count, long seed, double worst, String when) {}
