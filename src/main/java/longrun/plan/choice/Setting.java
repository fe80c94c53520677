package longrun.plan.choice;

/** Where a section or a regulator is. */
public enum Setting implements Named {
    INDOORS,
    OUTDOORS,
    UNDERGROUND,
    CONCEALED
}
