package longrun.drawing.route;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import longrun.drawing.svg.Iso;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;
import longrun.drawing.svg.SvgText;
import longrun.plan.choice.Direction;

/** The outside walls where pipes come in, one a place they leave from. */
final class Walls {

    private Walls() {}

    /**
     * A piece of wall.
     *
     * @param corners the first once more at the end
     * @param names places where its name may stand, the best liked first
     */
    record Wall(List<Point> corners, List<Label> names) {

        String path() {
            return SvgText.line(corners.toArray(new Point[0]));
        }

        List<Stroke> edges() {
            List<Stroke> out = new ArrayList<>();
            for (int k = 1; k < corners.size(); k++) {
                out.add(new Stroke(corners.get(k - 1), corners.get(k)));
            }
            return out;
        }
    }

    static List<Wall> of(RouteModel model, Placing.Placed placed) {
        List<Wall> out = new ArrayList<>();
        Set<Integer> done = new HashSet<>();
        for (Run run : model.runs()) {
            Laid at = Objects.requireNonNull(placed.laid().get(run.index()));
            for (int k = 0; run.throughWall() && k < at.ways().size(); k++) {
                if (Iso.isLevel(at.ways().get(k))) {
                    if (done.add(run.above() < 0 ? -1 - model.startsAt(run.index()) : run.above())) {
                        out.add(wall(at.legs().get(k), at.ways().get(k)));
                    }
                    break;
                }
            }
        }
        return out;
    }

    private static Wall wall(Stroke leg, Direction way) {
        Point m = leg.a().along(leg.a().unit(leg.b()), Math.min(22, leg.a().distance(leg.b()) * 0.4));
        Direction across = Iso.across(way);
        Point v = Iso.of(across);
        Point a = m.along(v, -36).plus(0, -34);
        Point b = m.along(v, 36).plus(0, -34);
        double turned = across == Direction.NORTH ? -30 : 30;
        List<Label> names = new ArrayList<>();
        for (double down : new double[] {-15, 81, 15}) {
            for (double along : new double[] {0, -14, 14, -28, 28}) {
                names.add(new Label(
                        "",
                        List.of(List.of(new Label.Words("outside wall", "tq"))),
                        a.towards(b, 0.5).along(v, along).plus(0, down),
                        "middle",
                        turned,
                        List.of()));
            }
        }
        return new Wall(List.of(a, b, b.plus(0, 66), a.plus(0, 66), a), names);
    }
}
