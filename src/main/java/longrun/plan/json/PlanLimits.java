package longrun.plan.json;

/**
 * The most a plan may hold in one list before it is no house any more, and the most errors told at once.
 *
 * @param sections sections of pipe
 * @param appliances appliances
 * @param others entries of any other list or table of names
 * @param errors errors told, each with what to write instead
 */
public record PlanLimits(int sections, int appliances, int others, int errors) {

    /** Common practice: far beyond the largest house. */
    public static final PlanLimits HOUSE = new PlanLimits(2000, 500, 200, 1000);

    /** For plans that no person entered. */
    public static final PlanLimits NONE =
            new PlanLimits(Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE);

    public PlanLimits {
        if (sections < 1 || appliances < 1 || others < 1 || errors < 1) {
            throw new IllegalArgumentException("a limit is 1 or more");
        }
    }

    /** The most entries in the list at a pointer. */
    int entries(String pointer) {
        return switch (pointer) {
            case "/sections" -> sections;
            case "/appliances" -> appliances;
            default -> others;
        };
    }
}
