package longrun.drawing.tank;

import longrun.drawing.plot.PlotSvg;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Tank;
import longrun.quantity.Show;

/**
 * The tank seen from above, and what is measured from it: a drawing of what to measure, not to scale. Each measure carries
 * what was entered; one that nobody has said is named so, and what there is none of is not drawn as a length.
 */
public final class TankYard {

    private static final double WIDTH = 800;
    private static final double HEIGHT = 284;
    private static final double WALL = 232;

    private final PlotSvg svg = new PlotSvg(WIDTH, HEIGHT, "What is measured about the tank, from above");
    private final Tank tank;

    private TankYard(Tank tank) {
        this.tank = tank;
    }

    /** The picture of one tank's measures. */
    public static String svg(Tank tank) {
        return new TankYard(tank).draw();
    }

    private String draw() {
        svg.title("The tank from above: to the building " + said(tank.toBuilding()) + ", to the property line "
                + said(tank.toPropertyLine()) + ", to an opening below " + said(tank.toOpeningBelow())
                + ", to an air intake " + said(tank.toIntake()) + ", to anything that can light gas "
                + said(tank.toIgnition()) + ", between tanks " + said(tank.betweenTanks()) + ".");
        house();
        svg.line(752, 8, 752, 276, PlotSvg.PART, PlotSvg.Ink.INK, "14 4 2.5 4");
        svg.words(744, 20, "end", PlotSvg.Ink.QUIET, 14, false, "property line");
        measure(490, 152, 490, WALL, tank.toBuilding(), 500, 208, "start", "to the building ");
        measure(520, 134, 752, 134, tank.toPropertyLine(), 636, 126, "middle", "to the line ");
        measure(404, 152, 330, WALL, tank.toOpeningBelow(), 330, WALL + 40, "middle", "to an opening below ");
        measure(366, 145, 60, WALL - 4, tank.toIntake(), 236, 168, "end", "to an intake ");
        measure(366, 122, 132, 78, tank.toIgnition(), 132, 64, "middle", "to what can light gas ");
        if (tank.toIgnition().isKnown() || tank.toIgnition().isUnknown()) {
            spark(118, 78);
        }
        boolean several = tank.count().is(n -> n > 1) || tank.betweenTanks().isKnown();
        if (several) {
            shell(360, 36, PlotSvg.Ink.QUIET);
            measure(440, 118, 440, 70, tank.betweenTanks(), 450, 99, "start", "between tanks ");
        }
        shell(360, 118, PlotSvg.Ink.INK);
        svg.words(440, 140, "middle", PlotSvg.Ink.INK, 14, true, "tank");
        return svg.end();
    }

    private void house() {
        svg.line(24, WALL, 660, WALL, PlotSvg.PIPE, PlotSvg.Ink.INK, "");
        svg.words(600, WALL + 22, "middle", PlotSvg.Ink.QUIET, 14, false, "house");
        if (!tank.toOpeningBelow().isNone()) {
            svg.shape(
                    new double[] {306, 354, 354, 306},
                    new double[] {WALL - 4, WALL - 4, WALL + 4, WALL + 4},
                    PlotSvg.Ink.INK,
                    false);
            svg.words(330, WALL + 22, "middle", PlotSvg.Ink.QUIET, 14, false, "window, door, well");
        }
        if (!tank.toIntake().isNone()) {
            svg.circle(60, WALL, 7, PlotSvg.Ink.INK, false);
            svg.words(60, WALL + 22, "middle", PlotSvg.Ink.QUIET, 14, false, "air intake");
        }
    }

    private void shell(double x, double y, PlotSvg.Ink ink) {
        double[] px = new double[26];
        double[] py = new double[26];
        for (int i = 0; i <= 12; i++) {
            double a = Math.PI * i / 12;
            px[i] = x + 144 + 17 * Math.sin(a);
            py[i] = y + 17 - 17 * Math.cos(a);
            px[i + 13] = x + 16 - 17 * Math.sin(a);
            py[i + 13] = y + 17 + 17 * Math.cos(a);
        }
        svg.shape(px, py, ink, false);
    }

    private void spark(double x, double y) {
        svg.line(x - 9, y, x + 9, y, PlotSvg.PART, PlotSvg.Ink.INK, "");
        svg.line(x, y - 9, x, y + 9, PlotSvg.PART, PlotSvg.Ink.INK, "");
        svg.line(x - 6, y - 6, x + 6, y + 6, PlotSvg.PART, PlotSvg.Ink.INK, "");
        svg.line(x - 6, y + 6, x + 6, y - 6, PlotSvg.PART, PlotSvg.Ink.INK, "");
    }

    private void measure(
            double x1,
            double y1,
            double x2,
            double y2,
            Fact<Distance> fact,
            double tx,
            double ty,
            String anchor,
            String what) {
        if (!fact.isNone()) {
            svg.line(x1, y1, x2, y2, PlotSvg.LEADER, PlotSvg.Ink.QUIET, "");
        }
        svg.words(
                tx,
                ty,
                anchor,
                fact.isKnown() ? PlotSvg.Ink.INK : PlotSvg.Ink.QUIET,
                14,
                fact.isKnown(),
                what + said(fact));
    }

    static String said(Fact<Distance> fact) {
        return fact.fold(
                d -> (d.orMore() ? "more than " : "") + Show.plain(d.length().feet()) + " ft",
                () -> "there is none",
                () -> "not known");
    }
}
