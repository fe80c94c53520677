package longrun.drawing.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import longrun.drawing.svg.Iso;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;
import longrun.drawing.svg.SvgText;
import longrun.piping.Outlet;
import longrun.plan.choice.Direction;
import longrun.plan.choice.Setting;
import longrun.words.Markup;

/** Writes what has been laid out. */
final class SchematicWriter {

    static final double LONG_FT = 40;

    private final RouteModel model;
    private final Placing.Placed placed;
    private final String selected;
    private final boolean onPaper;
    private final SvgText out;
    private final Map<Integer, Integer> leavingAt = new HashMap<>();

    /** @param selected the selected section on a page, or empty text for none; absent on paper */
    SchematicWriter(RouteModel model, Placing.Placed placed, Optional<String> selected, SvgText out) {
        this.model = model;
        this.placed = placed;
        this.selected = selected.orElse("");
        this.onPaper = selected.isEmpty();
        this.out = out;
        for (Run run : model.runs()) {
            leavingAt.merge(run.above(), 1, Integer::sum);
        }
    }

    /** On a page words have paper under them, where lines pass; on paper nothing passes. */
    private String halo() {
        return onPaper ? "" : " halo";
    }

    private Laid laid(Run run) {
        return java.util.Objects.requireNonNull(placed.laid().get(run.index()));
    }

    /** Pipes, regulators, appliances, tank; of the sections those that are wanted. */
    void write(Predicate<Run> shown) {
        for (int t = 0; t < placed.starts().size(); t++) {
            if (model.trees().get(t).atTank()) {
                TankSymbol.write(out, placed.starts().get(t), model.cylinders());
            }
        }
        List<Run> last = new ArrayList<>();
        for (RouteModel.Tree tree : model.trees()) {
            for (int r : tree.runs()) {
                Run run = model.runs().get(r);
                if (run.id().equals(selected)) {
                    last.add(run);
                } else if (shown.test(run)) {
                    section(run);
                }
            }
        }
        last.forEach(this::section);
        for (Run run : model.runs()) {
            if (shown.test(run)) {
                joint(run);
            }
        }
        for (int t = 0; t < placed.starts().size(); t++) {
            if (model.trees().get(t).regulator() >= 0) {
                regulator(placed.starts().get(t));
            } else {
                out.circle("pt", placed.starts().get(t), 4);
            }
        }
    }

    private void section(Run run) {
        Laid at = laid(run);
        boolean on = run.id().equals(selected);
        out.open("g", "data-key", run.id(), "class", on ? "sec on" : "sec");
        List<Point> all = new ArrayList<>();
        if (at.hasHeader()) {
            all.add(at.node());
        }
        all.addAll(at.corners());
        String d = SvgText.line(all.toArray(new Point[0]));
        if (!onPaper) {
            out.path("hit", d);
        }
        String sel = on ? " sel" : "";
        out.path("p" + run.setting().map(PipeStroke::pen).orElse("") + sel, d);
        String marked = run.material().map(PipeStroke::mark).orElse("");
        if (!marked.isEmpty()) {
            out.path(marked + (marked.equals("mcu") ? "" : sel), d);
        }
        for (int k = 0; k < run.legs().size(); k++) {
            if (run.legs().get(k).known() && run.legs().get(k).feet() > LONG_FT) {
                broken(at.legs().get(k));
            }
        }
        if (run.setting().filter(s -> s == Setting.UNDERGROUND).isPresent()) {
            ground(at);
        }
        if (run.isAt(Outlet.Kind.APPLIANCE)) {
            boolean behind = at.hookWay() == Direction.EAST || at.hookWay() == Direction.SOUTH;
            if (behind) {
                Hookup.write(out, run, at, "p" + sel);
            }
            appliance(run, at);
            if (!behind) {
                Hookup.write(out, run, at, "p" + sel);
            }
        } else if (run.isAt(Outlet.Kind.CAPPED)) {
            Stroke leg = at.legs().get(at.legs().size() - 1);
            Point u = leg.a().unit(leg.b());
            Point across = new Point(-u.y(), u.x());
            out.path("pn cap", SvgText.line(at.end().along(across, 7), at.end().along(across, -7)));
        } else if (run.isAt(Outlet.Kind.OPEN)) {
            out.circle("pt", at.end(), 4);
        }
        out.close("g");
    }

    private void joint(Run run) {
        Laid at = laid(run);
        if (run.isAt(Outlet.Kind.REGULATOR)) {
            regulator(at.end());
        } else if (leavingAt.getOrDefault(run.index(), 0) > 1) {
            out.circle("pf", at.end(), 4);
        } else if (leavingAt.getOrDefault(run.index(), 0) == 1) {
            out.circle("pf", at.end(), 2.5);
        }
        if (at.hasHeader()) {
            out.circle("pf", at.corners().get(0), 3);
        }
    }

    private void regulator(Point at) {
        out.circle("pt", at, 8);
        Point top = at.plus(0, -8);
        out.path("pn", SvgText.line(top, top.plus(0, -5)) + SvgText.line(top.plus(-8, -5), top.plus(8, -5)));
    }

