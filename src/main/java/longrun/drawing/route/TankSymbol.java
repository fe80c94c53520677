package longrun.drawing.route;

import longrun.drawing.svg.Box;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.SvgText;

/** The tank, drawn up and to the left of the regulator that stands on it. */
final class TankSymbol {

    private TankSymbol() {}

    /** The room it takes when its regulator stands at a point. */
    static Box box(Point regulator) {
        return new Box(regulator.x() - 112, regulator.y() - 46, regulator.x() - 22, regulator.y() + 36);
    }

    static void write(SvgText out, Point regulator, boolean cylinders) {
        Point r = regulator;
        Point valve = r.plus(-52, -20);
        out.path("pn thick", SvgText.line(valve, r.plus(-20, -8), r));
        if (cylinders) {
            Point top = r.plus(-52, -14);
            out.path("pt", "M" + SvgText.n(top.x() - 16) + " " + SvgText.n(top.y() + 8) + "q0 -8 16 -8t16 8v38h-32Z");
            out.path("pt", "M" + SvgText.n(top.x() - 6) + " " + SvgText.n(top.y()) + "v-8h12v8");
            return;
        }
        // Two half circles joined by the tank's long sides, lying along north.
        Point a = r.plus(-90, 14);
        Point b = r.plus(-44, -12);
        Point u = a.unit(b);
        Point n = new Point(u.y() * 18, -u.x() * 18);
        Point a1 = a.plus(n.x(), n.y());
        Point b1 = b.plus(n.x(), n.y());
        Point b2 = b.plus(-n.x(), -n.y());
        Point a2 = a.plus(-n.x(), -n.y());
        out.path(
                "pt",
                SvgText.line(a1, b1) + "A18 18 0 0 1 " + SvgText.n(b2.x()) + " " + SvgText.n(b2.y())
                        + SvgText.line(b2, a2).replace('M', 'L') + "A18 18 0 0 1 " + SvgText.n(a1.x()) + " "
                        + SvgText.n(a1.y()) + "Z");
        Point lid = a.towards(b, 0.62).plus(0, -17);
        out.path("pt", "M" + SvgText.n(lid.x() - 8) + " " + SvgText.n(lid.y() + 4) + "v-6a8 4 0 0 1 16 0v6");
        out.path("pn", "M" + SvgText.n(a.x() + 4) + " " + SvgText.n(a.y() + 19) + "v8m-6 4l12 -7");
        out.path("pn", "M" + SvgText.n(b.x() + 4) + " " + SvgText.n(b.y() + 19) + "v8m-6 4l12 -7");
    }
}
