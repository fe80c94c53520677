package longrun.tank;

import longrun.origin.Figure;
import longrun.plan.Named;

/**
 * What is asked of the tank at one time.
 *
 * @param name "everything firing", an occasion's name, or "mean of the design day"
 * @param btuh its load
 * @param status against the tank's two figures
 * @param holdMinutes how long a load over the rule can be held from a tank as warm as the air; unknown where it is not short
 * @param withoutEnd whether a load over the figure is held all the same as long as there is liquid
 * @param mean whether it goes on all day
 */
public record Demand(String name, Figure btuh, Status status, Figure holdMinutes, boolean withoutEnd, boolean mean) {

    /** Against the figure at 20 psig and against the rule. */
    public enum Status implements Named {
        /** At or under the figure at 20 psig. */
        CARRIES,
        /** Over the figure at 20 psig, not over the rule. */
        DOUBTFUL,
        /** Over the rule. */
        SHORT,
        UNKNOWN
    }
}
