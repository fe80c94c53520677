package longrun.drawing.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import longrun.Samples;
import longrun.drawing.svg.Box;
import longrun.drawing.svg.Stroke;
import longrun.plan.PlannedHouse;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.sizing.RandomPlans;
import org.junit.jupiter.api.Test;

/**
 * Words on a drawing that a person can read: none on another, none on a pipe. Measured with the letters the sheets bear and
 * with geometry that shares nothing with the drawing's own.
 */
class LabelsTest {

    private static final int HOUSES = 300;
    private static final int SECTIONS = 40;

    private static final Map<Boolean, Font> FACES =
            Map.of(false, face("/fonts/DejaVuSansCondensed.ttf"), true, face("/fonts/DejaVuSansCondensed-Bold.ttf"));
    private static final FontRenderContext SHEET = new FontRenderContext(new AffineTransform(), true, true);

    private static Font face(String path) {
        try (InputStream in = LabelsTest.class.getResourceAsStream(path)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (Exception e) {
            throw new AssertionError(path, e);
        }
    }

    /** A label as it will stand: a rectangle, turned where it is. */
    private record Standing(Label label, Shape shape, Rectangle2D bounds) {}

    private static double wide(List<Label.Words> line) {
        double sum = 8.0 * (line.size() - 1);
        for (Label.Words w : line) {
            boolean bold = w.pen().matches("ts|tb|tm");
            sum += FACES.get(bold)
                            .deriveFont((float) w.size())
                            .getStringBounds(w.text(), SHEET)
                            .getWidth()
                    + (w.pen().equals("tm") ? 16 : 0);
        }
        return sum;
    }

    private static Standing standing(Label l) {
        double wide = l.lines().stream().mapToDouble(LabelsTest::wide).max().orElse(0);
        double left = switch (l.anchor()) {
            case "end" -> l.at().x() - wide;
            case "middle" -> l.at().x() - wide / 2;
            default -> l.at().x();
        };
        // capitals stand some 10 px over the middle line of 14 px letters, descenders hang 4 px under their feet
        Rectangle2D upright = new Rectangle2D.Double(
                left, l.at().y() - 7, wide, 14 + (l.lines().size() - 1) * 19.0);
        Shape shape = l.turned() == 0
                ? upright
                : AffineTransform.getRotateInstance(Math.toRadians(l.turned()), l.at().x(), l.at().y())
                        .createTransformedShape(upright);
        return new Standing(l, shape, shape.getBounds2D());
    }

    private static boolean meet(Standing a, Standing b) {
        if (!a.bounds().intersects(b.bounds())) {
            return false;
        }
        Area both = new Area(a.shape());
        both.intersect(new Area(b.shape()));
        return !both.isEmpty();
    }

    private static boolean meets(Standing a, Stroke s) {
        Line2D line = new Line2D.Double(s.a().x(), s.a().y(), s.b().x(), s.b().y());
        if (!line.intersects(a.bounds())) {
            return false;
        }
        if (a.label().turned() == 0) {
            return true;
        }
        AffineTransform back = AffineTransform.getRotateInstance(
                -Math.toRadians(a.label().turned()),
                a.label().at().x(),
                a.label().at().y());
        java.awt.geom.Point2D p = back.transform(line.getP1(), null);
        java.awt.geom.Point2D q = back.transform(line.getP2(), null);
        return new Line2D.Double(p, q)
                .intersects(back.createTransformedShape(a.shape()).getBounds2D());
    }

    private static Drawn drawn(String json) {
        Review review = Reviewer.standard().review(Samples.plan(json), ReviewParts.PIPING);
        return Drawn.of(new RouteModel(review, DrawingUnits.CUSTOMARY), DrawingUnits.CUSTOMARY);
    }

    private static List<String> faults(Drawn drawn) {
        List<String> faults = new ArrayList<>();
        List<Standing> all = drawn.labels().stream().map(LabelsTest::standing).toList();
        for (int i = 0; i < all.size(); i++) {
            Standing a = all.get(i);
            String name = a.label().lines().toString();
            for (int k = 0; k < i; k++) {
                if (meet(a, all.get(k))) {
                    faults.add(name + " stands on " + all.get(k).label().lines());
                }
            }
            for (Stroke pipe : drawn.pipes()) {
                if (meets(a, pipe)) {
                    faults.add(name + " stands on a pipe");
                }
            }
            for (Box appliance : drawn.appliances()) {
                if (a.shape().intersects(appliance.left(), appliance.top(), appliance.width(), appliance.height())) {
                    faults.add(name + " stands on an appliance");
                }
            }
            for (Stroke leader : a.label().leaders()) {
                for (Standing b : all) {
                    if (b != a && meets(b, leader)) {
                        faults.add("the leader of " + name + " crosses "
                                + b.label().lines());
                    }
                }
            }
        }
        return faults;
    }

    /** A house of a number of sections: two storeys, every material and place, some legs without direction or length. */
    private static String house(long seed, int count) {
        Random random = new Random(seed);
        String[] ways = {"north ", "east ", "south ", "west ", "up ", "down ", ""};
        String[] kinds = {"range", "furnace", "on-demand-water-heater", "fireplace", "clothes-dryer"};
        String[] materials = {"steel", "copper", "csst", "pe-pipe"};
        String[] settings = {"indoors", "concealed", "outdoors", "underground"};
        List<String> sections = new ArrayList<>();
        List<String> appliances = new ArrayList<>();
        boolean[] feeds = new boolean[count];
        int[] last = new int[count];
        for (int i = 0; i < count; i++) {
            int from = i == 0 || random.nextInt(8) == 0 ? -1 : Math.max(0, i - 1 - random.nextInt(6));
            List<String> legs = new ArrayList<>();
            int before = from < 0 ? -1 : last[from];
            for (int k = 0; k <= random.nextInt(4); k++) {
                int way = random.nextInt(ways.length);
                boolean back = before >= 0 && before < 6 && way < 6 && way != before && opposite(way) == before;
                before = back ? before : way;
                legs.add("\"" + ways[before] + (1 + random.nextInt(60)) + " ft\"");
            }
            last[i] = before;
            if (from >= 0) {
                feeds[from] = true;
            }
            sections.add("{\"id\":\"S" + i + "\",\"from\":\"" + (from < 0 ? "R1" : "S" + from) + "\",\"material\":\""
                    + materials[random.nextInt(4)] + "\",\"setting\":\"" + settings[random.nextInt(4)] + "\""
                    + (random.nextInt(12) == 0 ? "" : ",\"legs\":[" + String.join(",", legs) + "]") + "}");
        }
        for (int i = 0; i < count; i++) {
            if (!feeds[i]) {
                appliances.add("{\"id\":\"a" + i + "\",\"name\":\""
                        + "Room heater, north-east ".substring(0, 4 + random.nextInt(20))
                        + "\",\"kind\":\"" + kinds[random.nextInt(5)] + "\",\"input\":\"" + (10 + random.nextInt(200))
                        + ",000 Btu/h\",\"fedBy\":\"S" + i + "\",\"connection\":[{\"part\":\"shutoff\"},{\"part\":"
                        + "\"union\"},{\"part\":\"sediment-trap\"},{\"part\":\"flexible-connector\"}]}");
            }
        }
        return "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"fedBy\":\"tank\",\"outlet\":\"11 in"
                + " w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}],\"tank\":{\"kind\":\"asme\",\"waterCapacity\":\"500 gal\"},"
                + "\"sections\":[" + String.join(",", sections) + "],\"appliances\":[" + String.join(",", appliances)
                + "]}";
    }

    private static int opposite(int way) {
        return way > 3 ? 9 - way : (way + 2) % 4;
    }

    @Test
    void noWordsStandOnOthersOrOnAPipeInThreeHundredHouses() {
        List<String> faults = new ArrayList<>();
        long most = 0;
        for (long seed = 1; seed <= HOUSES; seed++) {
            String json = seed % 3 == 0 ? RandomPlans.json(seed, SECTIONS) : house(seed, 1 + (int) (seed % SECTIONS));
            Drawn drawn = drawn(json);
            most = Math.max(most, drawn.pipes().size());
            long at = seed;
            faults(drawn).forEach(f -> faults.add("seed " + at + ": " + f));
        }
        assertThat(most).as("strokes of pipe in the fullest house").isGreaterThan(90);
        assertThat(faults).isEmpty();
    }

    /** A trunk of five sections with six branches to its right, each to an appliance of a long name. */
    private static String oneWay() {
        String[] names = {
            "Water heater in the utility room behind the kitchen", "Kitchen range with double oven",
            "Furnace of the upper floor in the attic", "Clothes dryer in the laundry",
            "Fireplace insert in the long living room", "Unit heater beside the workshop bench"
        };
        PlannedHouse house = PlannedHouse.empty()
                .regulator("R1", "first-stage", "tank", "10 psi", "1 psi")
                .regulator("R2", "second-stage", "Y1", "11 in w.c.", "0.5 in w.c.")
                .section("Y1", "R1", "pe-pipe", "down 2 ft;north 40 ft;up 2 ft", "'setting':'underground'");
        for (int i = 0; i < names.length; i++) {
            String trunk = "T" + Math.min(5, i + 1);
            if (i < 5) {
                house.section(trunk, i == 0 ? "R2" : "T" + i, "steel", (i == 0 ? "up 4 ft;" : "") + "north 6 ft");
            }
            house.section("B" + i, trunk, "steel", "east 8 ft;down 3 ft")
                    .appliance(
                            "a" + i,
                            "B" + i,
                            "60,000 Btu/h",
                            "'kind':'range','name':'" + names[i] + "'",
                            "'connection':[{'part':'shutoff'},{'part':'flexible-connector'}]");
        }
        return house.text();
    }

    @Test
    void twelveSectionsWhoseBranchesAllGoOneWayAreLetteredWhole() {
        Drawn drawn = drawn(oneWay());
        assertThat(faults(drawn)).isEmpty();
        List<String> through = new ArrayList<>();
        for (Label label : drawn.labels()) {
            for (Stroke s : label.leaders()) {
                Line2D line = new Line2D.Double(s.a().x(), s.a().y(), s.b().x(), s.b().y());
                for (Box b : drawn.appliances()) {
                    Box inside = b.grown(-4);
                    if (line.intersects(inside.left(), inside.top(), inside.width(), inside.height())) {
                        through.add(label.lines().toString());
                    }
                }
            }
        }
        assertThat(through).as("leaders through an appliance").isEmpty();
    }

    /** Whose a leader is, is seen where it runs from its words to their pipe and meets no other. */
    @Test
    void branchesThatAllGoOneWayStandSoFarApartThatNoLeaderCrossesAnotherOrAPipe() {
        Drawn drawn = drawn(oneWay());
        List<Label> led =
                drawn.labels().stream().filter(l -> !l.leaders().isEmpty()).toList();
        assertThat(led).hasSizeGreaterThan(12);
        List<String> crossed = new ArrayList<>();
        for (Label one : led) {
            for (Label other : led.subList(0, led.indexOf(one))) {
                if (one.leaders().stream()
                        .anyMatch(a -> other.leaders().stream().anyMatch(b -> line(a).intersectsLine(line(b))))) {
                    crossed.add(one.lines() + " and " + other.lines());
                }
            }
            Stroke last = one.leaders().get(one.leaders().size() - 1);
            drawn.pipes().stream()
                    .filter(p -> one.leaders().size() > 1 && line(p).intersectsLine(line(last)))
                    .forEach(p -> crossed.add(one.lines() + " and a pipe"));
        }
        assertThat(crossed).isEmpty();
    }

    private static Line2D line(Stroke s) {
        return new Line2D.Double(s.a().x(), s.a().y(), s.b().x(), s.b().y());
    }

    @Test
    void aDrawingALittleWiderThanItsSheetIsNotTheSameSheetTwice() {
        Review review = Reviewer.standard().review(Samples.plan(oneWay()), ReviewParts.PIPING);
        double whole = Schematic.parts(review, 1e6, 1e6).get(0).width();
        List<SheetPart> parts = Schematic.parts(review, whole - 10, 1e6);
        assertThat(parts).extracting(SheetPart::name).containsExactly("key", "A1", "A2");
        assertThat(parts.get(1).width()).isLessThan(0.7 * whole);
    }
}
