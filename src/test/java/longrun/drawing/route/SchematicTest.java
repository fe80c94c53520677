package longrun.drawing.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import longrun.Samples;
import longrun.drawing.plot.Golden;
import longrun.drawing.svg.Palette;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.sizing.RandomPlans;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The drawing of the pipe route: what stands in it, and that it stays as a person has looked at it. */
class SchematicTest {

    private static Review review(String json) {
        return Reviewer.standard().review(Samples.plan(json), ReviewParts.PIPING);
    }

    private static String drawn(String json, String selected) {
        return Schematic.svg(review(json), Optional.of(selected).filter(s -> !s.isEmpty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-house", "manifold-house"})
    void drawingStaysAsItWasLookedAt(String house) {
        String now = drawn(Samples.text("drawing/" + house + ".json"), house.startsWith("orchard") ? "B" : "");
        Golden.same(house + ".svg", now);
    }

    @Test
    void drawingThatWasGivenUpTakesNoMoreTime() {
        Review review = review(Samples.text("drawing/orchard-house.json"));
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> Schematic.svg(review, Optional.empty())).isInstanceOf(CancellationException.class);
        } finally {
            Thread.interrupted();
        }
    }

    @Test
    void sameReviewIsDrawnTheSameInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            String first = drawn(Samples.text("drawing/orchard-house.json"), "C");
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(drawn(Samples.text("drawing/orchard-house.json"), "C")).isEqualTo(first);
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(drawn(Samples.text("drawing/orchard-house.json"), "C")).isEqualTo(first);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void sectionInHandAloneIsInTheAccent() {
        String none = drawn(Samples.text("drawing/orchard-house.json"), "");
        String svg = drawn(Samples.text("drawing/orchard-house.json"), "C");
        assertThat(none).doesNotContain(" sel\"").doesNotContain("ta\"");
        assertThat(svg).contains("<g data-key=\"C\" class=\"sec on\">");
        assertThat(count(svg, "class=\"sec on\"")).isEqualTo(1);
    }

    @Test
    void choosingASectionMovesNothing() {
        String pens = "class=\"[^\"]*\"";
        String b = drawn(Samples.text("drawing/manifold-house.json"), "B").replaceAll(pens, "");
        String none = drawn(Samples.text("drawing/manifold-house.json"), "").replaceAll(pens, "");
        assertThat(sorted(b)).isEqualTo(sorted(none));
    }

    private static List<String> sorted(String svg) {
        return java.util.Arrays.stream(svg.split("\n")).sorted().toList();
    }

    @Test
    void strokesTellWhereAPipeLies() {
        String svg = drawn(Samples.text("drawing/orchard-house.json"), "");
        assertThat(svg)
                .contains("class=\"p bur\"")
                .contains("class=\"p con\"")
                .contains(">buried<")
                .contains(">concealed<");
        assertThat(drawn(Samples.text("drawing/manifold-house.json"), ""))
                .contains("class=\"p out\"")
                .contains(">outdoors<");
    }

    @Test
    void everySectionIsLetteredWithSizeLoadAndFeet() {
        String svg = drawn(Samples.text("drawing/orchard-house.json"), "");
        assertThat(svg)
                .contains(">199,000 Btu/h<")
                .contains(">65,000 Btu/h, rough<")
                .contains(">PE, 324,000 Btu/h<")
                .contains(">58 ft<")
                .contains(">Second stage<")
                .contains(">11 in. w.c.<")
                .contains(">Tank, 500 gal<")
                .contains("<title>The pipe route drawn in isometric");
        for (String id : List.of("Y1", "A", "B", "C", "D", "E")) {
            assertThat(count(svg, "<g data-key=\"" + id + "\" class=\"sec\">")).isEqualTo(1);
        }
    }

    @Test
    void materialsAreToldApartByTheMarksOnTheirStrokesAndInTheLegend() {
        assertThat(drawn(Samples.text("drawing/orchard-house.json"), ""))
                .contains("class=\"mpe\"")
                .contains(">polyethylene pipe<")
                .contains(">steel<");
        assertThat(drawn(Samples.text("drawing/manifold-house.json"), ""))
                .contains("class=\"mcs\"")
                .contains("class=\"mcu\"")
                .contains(">CSST<");
    }

    @Test
    void whatEndsAStoreyAwayFromTheStartOfItsPipeSaysHowFar() {
        String upstairs =
                "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"fedBy\":\"tank\"}],\"sections\":["
                        + "{\"id\":\"A\",\"from\":\"R1\",\"legs\":[\"up 2 ft\",\"east 9 ft\"]},"
                        + "{\"id\":\"B\",\"from\":\"A\",\"legs\":[\"up 9 ft\",\"north 4 ft\"]},"
                        + "{\"id\":\"C\",\"from\":\"A\",\"legs\":[\"6 ft\",\"up 9 ft\"]}]}";
        String svg = drawn(upstairs, "");
        // 2 ft and 9 ft; C goes nobody knows where first
        assertThat(svg)
                .contains(">load not known, 11 ft up<")
                .contains(">up, down: above or below the start of the pipe<");
        assertThat(count(svg, "ft up<")).isEqualTo(1);
    }

    @Test
    void aDrawingThatGoesOutOfTheHouseBearsItsTitleBlock() {
        String sheet = Schematic.sheet(review(Samples.text("drawing/orchard-house.json")));
        assertThat(sheet)
                .contains(">Orchard house<", ">Not to scale, legs as paced<", ">Sized, not approved.")
                .contains(">N<", ">north: the wall you chose<")
                .doesNotContain("var(--");
    }

    @Test
    void aLongNameStandsWholeInLines() {
        String name = "Water heater behind the pantry door, the one the people before us left";
        String svg =
                drawn(Samples.text("drawing/orchard-house.json").replace("\"Water heater\"", "\"" + name + "\""), "");
        assertThat(svg).contains(">Water heater behind the<", ">pantry door, the one the<", ">people before us left<");
    }

    @Test
    void legWithoutDirectionSaysSo() {
        assertThat(drawn(Samples.text("drawing/manifold-house.json"), ""))
                .contains(">14 ft, any way<")
                .contains(">length not known<")
                .contains(">not sized<");
    }

    @Test
    void metricDrawingIsLetteredInMetres() {
        Review review = review(Samples.text("drawing/orchard-house.json"));
        String svg = Schematic.svg(review, Optional.empty(), DrawingUnits.METRIC, Palette.PAPER);
        assertThat(svg)
                .contains(">17.68 m<")
                .contains(">58.3 kW<")
                .contains(">2.74 kPa<")
                .doesNotContain("var(--");
    }

    @Test
    void hostileNamesStayWords() throws Exception {
        String svg = drawn(
                "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R<1>\",\"fedBy\":\"tank\",\"name\":\"</title><script>alert(1)</script>\"}],\"sections\":[{\"id\":\"A\\\"><script>\",\"from\":\"R<1>\",\"legs\":[\"north"
                        + " 4 ft\"]}],\"appliances\":[{\"id\":\"x\",\"fedBy\":\"A\\\"><script>\",\"name\":\"<img src=x"
                        + " onerror=alert(1)>\\u0000\\u0001 "
                        + "long ".repeat(400)
                        + "\"}],\"tank\":{\"kind\":\"asme\"}}",
                "A\"><script>");
        assertThat(svg).doesNotContain("<script").doesNotContain("<img");
        Document document = parsed(svg);
        assertThat(document.getElementsByTagName("title").getLength()).isEqualTo(1);
        assertThat(svg.length()).isLessThan(20_000);
    }

    @Test
    void emptyPlanSaysThatNothingIsDrawn() throws Exception {
        String svg = drawn("{\"format\":\"longrun-plan/1\"}", "");
        parsed(svg);
        assertThat(svg).contains("The drawing begins with the first section.");
    }

    @Test
    void randomPlansAreDrawnWithinBounds() throws Exception {
        for (long seed = 1; seed <= 300; seed++) {
            int most = seed % 10 == 0 ? 60 : 20;
            String svg;
            try {
                svg = drawn(RandomPlans.json(seed, most), "S0");
            } catch (RuntimeException e) {
                throw new AssertionError("seed " + seed, e);
            }
            assertThat(svg).as("seed %d", seed).doesNotContain("NaN").doesNotContain("Infinity");
            parsed(svg);
            Matcher size = Pattern.compile("width=\"(\\d+)\" height=\"(\\d+)\"").matcher(svg);
            assertThat(size.find()).isTrue();
            assertThat(Integer.parseInt(size.group(1))).as("seed %d", seed).isLessThan(40_000);
            assertThat(Integer.parseInt(size.group(2))).as("seed %d", seed).isLessThan(40_000);
            assertThat(svg.length()).as("seed %d", seed).isLessThan(900_000);
        }
    }

    @Test
    void twoHundredSectionsAreDrawnWithinASecond() {
        Review review = review(wide(200));
        Schematic.svg(review, Optional.empty());
        long start = System.nanoTime();
        String svg = Schematic.svg(review, Optional.of("S3"));
        long ms = (System.nanoTime() - start) / 1_000_000;
        System.out.println("200 sections drawn in " + ms + " ms, " + svg.length() / 1000 + " kB");
        assertThat(ms).isLessThan(2000); // some 300 ms on an idle computer
        assertThat(count(svg, " class=\"sec")).isEqualTo(200);
    }

    @Test
    void theLargestHouseTheServiceTakesIsDrawnWhileItsAskerWaits() {
        Review review = review(wide(2000, 500, 6));
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        String svg = Schematic.sheet(review);
        long ms = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1_000_000;
        System.out.println("2000 sections drawn in " + ms + " ms of processor, " + svg.length() / 1000 + " kB");
        assertThat(ms).isLessThan(5000); // under a second on an idle computer; it once took 25 s
        assertThat(count(svg, " class=\"sec")).isEqualTo(2000);
    }

    @Test
    void deepestPlanIsDrawnWithoutRecursion() {
        StringBuilder sections = new StringBuilder();
        for (int i = 0; i < 3000; i++) {
            sections.append(i == 0 ? "" : ",")
                    .append("{\"id\":\"S" + i + "\",\"from\":\"" + (i == 0 ? "R1" : "S" + (i - 1)) + "\",\"legs\":[\""
                            + (i % 2 == 0 ? "north" : "east") + " 3 ft\"]}");
        }
        assertThat(drawn(
                        "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"fedBy\":\"tank\"}],\"sections\":["
                                + sections + "]}",
                        ""))
                .contains("data-key=\"S2999\"");
    }

    /** A trunk with a branch at each section and an appliance at each branch. */
    private static String wide(int sections) {
        return wide(sections, sections, 6);
    }

    /** @param apart feet between two branches: the nearer they are, the fuller the drawing */
    private static String wide(int sections, int most, int apart) {
        List<String> made = new ArrayList<>();
        List<String> appliances = new ArrayList<>();
        for (int i = 0; i < sections; i += 2) {
            String from = i == 0 ? "R1" : "S" + (i - 2);
            made.add("{\"id\":\"S" + i + "\",\"from\":\"" + from + "\",\"material\":\"steel\",\"legs\":[\"east " + apart
                    + " ft\"]}");
            made.add("{\"id\":\"S" + (i + 1) + "\",\"from\":\"S" + i
                    + "\",\"material\":\"steel\",\"setting\":\"indoors\",\"legs\":[\""
                    + (i % 4 == 0 ? "north" : "south")
                    + " 8 ft\",\"down 3 ft\"]}");
            if (appliances.size() == most) {
                continue;
            }
            appliances.add(
                    "{\"id\":\"a" + i + "\",\"kind\":\"space-heater\",\"input\":\"5000 Btu/h\",\"fedBy\":\"S" + (i + 1)
                            + "\",\"connection\":[{\"part\":\"shutoff\"},{\"part\":\"sediment-trap\"},{\"part\":\"flexible-connector\"}]}");
        }
        return "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"fedBy\":\"tank\",\"outlet\":\"11 in"
                + " w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}],\"sections\":["
                + String.join(",", made) + "],\"appliances\":[" + String.join(",", appliances) + "]}";
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
