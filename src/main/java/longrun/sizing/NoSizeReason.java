package longrun.sizing;

/** Why no size can be given. */
public enum NoSizeReason {
    /** No table for the material at the stage's pressure and drop. */
    NO_TABLE,
    /** The only table is held from memory throughout and not turned on. */
    MEMORY_TABLE,
    /** The person's own table is for another material, pressure or drop. */
    OWN_TABLE_DOES_NOT_FIT,
    /** The longest run is longer than the table. */
    RUN_LONGER_THAN_TABLE,
    /** The load is more than the largest available size carries. */
    LOAD_OVER_LARGEST
}
