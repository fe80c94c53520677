package longrun.plan;

/** Where a section or a regulator is. */
public enum Setting implements Named {
    INDOORS,
    OUTDOORS,
    UNDERGROUND,
    CONCEALED
}
