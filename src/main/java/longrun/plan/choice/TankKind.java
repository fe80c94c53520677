package longrun.plan.choice;

/** What propane is kept in. */
public enum TankKind implements Named {
    ASME,
    CYLINDER
}
