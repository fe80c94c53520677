package longrun.plan;

/** What propane is kept in. */
public enum TankKind implements Named {
    ASME,
    CYLINDER
}
