package longrun.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longrun.Samples;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.paper.page.SheetFile;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.words.QuestionsByWhom;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SupplierSheetTest {

    private static final String DEMO = Samples.resource("/longrun/data/demo/orchard-house.json");
    private static final String HOSTILE = "<script>alert(1)</script> \\u05e9\\u05dc\\u05d5\\u05dd \\ud83d\\ude00 ";

    private static Printing printing(String json, PaperSize size) {
        Review review = Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL);
        return new Printing(review, json, LocalDate.of(2026, 10, 1), size);
    }

    private static String text(String json) throws Exception {
        try (PDDocument pdf =
                Loader.loadPDF(SheetFile.pdf(printing(json, PaperSize.LETTER), List.of(new SupplierSheet())))) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    @Test
    void theSupplierReadsSettingVapourTankDeliveryAndLeakCheckAsNumberedQuestions() throws Exception {
        assertThat(text(DEMO))
                .containsSubsequence("1 Setting", "2 Vapour", "3 Tank", "4 Delivery", "5 Leak check")
                .contains("324,000 Btu/h", "10.25 to 11.67 in. w.c.", "500 gal", "8 \u00B0F", "30 %")
                .contains("Call by", "7 days from call to truck", "Gas can kill.");
    }

    @Test
    void fromThisSheetAloneOneCanSayTankRegulatorsSettingAndHowOftenToCome() throws Exception {
        assertThat(text(DEMO))
                .contains("Tank planned 500 gal", "Setting wanted, R2, in. w.c. 10.25 to 11.67")
                .contains("R1, first stage outdoors 10 psi tank", "324,000 1,100,000 29")
                .contains("R2, second stage outdoors, under eaves 11 in. w.c.")
                .contains("A fill lasts, coldest month 42 days", "Call by 20 November 2026")
                // two figures and their doubt in one sentence
                .contains(
                        "218,900 Btu/h while it keeps 20 psig, 432,700 Btu/h at most for a short time; printed tables")
                .contains("Jan Feb Mar", "186 154 127 72 33 7 5 6 18 65 113 170")
                .contains("Not known yet: \u25CB how far the tank stands from a source of ignition");
    }

    @Test
    void aHouseWithoutFiguresLeavesBlanksAndNeverAZero() throws Exception {
        String words = text(
                "{\"format\":\"longrun-plan/1\",\"name\":\"Empty\",\"tank\":{\"kind\":\"asme\"},\"appliances\":[{\"id\":\"range\",\"kind\":\"range\"}]}");
        assertThat(words)
                .contains("______", "Not known yet", "not all uses are known yet")
                .doesNotContain(" 0 Btu/h", " 0 gal", " 0 days", " 0.0");
    }

    /** A house with more of everything than a page holds, each name as long and as strange as a person can make it. */
    static String crowded() {
        List<String> regulators = new ArrayList<>();
        List<String> sections = new ArrayList<>();
        List<String> appliances = new ArrayList<>();
        String name = HOSTILE + "W".repeat(260);
        for (int i = 0; i < 14; i++) {
            String id = "R" + i + "W".repeat(40);
            regulators.add(
                    "{\"id\":\"" + id + "\",\"name\":\"" + name + "\",\"kind\":\"first-stage\",\"fedBy\":\"tank\","
                            + "\"outlet\":\"11 in w.c.\",\"allowedDrop\":\"0.5 in w.c.\",\"underEaves\":true,\"setting\":\"underground\"}");
            sections.add(
                    "{\"id\":\"S" + i + "\",\"from\":\"" + id + "\",\"material\":\"steel\",\"legs\":[\"north 9 ft\"]}");
            appliances.add("{\"id\":\"a" + i + "\",\"name\":\"" + name + "\",\"fedBy\":\"S" + i + "\",\"input\":\""
                    + (i + 9) + ",000 Btu/h\",\"minInlet\":\"12 in w.c.\",\"maxInlet\":\"11.5 in w.c.\"}");
        }
        return DEMO.replaceFirst("\"Orchard house\"", java.util.regex.Matcher.quoteReplacement("\"" + name + "\""))
                .replaceFirst(
                        "(?s)\"regulators\": \\[.*?\\n  \\],", "\"regulators\":[" + String.join(",", regulators) + "],")
                .replaceFirst("(?s)\"sections\": \\[.*?\\n  \\],", "\"sections\":[" + String.join(",", sections) + "],")
                .replaceFirst(
                        "(?s)\"appliances\": \\[.*?\\n  \\],",
                        java.util.regex.Matcher.quoteReplacement(
                                "\"appliances\":[" + String.join(",", appliances) + "],"))
                .replaceFirst("(?s)\"use\": \\{.*\\}\\s*\\}\\s*$", "\"use\":{\"occasions\":[]}}");
    }

    static String named(String part) {
        return DEMO.replace("\"second stage\"", "\"" + part + "\"").replace("\"Water heater\"", "\"" + part + "\"");
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void withTheSheetGoesEveryQuestionForTheSupplierAndOnlyHis(boolean demo) throws Exception {
        Printing printing = printing(demo ? DEMO : crowded(), PaperSize.LETTER);
        Map<AskWhom, List<List<Finding>>> asked =
                QuestionsByWhom.together(printing.review().findings());
        String said = SheetFile.html(printing, new SupplierSheet().printedWith(printing))
                .select("table.asks td.w")
                .text();
        assertThat(asked.get(AskWhom.SUPPLIER))
                .isNotEmpty()
                .allSatisfy(q -> assertThat(said).contains(q.get(0).ask().orElseThrow()));
        assertThat(asked.getOrDefault(AskWhom.FITTER, List.of()))
                .allSatisfy(q -> assertThat(said).doesNotContain(q.get(0).ask().orElseThrow()));
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void theSheetIsOnePageWhateverTheHouse(PaperSize size) throws Exception {
        List<String> houses = List.of(
                DEMO,
                Samples.text("sample-plan.json"),
                "{\"format\":\"longrun-plan/1\"}",
                named(HOSTILE + "m".repeat(280)),
                crowded());
        for (String house : houses) {
            try (PDDocument pdf = Loader.loadPDF(SheetFile.pdf(printing(house, size), List.of(new SupplierSheet())))) {
                assertThat(pdf.getNumberOfPages())
                        .as("pages of %s", house.substring(0, Math.min(120, house.length())))
                        .isEqualTo(1);
                assertThat(new PDFTextStripper().getText(pdf)).contains("Not known yet", "Gas can kill.");
            }
        }
    }
}
