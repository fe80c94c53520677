package longrun.rules.limit;

import longrun.plan.choice.Named;

/** What a rule says at one place. A missing fact is never a pass: it asks. */
public enum State implements Named {
    HOLDS,
    BROKEN,
    ASKS,
    NOT_FOR_THIS_PLAN
}
