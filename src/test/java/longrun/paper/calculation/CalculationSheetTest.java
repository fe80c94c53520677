package longrun.paper.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.Samples;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.paper.Papers;
import longrun.paper.page.Html;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.review.json.ReviewJson;
import longrun.words.OriginWords;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The calculation sheet says of each figure of the review what it was made from and how. */
class CalculationSheetTest {

    private static final String DEMO = Samples.resource("/longrun/data/demo/orchard-house.json");
    private static final Review REVIEW = Reviewer.standard().review(Samples.plan(DEMO), ReviewParts.ALL);
    private static final Printing PRINTING = printing(REVIEW, DEMO);

    private static Printing printing(Review review, String json) {
        return new Printing(review, json, LocalDate.of(2026, 10, 1), PaperSize.LETTER);
    }

    private static List<Element> rows(Review review, String json) {
        List<Element> out = new ArrayList<>();
        new CalculationSheet().body(printing(review, json)).forEach(e -> out.addAll(e.select(".calc tbody tr")));
        return out;
    }

    @Test
    void everyNumberOfTheReviewHasAnOrigin() {
        JsonNode json = ReviewJson.write(REVIEW, List.of(), false);
        List<String> numbers = new ArrayList<>();
        numbers(json, "", numbers);
        Map<String, Origin> origins = ReviewJson.origins(REVIEW);
        assertThat(origins.keySet()).containsAll(numbers);
        origins.forEach((pointer, origin) -> assertHow(pointer, origin));
    }

    private static void assertHow(String pointer, Origin origin) {
        assertThat(origin.how()).as(pointer + " " + origin.figure()).isNotBlank();
        assertThat(origin.value()).as(pointer + " " + origin.figure()).isNotBlank();
        origin.inputs().forEach(i -> assertHow(pointer, i));
    }

