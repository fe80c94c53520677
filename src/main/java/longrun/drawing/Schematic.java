package longrun.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.piping.Outlet;
import longrun.plan.Setting;
import longrun.review.Review;

/**
 * The pipe route as an isometric sketch: directions true, lengths not to scale and lettered in feet, strokes by where a
 * section lies (indoors solid, outdoors long dash, buried dash-dot, concealed dotted). Each section's strokes and words
 * stand in groups that carry its id in {@code data-key}. The same review always gives the same text.
 */
public final class Schematic {

    private static final double MARGIN = 12;
    private static final double LEAST_WIDTH = 760;

    private final RouteModel model;
    private final DrawingUnits units;
    private final Palette palette;

    private Schematic(Review review, DrawingUnits units, Palette palette) {
        this.model = new RouteModel(review, units);
        this.units = units;
        this.palette = palette;
    }

    /** The drawing as it stands on the page, in feet, with the section in hand in the accent colour. */
    public static String svg(Review review, Optional<String> selectedSectionId) {
        return svg(review, selectedSectionId, DrawingUnits.CUSTOMARY, Palette.SCREEN);
    }

    public static String svg(Review review, Optional<String> selectedSectionId, DrawingUnits units, Palette palette) {
        return new Schematic(review, units, palette).write(selectedSectionId.orElse(""));
    }

    private String write(String selected) {
        if (model.trees().isEmpty()) {
            return empty();
        }
        Placing.Placed placed = new Placing(model).place();
        Ground ground = new Ground();
        Box extent = room(placed, ground);
        SvgText body = new SvgText();
        SchematicWriter writer = new SchematicWriter(model, placed, selected, body);
        Labels labels = new Labels(ground);
        writer.walls(ground).forEach(l -> labels.place(List.of(l)));
        letter(placed, labels);
        writer.write();
        writer.write(labels.placed());
        for (Label l : labels.placed()) {
            extent = extent.with(l.room());
            for (Point p : l.leader()) {
                extent = extent.with(Box.around(p, 1, 1));
            }
        }
        extent = extent.grown(MARGIN);
        Box north = new Box(extent.left(), extent.top(), extent.left() + 190, extent.top() + 58);
        if (!ground.near(north).isEmpty()) {
            extent = extent.with(extent.moved(0, -62));
        }
        Legend.north(body, new Point(extent.left() + MARGIN, extent.top() + 26));
        double width = Math.max(LEAST_WIDTH, extent.width());
        double bottom = new Legend(model)
                .write(body, extent.left() + MARGIN, extent.bottom() + 24, Math.min(width, 1100) - 2 * MARGIN);
        return head(extent.left(), extent.top(), Math.ceil(width), Math.ceil(bottom - extent.top()), description())
                + body + "</svg>";
    }

    private String description() {
        return new Described(model, units).words();
    }

    private String empty() {
        SvgText body = new SvgText();
        body.words("tq", new Point(0, 24), "start", 0, "The drawing begins with the first section.");
        return head(0, 0, LEAST_WIDTH, 40, "The drawing of the pipe route, with no section in it yet.") + body
                + "</svg>";
    }

    private Box room(Placing.Placed placed, Ground ground) {
        Box extent = Box.around(new Point(0, 0), 1, 1);
        for (Run run : model.runs()) {
            Laid laid = java.util.Objects.requireNonNull(placed.laid().get(run.index()));
            for (Thing t : Layout.things(run, laid)) {
                ground.add(t);
                extent = extent.with(t.box());
            }
            marks(run, laid).forEach(ground::add);
            if (laid.hasHeader()) {
                ground.add(Thing.of(
                        run.index(), new Stroke(laid.node(), laid.corners().get(0))));
            }
        }
        for (int t = 0; t < placed.starts().size(); t++) {
            Point start = placed.starts().get(t);
            Box box = Box.around(start, 11, 14);
            ground.add(Thing.of(-1, box, start));
            extent = extent.with(box);
            if (model.trees().get(t).atTank()) {
                ground.add(Thing.of(-1, TankSymbol.box(start), start));
                extent = extent.with(TankSymbol.box(start));
            }
        }
        return extent;
    }

    /** Small marks on a pipe that words keep off: gaps of long legs, the ground's surface. */
    private static List<Thing> marks(Run run, Laid laid) {
        List<Thing> out = new ArrayList<>();
        for (int k = 0; k < run.legs().size(); k++) {
            boolean buried = run.setting().filter(s -> s == Setting.UNDERGROUND).isPresent()
                    && !Iso.isLevel(laid.ways().get(k));
            if (run.legs().get(k).feet() > SchematicWriter.LONG_FT || buried) {
                Point m = laid.legs().get(k).a().towards(laid.legs().get(k).b(), 0.5);
                out.add(Thing.of(-1, Box.around(m, 11, 11), m));
            }
        }
        return out;
    }

