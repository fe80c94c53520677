package longrun.tank;

import java.util.List;
import java.util.Optional;
import longrun.origin.Figure;
import longrun.plan.choice.Named;

/**
 * What is asked of the tank at one time.
 *
 * @param name "everything firing", an occasion's name, or "mean of the design day"
 * @param btuh its load
 * @param status at the refill gauge, against the tank's two figures
 * @param holdMinutes how long it can be held from the refill gauge on, the level falling, from a tank as warm as the air or
 *     ground about it; unknown where it is held without end
 * @param withoutEnd whether it is held as long as there is liquid
 * @param mean whether it goes on all day
 * @param takes what a mean takes into account, in words
 */
public record Demand(
        String name,
        Figure btuh,
        Status status,
        Figure holdMinutes,
        boolean withoutEnd,
        boolean mean,
        List<String> takes) {

    /** Against the figure to plan with and against the most for a short time. */
    public enum Status implements Named {
        /** At or under the figure to plan with. */
        CARRIES,
        /** Over the figure to plan with, not over the most for a short time. */
        DOUBTFUL,
        /** Over the most. */
        SHORT,
        UNKNOWN
    }

    public Demand {
        takes = List.copyOf(takes);
    }

    /**
     * How long it is held, never more than it is: whole minutes under three hours, whole hours under ten days, else days;
     * empty where that is not known or there is no end.
     */
    public Optional<String> lasts() {
        return holdMinutes.isKnown() ? Optional.of(lasts(Math.floor(holdMinutes.number()))) : Optional.empty();
    }

    private static String lasts(double minutes) {
        if (minutes < 180) {
            return Figure.text(minutes, "min");
        }
        double hours = Math.floor(minutes / 60);
        return hours < 240 ? Figure.text(hours, "h") : Figure.text(Math.floor(hours / 24), "days");
    }

    /** The same as a mean over a day. */
    Demand overTheDay(List<String> words) {
        return new Demand(name, btuh, status, holdMinutes, withoutEnd, true, words);
    }
}