    /** A gap in a long leg, between two waves. */
    private void broken(Stroke leg) {
        Point m = leg.a().towards(leg.b(), 0.5);
        Point u = leg.a().unit(leg.b());
        Point n = new Point(-u.y(), u.x());
        Point a = m.along(u, -4);
        Point b = m.along(u, 4);
        out.path("gap", SvgText.line(a.along(n, 7), b.along(n, 7), b.along(n, -7), a.along(n, -7)) + "Z");
        for (Point p : new Point[] {a, b}) {
            out.path("pn", wave(p.along(n, 10), p.along(n, -10), u));
        }
    }

    private static String wave(Point a, Point b, Point u) {
        Point c1 = a.towards(b, 0.25).along(u, 6);
        Point m = a.towards(b, 0.5);
        Point c2 = a.towards(b, 0.75).along(u, -6);
        return SvgText.line(a) + "Q" + pair(c1) + " " + pair(m) + "Q" + pair(c2) + " " + pair(b);
    }

    private static String pair(Point p) {
        return SvgText.n(p.x()) + " " + SvgText.n(p.y());
    }

    /** The ground's surface, where a buried pipe goes down and comes up. */
    private void ground(Laid at) {
        int last = at.ways().size() - 1;
        if (at.ways().get(0) == Direction.DOWN) {
            surface(at.legs().get(0));
        }
        if (last > 0 && at.ways().get(last) == Direction.UP) {
            surface(at.legs().get(last));
        }
    }

    private void surface(Stroke leg) {
        Point m = leg.a().towards(leg.b(), 0.5);
        Point u = Iso.of(Direction.NORTH);
        StringBuilder d = new StringBuilder(SvgText.line(m.along(u, -13), m.along(u, 13)));
        for (double s : new double[] {-9, 0, 9}) {
            Point p = m.along(u, s);
            d.append(SvgText.line(p, p.plus(1, 7)));
        }
        out.path("ld", d.toString());
    }

    private void appliance(Run run, Laid at) {
        double e = Layout.APPLIANCE_HALF;
        Point c = at.appliance();
        Point east = Iso.of(Direction.EAST);
        Point north = Iso.of(Direction.NORTH);
        double h = run.endHeight() / 2;
        Point left = c.along(east, -e).along(north, -e);
        Point near = c.along(east, e).along(north, -e);
        Point right = c.along(east, e).along(north, e);
        Point far = c.along(east, -e).along(north, e);
        out.path(
                "pt",
                SvgText.line(
                                left.plus(0, h),
                                near.plus(0, h),
                                right.plus(0, h),
                                right.plus(0, -h),
                                far.plus(0, -h),
                                left.plus(0, -h))
                        + "Z");
        out.path(
                "pn",
                SvgText.line(left.plus(0, -h), near.plus(0, -h), right.plus(0, -h))
                        + SvgText.line(near.plus(0, -h), near.plus(0, h)));
    }

    /** All words, leaders first. */
    void write(List<Label> labels) {
        for (Label label : labels) {
            boolean on = !label.key().isEmpty() && label.key().equals(selected);
            out.open("g", "data-key", label.key(), "class", on ? "words on" : "words");
            if (!label.leader().isEmpty()) {
                out.path("ld", SvgText.line(label.leader().toArray(new Point[0])));
            }
            for (int k = 0; k < label.lines().size(); k++) {
                line(label, k, on);
            }
            out.close("g");
        }
    }

    private void line(Label label, int k, boolean on) {
        List<Label.Words> words = label.lines().get(k);
        double y = label.lineY(k) + 5;
        if (label.turned() != 0) {
            double a = Math.toRadians(label.turned());
            Point base = label.at().plus(-Math.sin(a) * 5, Math.cos(a) * 5);
            out.words(
                    "tq" + halo(), base, "middle", label.turned(), words.get(0).text());
            return;
        }
        if (words.get(0).pen().equals("tm")) {
            double left = label.anchor().equals("end")
                    ? label.at().x() - Label.width(words)
                    : label.at().x();
            out.path("must", "M" + SvgText.n(left) + " " + SvgText.n(y - 10) + "h11v11h-11Z");
            out.words(
                    "tm" + halo(),
                    new Point(left + 16, y),
                    "start",
                    0,
                    words.get(0).text());
            return;
        }
        out.open(
                "text",
                "class",
                halo().strip(),
                "x",
                SvgText.n(label.at().x()),
                "y",
                SvgText.n(y),
                "text-anchor",
                label.anchor());
        for (int w = 0; w < words.size(); w++) {
            String pen = words.get(w).pen() + (on ? " ta" : "");
            if (w == 0) {
                out.open("tspan", "class", pen.strip());
            } else {
                out.open("tspan", "class", pen.strip(), "dx", "8");
            }
            out.raw(Markup.escaped(words.get(w).text())).raw("</tspan>");
        }
        out.raw("</text>");
    }
}
