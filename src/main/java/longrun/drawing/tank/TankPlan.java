package longrun.drawing.tank;

import java.util.Optional;
import longrun.drawing.svg.Plate;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.SvgText;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Tank;
import longrun.plan.choice.Orientation;
import longrun.plan.choice.Placement;
import longrun.plan.choice.TankKind;
import longrun.quantity.Show;

/**
 * The tank's place from above, small, for the supplier's sheet: what each distance is measured to, with its figure or a
 * blank to fill in. Not to scale; on which side each thing lies is drawn freely, since a plan does not say it.
 */
public final class TankPlan {

    private static final double WIDTH = 326;
    private static final double HEIGHT = 156;
    private static final double WALL = 206;
    private static final String BLANK = "____ ft";

    private final Optional<Tank> tank;
    private final SvgText out;

    private TankPlan(Optional<Tank> tank, String description) {
        this.tank = tank;
        this.out = Plate.open(WIDTH, HEIGHT, description);
    }

    /**
     * The plan as SVG, black on white.
     *
     * @param tank the first tank of the house; without one there are blanks alone
     * @param name what stands under the tank, such as "500 gal"
     * @param line the pipe that leaves it, such as "62 ft, buried"; empty where none does
     * @param buried whether that pipe lies in the ground
     */
    public static String svg(Optional<Tank> tank, String name, String line, boolean buried) {
        return new TankPlan(tank, description(tank, name, line)).draw(name, line, buried);
    }

    private static String description(Optional<Tank> tank, String name, String line) {
        return "The tank from above, " + name + ": to the building " + said(distance(tank, Tank::toBuilding))
                + ", to the property line " + said(distance(tank, Tank::toPropertyLine)) + ", to an opening below its"
                + " relief valve " + said(distance(tank, Tank::toOpeningBelow)) + ", to an air intake "
                + said(distance(tank, Tank::toIntake)) + ", to a source of ignition "
                + said(distance(tank, Tank::toIgnition)) + (line.isEmpty() ? "" : "; pipe to the house " + line)
                + ". Not to scale, sides drawn freely.";
    }

    private String draw(String name, String line, boolean buried) {
        out.path("p", "M84 12H" + SvgText.n(WALL) + "V" + SvgText.n(HEIGHT - 2));
        hatch();
        out.words("v", new Point(WALL + 14, 17), "start", 0, "House");
        out.path("pn bur", "M12 4V" + SvgText.n(HEIGHT - 2));
        out.words("k", new Point(18, 78), "start", 0, "property");
        out.words("k", new Point(18, 91), "start", 0, "line");
        if (!line.isEmpty()) {
            out.path("p" + (buried ? " bur" : " out"), "M132 94V28");
            out.circle("pt", new Point(132, 22), 6);
            words("v", new Point(125, 62), "end", line);
        }
        shell();
        words("big", new Point(132, 139), "middle", name);
        words("k", new Point(132, 153), "middle", lies());
        measure(new Point(12, 107), new Point(97, 107), Tank::toPropertyLine, new Point(54, 102), "middle");
        measure(new Point(167, 107), new Point(WALL - 2, 107), Tank::toBuilding, new Point(186, 122), "middle");
        beside(40, Tank::toIntake, "air intake", 50);
        beside(88, Tank::toOpeningBelow, "opening below relief", 92);
        ignition();
        out.path("pn", "M48 30V10M48 10l-4 7M48 10l4 7");
        out.words("v", new Point(54, 20), "start", 0, "N");
        return out + "</svg>";
    }

    /** Words with paper under them, where a line may pass behind. */
    private void words(String pen, Point at, String anchor, String text) {
        out.words(pen + " halo", at, anchor, 0, text);
    }

    private void hatch() {
        StringBuilder d = new StringBuilder();
        for (double x = 88; x < WALL; x += 8) {
            d.append(SvgText.line(new Point(x, 10), new Point(x + 6, 4)));
        }
        for (double y = 14; y < HEIGHT - 8; y += 8) {
            d.append(SvgText.line(new Point(WALL + 2, y + 6), new Point(WALL + 8, y)));
        }
        out.path("ld", d.toString());
    }

    private void shell() {
        boolean round = tank.filter(t ->
                        t.orientation().is(Orientation.VERTICAL) || t.kind().is(TankKind.CYLINDER))
                .isPresent();
        boolean underground =
                tank.filter(t -> t.placement().is(Placement.UNDERGROUND)).isPresent();
        if (round) {
            out.path("pt", "M116 107a16 16 0 0 0 32 0a16 16 0 0 0 -32 0z");
            out.path("ld", "M97 107H116M148 107H167");
        } else {
            out.path("pt" + (underground ? " bur" : ""), "M110 94a13 13 0 0 0 0 26h44a13 13 0 0 0 0 -26z");
        }
        out.circle("pt", new Point(132, 107), 4);
    }

    private String lies() {
        if (tank.isEmpty()) {
            return "not planned yet";
        }
        String orientation =
                tank.get().orientation().findValue().map(o -> o.written()).orElse("");
        String place = tank.get()
                .placement()
                .findValue()
                .map(p -> p.written().replace('-', ' '))
                .orElse("place not said");
        return orientation.isEmpty() ? place : orientation + ", " + place;
    }

    private void measure(
            Point from, Point to, java.util.function.Function<Tank, Fact<Distance>> what, Point at, String anchor) {
        out.path("ld", SvgText.line(from, to) + arrow(from, to) + arrow(to, from));
        words("v", at, anchor, said(distance(tank, what)));
    }

    private static String arrow(Point tip, Point from) {
        Point u = tip.unit(from);
        Point across = new Point(-u.y(), u.x());
        Point back = tip.along(u, 5);
        return SvgText.line(back.along(across, 3), tip, back.along(across, -3));
    }

    /** Something in the wall, with a line to it from the relief valve, unless there is none of it. */
    private void beside(double y, java.util.function.Function<Tank, Fact<Distance>> what, String name, double letter) {
        Fact<Distance> fact = distance(tank, what);
        if (!fact.isNone()) {
            Point there = new Point(WALL - 4, y + 7);
            out.path("ld", SvgText.line(new Point(132, 107).along(new Point(132, 107).unit(there), 4), there));
            out.path("pt", "M" + SvgText.n(WALL - 4) + " " + SvgText.n(y) + "h8v14h-8z");
        }
        out.words("k", new Point(WALL + 14, letter - 6), "start", 0, name);
        out.words("v", new Point(WALL + 14, letter + 8), "start", 0, said(fact));
    }

    private void ignition() {
        Fact<Distance> fact = distance(tank, Tank::toIgnition);
        if (!fact.isNone()) {
            Point there = new Point(WALL + 20, 133);
            out.path("ld", SvgText.line(new Point(135, 110), there));
            out.path("pn", "M" + SvgText.n(there.x() - 5) + " 133h10m-5 -5v10m-3.5 -8.5l7 7m0 -7l-7 7");
        }
        out.words("k", new Point(WALL + 32, 130), "start", 0, "ignition source");
        out.words("v", new Point(WALL + 32, 144), "start", 0, said(fact));
    }

    private static Fact<Distance> distance(
            Optional<Tank> tank, java.util.function.Function<Tank, Fact<Distance>> what) {
        return tank.map(what).orElse(Fact.unknown());
    }

    private static String said(Fact<Distance> fact) {
        return fact.fold(
                d -> (d.orMore() ? "over " : "") + Show.plain(d.length().feet()) + " ft", () -> "none", () -> BLANK);
    }
}
