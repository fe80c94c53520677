package longrun.plan;

/** What happens to a condensing appliance's water. */
public enum Condensate implements Named {
    DRAINED,
    NEUTRALISED
}
