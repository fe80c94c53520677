package longrun.plan.choice;

/** What whoever decides has said of a finding. */
public enum Says implements Named {
    ACCEPTED,
    REFUSED
}
