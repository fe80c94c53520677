package longrun.hotwater.draw;

/**
 * Hot water drawn at one time of day.
 *
 * @param startMin minute of the day it begins, 0 to 1,440
 * @param minutes it lasts
 * @param gpm flow at the fixture, mixed
 * @param useF temperature it is used at
 */
public record Draw(String name, double startMin, double minutes, double gpm, double useF) {

    /** Gallons at the fixture. */
    public double gallons() {
        return minutes * gpm;
    }

    /** The same draw, longer or shorter; where it would outlast the day, all day at a larger flow. */
    Draw scaled(double factor) {
        double longer = minutes * factor;
        return longer <= DrawDay.DAY
                ? new Draw(name, startMin, longer, gpm, useF)
                : new Draw(name, startMin, DrawDay.DAY, gpm * longer / DrawDay.DAY, useF);
    }
}