    private void letter(Placing.Placed placed, Labels labels) {
        for (int t = 0; t < placed.starts().size(); t++) {
            RouteModel.Tree tree = model.trees().get(t);
            Point start = placed.starts().get(t);
            if (tree.atTank()) {
                labels.place(LabelPlaces.under("", heading(model.tankWords()), TankSymbol.box(start)));
            }
            if (tree.regulator() >= 0) {
                regulator(labels, tree.regulator(), start);
            } else {
                labels.place(LabelPlaces.beside("", quiet(List.of("from where is not said")), Box.around(start, 8, 8)));
            }
        }
        List<Run> runs = model.runs();
        for (Run run : runs) {
            end(labels, run, java.util.Objects.requireNonNull(placed.laid().get(run.index())));
        }
        for (Run run : runs) {
            Laid laid = java.util.Objects.requireNonNull(placed.laid().get(run.index()));
            for (int k = 0; k < run.legs().size(); k++) {
                labels.place(LabelPlaces.along(
                        run.id(),
                        feet(run.legs().get(k)),
                        laid.legs().get(k),
                        laid.ways().get(k)));
            }
        }
        for (Run run : runs) {
            Laid laid = java.util.Objects.requireNonNull(placed.laid().get(run.index()));
            labels.place(LabelPlaces.led(run.id(), sectionWords(run), laid.legs()));
        }
    }

    private String feet(Run.Leg leg) {
        String length = leg.known() ? units.length(leg.feet()) : "length not known";
        return leg.way().isPresent() || !leg.known() ? length : length + ", any way";
    }

    private static List<List<Label.Words>> sectionWords(Run run) {
        List<List<Label.Words>> lines = new ArrayList<>();
        boolean sized = Character.isDigit(run.size().charAt(0)) || run.size().startsWith("EHD");
        lines.add(List.of(
                new Label.Words(RunWords.shortened(run.id()), "ti"), new Label.Words(run.size(), sized ? "tb" : "tq")));
        lines.add(List.of(new Label.Words(run.under(), "tq")));
        if (run.mustFix()) {
            lines.add(List.of(new Label.Words("Must fix", "tm")));
        }
        return lines;
    }

    private void end(Labels labels, Run run, Laid laid) {
        if (run.end().isEmpty()) {
            return;
        }
        if (run.isAt(Outlet.Kind.REGULATOR)) {
            regulator(labels, run.end().get().item(), laid.end());
            return;
        }
        List<List<Label.Words>> lines = new ArrayList<>();
        boolean appliance = run.isAt(Outlet.Kind.APPLIANCE);
        lines.add(List.of(new Label.Words(run.endName(), appliance ? "ts" : "")));
        lines.addAll(quiet(run.endNotes()));
        if (run.endMustFix() && appliance) {
            lines.add(List.of(new Label.Words("Must fix", "tm")));
        }
        Box box = appliance ? Layout.applianceBox(run, laid) : Box.around(laid.end(), 6, 6);
        labels.place(LabelPlaces.beside(run.id(), lines, box));
    }

    private void regulator(Labels labels, int regulator, Point at) {
        List<String> words = model.regulatorWords(regulator);
        List<List<Label.Words>> lines = new ArrayList<>();
        lines.add(List.of(new Label.Words(words.get(0), "")));
        lines.addAll(quiet(words.subList(1, words.size())));
        if (model.regulatorMustFix(regulator)) {
            lines.add(List.of(new Label.Words("Must fix", "tm")));
        }
        labels.place(LabelPlaces.beside("", lines, Box.around(at, 9, 12)));
    }

    private static List<List<Label.Words>> heading(List<String> lines) {
        return lines.stream().map(l -> List.of(new Label.Words(l, "ts"))).toList();
    }

    private static List<List<Label.Words>> quiet(List<String> lines) {
        return lines.stream().map(l -> List.of(new Label.Words(l, "tq"))).toList();
    }

    private String head(double left, double top, double width, double height, String description) {
        SvgText head = new SvgText();
        head.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "schematic",
                "role",
                "img",
                "width",
                SvgText.n(width),
                "height",
                SvgText.n(height),
                "viewBox",
                SvgText.n(left) + " " + SvgText.n(top) + " " + SvgText.n(width) + " " + SvgText.n(height));
        head.open("title").raw(SvgText.escaped(description)).close("title");
        return head.raw("<style>").raw(Pens.css(palette)).raw("</style>\n").toString();
    }
}
