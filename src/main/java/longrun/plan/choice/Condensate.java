package longrun.plan.choice;

/** What happens to a condensing appliance's water. */
public enum Condensate implements Named {
    DRAINED,
    NEUTRALISED
}
