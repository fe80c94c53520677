package longrun.hotwater.heater;

import longrun.hotwater.draw.DrawDay;
import longrun.hotwater.draw.DrawDay.Slice;
import org.jspecify.annotations.Nullable;

/** Runs a chain through days: steps of a draw's length where water is drawn, longer ones where the tank rests. */
public final class ChainDay {

    /** Minutes a resting tank is stepped by for each minute of a draw's step. */
    private static final double REST = 15;

    /** Told after each step of a draw. */
    public interface Watcher {
        /**
         * A step has been made.
         *
         * @param minute of the slice at which it began
         */
        void drawn(Chain chain, Slice slice, double minute, double minutes);
    }

    private final Chain chain;
    private final @Nullable StorageTank tank;
    private final double stepMin;

    public ChainDay(Chain chain, @Nullable StorageTank tank, double stepMin) {
        this.chain = chain;
        this.tank = tank;
        this.stepMin = stepMin;
    }

    /** Runs one day. */
    public void run(DrawDay day, double coldF, double roomF, Watcher watcher) {
        for (Slice s : day.slices()) {
            if (s.gpm() > 0) {
                draw(s, coldF, roomF, watcher);
            } else {
                rest(s.minutes(), roomF);
            }
        }
    }

    private void draw(Slice s, double coldF, double roomF, Watcher watcher) {
        int steps = steps(s.minutes(), stepMin);
        double minutes = s.minutes() / steps;
        for (int i = 0; i < steps; i++) {
            chain.draw(s.gpm(), s.useF(), coldF, minutes);
            if (tank != null) {
                tank.heat(minutes, roomF);
            }
            watcher.drawn(chain, s, i * minutes, minutes);
        }
    }

    private void rest(double minutes, double roomF) {
        if (tank == null) {
            return;
        }
        int steps = steps(minutes, REST * Math.min(1, stepMin));
        for (int i = 0; i < steps; i++) {
            tank.heat(minutes / steps, roomF);
        }
    }

    /** Steps no longer than wanted; a remainder of rounding is no step of its own. */
    private static int steps(double minutes, double longest) {
        return Math.max(1, (int) Math.ceil(minutes / longest - 1e-9));
    }
}
