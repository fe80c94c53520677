package longrun.drawing.route;

import java.util.Optional;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;

/**
 * Something that takes room on the sheet: a stroke of pipe, or a box.
 *
 * @param run the section it belongs to; -1 for none
 * @param stroke the stroke; empty for a box
 * @param box the room it takes
 * @param centre where pipes may meet a box
 */
record Thing(int run, Optional<Stroke> stroke, Box box, Point centre) {

    private static final double CLEAR = 10;

    static Thing of(int run, Stroke stroke) {
        return new Thing(run, Optional.of(stroke), stroke.box().grown(CLEAR / 2), stroke.a());
    }

    static Thing of(int run, Box box, Point centre) {
        return new Thing(run, Optional.empty(), box, centre);
    }

    /** How badly two things get in one another's way. */
    double clash(Thing o) {
        if (!box.overlaps(o.box)) {
            return 0;
        }
        if (stroke.isPresent() && o.stroke.isPresent()) {
            Stroke a = stroke.get();
            Stroke b = o.stroke.get();
            return a.sharesEnd(b) || a.distance(b) >= CLEAR ? 0 : 1;
        }
        if (stroke.isPresent()) {
            return o.met(this);
        }
        return o.stroke.isPresent() ? met(o) : 2;
    }

    private double met(Thing pipe) {
        Stroke s = pipe.stroke.orElseThrow();
        return s.endsAt(centre) || !s.meets(box) ? 0 : 1.5;
    }
}
