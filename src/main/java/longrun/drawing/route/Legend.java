package longrun.drawing.route;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import longrun.drawing.svg.Iso;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.SvgText;
import longrun.piping.Outlet;
import longrun.plan.choice.Material;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.Setting;

/** What the strokes and symbols mean, as far as the drawing uses them; and which way north is. */
final class Legend {

    private static final double SAMPLE = 40;

    private final List<Item> items = new ArrayList<>();

    private record Item(String words, Setting setting, PartKind part, String other) {}

    Legend(RouteModel model) {
        Set<Setting> settings = EnumSet.noneOf(Setting.class);
        Set<PartKind> parts = EnumSet.noneOf(PartKind.class);
        Set<Material> materials = EnumSet.noneOf(Material.class);
        boolean freely = false;
        boolean unsaid = false;
        boolean capped = false;
        for (Run run : model.runs()) {
            run.setting().ifPresent(settings::add);
            run.material().ifPresent(materials::add);
            freely |= run.legs().stream().anyMatch(l -> l.way().isEmpty());
            unsaid |= run.setting().isEmpty();
            parts.addAll(run.parts());
            capped |= run.isAt(Outlet.Kind.CAPPED);
        }
        if (unsaid || settings.contains(Setting.INDOORS)) {
            String words = unsaid && settings.contains(Setting.INDOORS)
                    ? "indoors, or not said"
                    : unsaid ? "place not said" : "indoors";
            items.add(new Item(words, Setting.INDOORS, PartKind.UNION, ""));
        }
        for (Setting s : settings) {
            if (s != Setting.INDOORS) {
                items.add(new Item(words(s), s, PartKind.UNION, ""));
            }
        }
        if (materials.size() > 1 || !materials.contains(Material.STEEL)) {
            for (Material m : materials) {
                items.add(new Item(m.label(), Setting.INDOORS, PartKind.UNION, PipeStroke.mark(m)));
            }
        }
        for (PartKind p : parts) {
            if (p != PartKind.RIGID_PIPE) {
                items.add(new Item(p.written().replace('-', ' '), Setting.INDOORS, p, "part"));
            }
        }
        if (capped) {
            items.add(new Item("capped", Setting.INDOORS, PartKind.UNION, "cap"));
        }
        if (freely) {
            items.add(
                    new Item("any way: direction not entered, drawn freely", Setting.INDOORS, PartKind.UNION, "words"));
        }
        if (model.runs().stream().anyMatch(r -> Lettering.isStorey(model.heightFt(r)))) {
            items.add(new Item(
                    "up, down: above or below the start of the pipe", Setting.INDOORS, PartKind.UNION, "words"));
        }
    }

    private static String words(Setting s) {
        return s == Setting.UNDERGROUND ? "buried" : s.written();
    }

    private static double sample(Item item) {
        if (item.other().equals("words")) {
            return 0;
        }
        return item.other().equals("part") && item.part() != PartKind.FLEXIBLE_CONNECTOR ? 24 : SAMPLE;
    }

    /** Writes the rows and tells how far down they reach. */
    double write(SvgText out, double left, double top, double width) {
        double x = left;
        double y = top;
        for (Item item : items) {
            double wide = sample(item) + 8 + new Label.Words(item.words(), "tq").width() + 20;
            if (x > left && x + wide > left + width) {
                x = left;
                y += 28;
            }
            Point a = new Point(x, y);
            Point b = a.plus(sample(item), 0);
            if (item.other().equals("words")) {
                b = a.plus(-8, 0);
            } else if (item.other().equals("part")) {
                Hookup.part(out, item.part(), a, b, "p");
            } else {
                out.path("p" + PipeStroke.pen(item.setting()), SvgText.line(a, b));
                if (item.other().startsWith("m")) {
                    out.path(item.other(), SvgText.line(a, b));
                }
                if (item.other().equals("cap")) {
                    out.path("pn cap", SvgText.line(b.plus(0, -6), b.plus(0, 6)));
                }
            }
            out.words("tq", b.plus(8, 5), "start", 0, item.words());
            x += wide;
        }
        return items.isEmpty() ? top : y + 24;
    }

    static void north(SvgText out, Point at) {
        Point tip = at.along(Iso.of(longrun.plan.choice.Direction.NORTH), 34);
        String x = SvgText.n(tip.x());
        String y = SvgText.n(tip.y());
        out.path("pn", SvgText.line(at, tip) + "M" + x + " " + y + "l-9.5 1.2M" + x + " " + y + "l-4 8.6");
        Point across = at.towards(tip, 0.3);
        out.path("ld", SvgText.line(across.plus(-7, -4), across.plus(7, 4)));
        out.words("ts", tip.plus(6, 5), "start", 0, "N");
        out.words("tq", at.plus(0, 28), "start", 0, "north: the wall you chose");
    }
}
