package longrun.drawing.route;

import java.util.ArrayList;
import java.util.List;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Iso;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;
import longrun.plan.choice.Direction;

/** Where a label may stand, best liked first. */
final class LabelPlaces {

    private static final double GAP = 14;
    private static final double[] ANGLES = {-60, -120, 60, 120, -35, -145, 35, 145, -90, 90, 0, 180};
    private static final double[] REACHES = {20, 36, 58, 86, 120, 160};

    /** A leader stands off from its pipe by more degrees than this. */
    private static final double SLANT = 12;

    private LabelPlaces() {}

    /** Beside a box: right, left, below, above. */
    static List<Label> beside(String key, List<List<Label.Words>> lines, Box box) {
        double x = (box.left() + box.right()) / 2;
        double middle = (box.top() + box.bottom()) / 2 - (lines.size() - 1) * 9.5;
        double last = (lines.size() - 1) * 19.0;
        List<Label> out = new ArrayList<>();
        for (double down : new double[] {0, -20, 20}) {
            out.add(new Label(key, lines, new Point(box.right() + 9, middle + down), "start", 0, List.of()));
            out.add(new Label(key, lines, new Point(box.left() - 9, middle + down), "end", 0, List.of()));
        }
        out.add(new Label(key, lines, new Point(x, box.bottom() + 15), "middle", 0, List.of()));
        out.add(new Label(key, lines, new Point(x, box.top() - 14 - last), "middle", 0, List.of()));
        for (double far : new double[] {30, 56, 90}) {
            for (int up : new int[] {-1, 1}) {
                double edge = up < 0 ? box.top() : box.bottom();
                double y = up < 0 ? edge - far - last : edge + far;
                double foot = up < 0 ? y + last : y;
                for (int side : new int[] {1, -1}) {
                    Point at = new Point(x + side * (far * 0.4 + 12), y);
                    Point end = new Point(x + side * (far * 0.4 + 8), foot);
                    out.add(new Label(
                            key,
                            lines,
                            at,
                            side > 0 ? "start" : "end",
                            0,
                            List.of(new Point(x + side * 4, edge), end)));
                }
            }
        }
        return out;
    }

    /** Below or above a box, else beside it. */
    static List<Label> under(String key, List<List<Label.Words>> lines, Box box) {
        List<Label> out = new ArrayList<>(beside(key, lines, box));
        java.util.Collections.rotate(out.subList(0, 8), 2);
        return out;
    }

    /** Along a leg, on either side of it. */
    static List<Label> along(String key, String text, Stroke leg, Direction way) {
        List<List<Label.Words>> lines = List.of(List.of(new Label.Words(text, "tq")));
        List<Label> out = new ArrayList<>();
        for (double share : new double[] {0.5, 0.36, 0.64, 0.22, 0.78}) {
            Point p = leg.a().towards(leg.b(), share);
            if (!Iso.isLevel(way)) {
                out.add(new Label(key, lines, p.plus(8, 0), "start", 0, List.of()));
                out.add(new Label(key, lines, p.plus(-8, 0), "end", 0, List.of()));
                continue;
            }
            double turned = way == Direction.NORTH || way == Direction.SOUTH ? -30 : 30;
            double c = Math.cos(Math.toRadians(turned)) * GAP;
            double s = Math.sin(Math.toRadians(turned)) * GAP;
            out.add(new Label(key, lines, p.plus(s, -c), "middle", turned, List.of()));
            out.add(new Label(key, lines, p.plus(-s, c), "middle", turned, List.of()));
        }
        return out;
    }

    /**
     * At the end of a leader from any leg of a section.
     *
     * @param few whether the nearest of them alone are wanted
     */
    static List<Label> led(String key, List<List<Label.Words>> lines, List<Stroke> legs, boolean few) {
        List<Label> out = new ArrayList<>();
        double width = Label.widest(lines);
        List<Stroke> longest = legs.stream()
                .sorted((a, b) -> Double.compare(b.a().distance(b.b()), a.a().distance(a.b())))
                .limit(few ? 1 : 3)
                .toList();
        for (double reach : few ? java.util.Arrays.copyOf(REACHES, 4) : REACHES) {
            for (Stroke leg : longest) {
                for (double share : new double[] {0.5, 0.3, 0.7}) {
                    Point from = leg.a().towards(leg.b(), share);
                    for (double angle : ANGLES) {
                        if (!isAlong(leg, angle)) {
                            out.add(led(key, lines, width, from, angle, reach));
                        }
                    }
                }
            }
        }
        return out;
    }

    /** Whether a leader would lie on its own leg and leave it at a tee, where it may be any pipe's. */
    private static boolean isAlong(Stroke leg, double angle) {
        double way = Math.toDegrees(
                Math.atan2(leg.b().y() - leg.a().y(), leg.b().x() - leg.a().x()));
        double apart = Math.abs((angle - way) % 180);
        return leg.a().distance(leg.b()) > 1 && Math.min(apart, 180 - apart) < SLANT;
    }

    /** The four sides of a box, for leaders to begin at. */
    static List<Stroke> edges(Box b) {
        Point a = new Point(b.left(), b.top());
        Point c = new Point(b.right(), b.bottom());
        Point right = new Point(b.right(), b.top());
        Point left = new Point(b.left(), b.bottom());
        return List.of(new Stroke(right, c), new Stroke(a, left), new Stroke(left, c), new Stroke(a, right));
    }

    private static Label led(
            String key, List<List<Label.Words>> lines, double width, Point from, double angle, double reach) {
        double a = Math.toRadians(angle);
        Point elbow = from.plus(Math.cos(a) * reach, Math.sin(a) * reach);
        int side = Math.cos(a) > -1e-9 ? 1 : -1;
        Point foot = elbow.plus(8.0 * side, 0);
        return new Label(
                key, lines, foot.plus(4.0 * side, 0), side > 0 ? "start" : "end", 0, List.of(from, elbow, foot), width);
    }
}
