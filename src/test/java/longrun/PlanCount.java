package longrun;

/**
 * How many random plans a test tries. The system property {@code longrun.plans} is {@code many} for the numbers of the long
 * run, or a number for every test; without it each test tries what a build has time for. What is worked out a second way
 * has its numbers in {@code data/checked/second-ways.csv}.
 */
public enum PlanCount {
    /** Plans of which one thing is changed, lengthened, enlarged or removed. */
    LADDER(3_000, 10_000),
    /** Plans as a clumsy or hostile hand may send them. */
    HOSTILE(2_000, 20_000);

    private final int usual;
    private final int many;

    PlanCount(int usual, int many) {
        this.usual = usual;
        this.many = many;
    }

    /** Plans to try in this run. */
    public int plans() {
        return (int) of(usual, many);
    }

    /**
     * The number of this run.
     *
     * @param usual in each build
     * @param many in the long run
     */
    public static long of(long usual, long many) {
        String asked = System.getProperty("longrun.plans", "");
        return asked.isEmpty() ? usual : asked.equals("many") ? many : Long.parseLong(asked);
    }
}
