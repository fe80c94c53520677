package longrun.piping;

/**
 * Where a run ends.
 *
 * @param kind what is there
 * @param id the appliance's or regulator's id, or the section's own where nothing hangs on it
 * @param section index of the section that ends there
 * @param item index of the appliance or regulator in the plan; of the section where nothing hangs on it
 */
public record Outlet(Kind kind, String id, int section, int item) {

    /** What a run can end at. */
    public enum Kind {
        APPLIANCE,
        REGULATOR,
        /** Closed for a future appliance. */
        CAPPED,
        /** Feeds nothing, and nobody has said that it is capped. */
        OPEN
    }
}
