package longrun.plan.choice;

/** How an appliance takes air and gets rid of its products of combustion. */
public enum ApplianceVent implements Named {
    DIRECT,
    FAN,
    DRAFT,
    NONE
}
