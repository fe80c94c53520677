package longrun.drawing.route;

import java.util.ArrayList;
import java.util.List;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Iso;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.SvgText;
import longrun.plan.choice.PartKind;

/** The parts between the end of the pipe and the appliance, drawn in flow order. */
public final class Hookup {

    private static final double BARE = 22;

    private Hookup() {}

    /** How far the appliance stands from the pipe's end, pixels. */
    static double length(List<PartKind> parts) {
        return parts.isEmpty()
                ? BARE
                : 10 + parts.stream().mapToDouble(Hookup::room).sum();
    }

    private static double room(PartKind part) {
        return switch (part) {
            case SHUTOFF -> 22;
            case UNION -> 14;
            case SEDIMENT_TRAP -> 16;
            case BUILT_IN_TRAP -> 12;
            case RIGID_PIPE -> 20;
            case FLEXIBLE_CONNECTOR -> 34;
        };
    }

    /** The room the parts take beside the line they stand on. */
    static List<Box> rooms(Run run, Laid laid) {
        List<Box> out = new ArrayList<>();
        Point at = laid.end().along(Iso.of(laid.hookWay()), 5);
        for (PartKind part : run.parts()) {
            Point next = at.along(Iso.of(laid.hookWay()), room(part));
            Point middle = at.towards(next, 0.5);
            if (part == PartKind.SEDIMENT_TRAP) {
                out.add(new Box(middle.x() - 6, middle.y(), middle.x() + 6, middle.y() + 17));
            } else if (part != PartKind.RIGID_PIPE) {
                out.add(Box.around(middle, 7, 7));
            }
            at = next;
        }
        return out;
    }

    /** Draws the parts from the pipe's end to the appliance. */
    static void write(SvgText out, Run run, Laid laid, String pen) {
        Point at = laid.end();
        Point u = Iso.of(laid.hookWay());
        if (run.parts().isEmpty()) {
            out.path("pn", SvgText.line(at, laid.hookEnd()));
            return;
        }
        Point next = at.along(u, 5);
        out.path(pen, SvgText.line(at, next));
        at = next;
        for (PartKind part : run.parts()) {
            next = at.along(u, room(part));
            part(out, part, at, next, pen);
            at = next;
        }
        out.path(pen, SvgText.line(at, laid.hookEnd()));
    }

    /** One part between two points. */
    static void part(SvgText out, PartKind part, Point at, Point next, String pen) {
        Point u = at.unit(next);
        Point across = new Point(-u.y(), u.x());
        switch (part) {
            case SHUTOFF -> {
                out.path(pen, SvgText.line(at, next));
                Point a = at.along(u, 4);
                Point b = next.along(u, -4);
                out.path(
                        "pt",
                        SvgText.line(a.along(across, 6), a.along(across, -6), b.along(across, 6), b.along(across, -6))
                                + "Z");
            }
            case UNION -> {
                out.path(pen, SvgText.line(at, next));
                for (double s : new double[] {0.35, 0.65}) {
                    Point p = at.towards(next, s);
                    out.path("pn", SvgText.line(p.along(across, 5), p.along(across, -5)));
                }
            }
            case SEDIMENT_TRAP -> {
                out.path(pen, SvgText.line(at, next));
                Point tee = at.towards(next, 0.5);
                Point foot = tee.plus(0, 16);
                out.path(pen, SvgText.line(tee, foot));
                out.path("pn cap", SvgText.line(foot.plus(-6, 0), foot.plus(6, 0)));
            }
            case BUILT_IN_TRAP -> {
                out.path(pen, SvgText.line(at, next));
                out.circle("pt", at.towards(next, 0.5), 3.5);
            }
            case RIGID_PIPE -> out.path(pen, SvgText.line(at, next));
            case FLEXIBLE_CONNECTOR -> out.path("pn", zigzag(at, next, across));
        }
    }

    private static String zigzag(Point at, Point next, Point across) {
        Point[] points = new Point[10];
        points[0] = at;
        for (int k = 1; k < 9; k++) {
            points[k] = at.towards(next, (k - 0.5) / 8).along(across, k % 2 == 0 ? 4 : -4);
        }
        points[9] = next;
        return SvgText.line(points);
    }
}