    private static void numbers(JsonNode node, String at, List<String> out) {
        if (node.isNumber()) {
            out.add(at);
        }
        node.fields().forEachRemaining(f -> numbers(f.getValue(), at + "/" + f.getKey(), out));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            numbers(node.get(i), at + "/" + i, out);
        }
    }

    @Test
    void everyFigureStandsOnThePdfWithWhatItWasMadeFromAndHow() throws Exception {
        String text;
        try (PDDocument read =
                Loader.loadPDF(Papers.findPdf("calculation", PRINTING).orElseThrow())) {
            text = dense(new PDFTextStripper().getText(read));
        }
        assertThat(text).doesNotContainIgnoringCase("degF", "on-demand-only", "storage-only");
        ReviewJson.numbers(REVIEW).forEach((pointer, number) -> {
            Origin origin = number.origin();
            assertThat(text)
                    .as(pointer)
                    .contains(dense(OriginWords.plain(origin.figure())), dense(OriginWords.plain(origin.how())));
            if (pointer.matches(".*/(degreeDays65|monthlyGal|mainsF|max.*Gpm)/.*")) {
                assertThat(text).as(pointer).contains(String.format(java.util.Locale.ROOT, "%,.1f", number.number()));
            } else if (pointer.matches(
                    ".*(lowest|highest)SettingInWc|/hotWater/events/\\d+/(?!propaneGal)[a-z]+[A-Z][A-Za-z]*")) {
                assertThat(text).as(pointer).contains(dense(NumberLines.rounded(number.number())));
            } else if (pointer.startsWith("/tank/curve/")) {
                assertThat(text).as(pointer).contains(Show.whole(number.number()));
            } else if (!pointer.contains("/events/")) {
                assertThat(text).as(pointer).contains(dense(OriginWords.plain(origin.value())));
            }
            origin.inputs()
                    .forEach(i -> assertThat(text)
                            .as(pointer)
                            .contains(
                                    dense(OriginWords.plain(i.figure()) + " " + OriginWords.plain(i.value())),
                                    dense(OriginWords.plain(i.how().replaceFirst("^entered.*", "")))));
        });
        REVIEW.tank()
                .orElseThrow()
                .curve()
                .forEach(p ->
                        assertThat(text).contains(Show.whole(p.capacityBtuh().orElseThrow())));
        REVIEW.fuel()
                .orElseThrow()
                .monthlyGal()
                .values()
                .forEach(gallons -> assertThat(text).contains(String.format(java.util.Locale.ROOT, "%,.1f", gallons)));
    }

    private static String dense(String text) {
        return text.replaceAll("\\s+", "");
    }

    @Test
    void aLetterIsToldUnderItsPartAndWhatHasNoneWasEntered() {
        Element body =
                Html.el("section", "", new CalculationSheet().body(PRINTING).toArray(Element[]::new));
        for (Element table : body.select("table.calc")) {
            List<String> letters = new ArrayList<>();
            for (Element e = table.nextElementSibling(); e != null && e.hasClass("src"); e = e.nextElementSibling()) {
                if (e.text().startsWith("(")) {
                    letters.add(e.text().substring(0, e.text().indexOf(')') + 1));
                }
            }
            for (Element row : table.select("tbody tr")) {
                String how = row.child(3).text();
                assertThat(how).as(row.text()).isNotBlank();
                if (how.matches("\\([a-z]+\\)")) {
                    assertThat(letters).as(row.text()).contains(how);
                }
                for (String input : row.child(2).text().split("; ")) {
                    java.util.regex.Matcher letter =
                            java.util.regex.Pattern.compile("\\([a-z]+\\)$").matcher(input);
                    if (letter.find()) {
                        assertThat(letters).as(row.text()).contains(letter.group());
                    }
                }
            }
        }
    }

    @Test
    void whatAFigureIsMadeFromStandsBeforeIt() {
        List<String> firsts =
                rows(REVIEW, DEMO).stream().map(r -> r.child(1).text()).toList();
        assertThat(firsts)
                .containsSubsequence("load of D", "load of C", "load of A", "load of R2", "load of Y1", "load of R1");
        assertThat(firsts)
                .containsSubsequence(
                        "A, measured",
                        "longest run, to range",
                        "row of A",
                        "what 1 in. carries",
                        "drop of section A",
                        "pressure at the inlet of heater",
                        "vapour keeping 20 psig",
                        "gallons a year");
        assertThat(firsts.indexOf("heating")).isLessThan(firsts.indexOf("gallons a year"));
    }

    /** 65,000 + 60,000 = 125,000; + 199,000 = 324,000; 20 + 12 + 15 = 47 ft: by hand from the plan of the demo. */
    @Test
    void theSumsAreThoseOfTheHand() {
        Map<String, String> figures = new java.util.HashMap<>();
        rows(REVIEW, DEMO)
                .forEach(r -> figures.putIfAbsent(
                        r.child(0).text() + " " + r.child(1).text(), r.child(4).text()));
        assertThat(figures)
                .containsEntry("C load of C", "125,000 Btu/h")
                .containsEntry("A load of A", "324,000 Btu/h")
                .containsEntry("R2 longest run, measured", "47.0 ft")
                .containsEntry("B share used by B", "86.1 %");
    }

    @Test
    void aFigureWithoutOriginGoesOnNoSheet() {
        Origin without = new Origin("load of X", "7 Btu/h", " ", Optional.of(Confidence.PRINT), List.of());
        Origin above = Origin.derived("sum", "7 Btu/h", "sum", Confidence.PRINT, List.of(without));
        CalculationPart.Line line = new CalculationPart.Line("/sections/0/loadBtuh", "X", without);
        assertThatThrownBy(() -> new CalculationTable().of("Loads", List.of(line)))
                .hasMessageContaining("load of X has no origin");
        assertThatThrownBy(() -> new CalculationTable()
                        .of("Loads", List.of(new CalculationPart.Line("/stages/0/loadBtuh", "R", above))))
                .hasMessageContaining("load of X has no origin");
    }

    @Test
    void aHouseThatIsHardlyBegunNamesWhatIsNotKnownAndShowsNoFigureForIt() {
        String json =
                "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R\"}],\"sections\":[{\"id\":\"A\",\"from\":\"R\","
                        + "\"legs\":[\"up 4 ft\"]},{\"id\":\"B\",\"from\":\"A\"}]}";
        Review review = Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL);
        List<Element> body = new CalculationSheet().body(printing(review, json));
        String text = Html.el("section", "", body.toArray(Element[]::new)).text();
        assertThat(text).contains("Not known yet for: B.", "Not known yet no figure above rests on it");
        assertThat(rows(review, json))
                .noneMatch(r -> r.child(4).text().matches("0( .*)?")
                        && r.child(1).text().startsWith("load"));
    }
}
