package longrun.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import longrun.Samples;
import longrun.paper.file.HeldPlan;
import longrun.paper.file.PagePictures;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.words.Program;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** All papers of a house: the same each time, with the plan in them, in one file or in a zip. */
class PapersTest {

    private static final String PLAN = Samples.text("sample-plan.json");
    private static final Review REVIEW = Reviewer.standard().review(Samples.sample(), ReviewParts.ALL);
    private static final Printing PRINTING = new Printing(REVIEW, PLAN, LocalDate.of(2026, 10, 1), PaperSize.LETTER);

    private static Map<String, byte[]> unzip(byte[] zip) throws Exception {
        Map<String, byte[]> out = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip), StandardCharsets.UTF_8)) {
            for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
                out.put(e.getName(), in.readAllBytes());
            }
        }
        return out;
    }

    @Test
    void theZipHoldsEverySheetAndThePlanAsItIs() throws Exception {
        byte[] zip = Papers.zip(PRINTING, "Fernbank cottage.json");
        Map<String, byte[]> files = unzip(zip);
        assertThat(new String(files.get("Fernbank cottage.json"), StandardCharsets.UTF_8))
                .isEqualTo(PLAN);
        assertThat(files.keySet()).contains("drawing.svg", "materials.csv");
        for (String slug : Papers.listSlugs()) {
            assertThat(files.get(slug + ".pdf"))
                    .isEqualTo(Papers.findPdf(slug, PRINTING).orElseThrow());
            assertThat(HeldPlan.find(files.get(slug + ".pdf"))).contains(PLAN);
        }
        assertThat(HeldPlan.find(Papers.pdf(PRINTING))).contains(PLAN);
        assertThat(Papers.zip(PRINTING, "Fernbank cottage.json")).isEqualTo(zip);
    }

    @Test
    void everyPageSaysByWhichProgramAndWhichTables() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(Papers.pdf(PRINTING))) {
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper words = new PDFTextStripper();
                words.setStartPage(page);
                words.setEndPage(page);
                assertThat(words.getText(pdf).replaceAll("\\s+", " "))
                        .contains(
                                "Longrun " + Program.version() + ", tables " + Program.tablesChecksum(),
                                "1 October 2026",
                                "Fernbank cottage",
                                page + " of " + pdf.getNumberOfPages());
            }
        }
        assertThat(Program.tablesChecksum()).matches("[0-9a-f]{8}");
    }

    @Test
    void aPageIsAPictureOfItsPaper() throws Exception {
        byte[] pdf = Papers.findPdf("parts", PRINTING).orElseThrow();
        assertThat(PagePictures.count(pdf)).isPositive();
        var picture = ImageIO.read(new ByteArrayInputStream(PagePictures.png(pdf, 0)));
        assertThat(picture.getWidth()).isEqualTo((int) (8.5 * 120));
        assertThat(picture.getHeight()).isEqualTo(11 * 120);
        long dark = 0;
        for (int x = 0; x < picture.getWidth(); x++) {
            for (int y = 0; y < picture.getHeight(); y++) {
                boolean ink = (picture.getRGB(x, y) & 0xff) < 128;
                dark += ink ? 1 : 0;
                // 6 mm at 120 dots an inch: a printer may not reach farther out
                boolean rim = Math.min(Math.min(x, y), Math.min(picture.getWidth() - x, picture.getHeight() - y)) < 28;
                assertThat(ink && rim).isFalse();
            }
        }
        assertThat(dark).isGreaterThan(5000);
    }

    @Test
    void eachSheetSaysWhomItIsForAndWhatIsStillOpenInIt() {
        assertThat(Papers.list(REVIEW)).extracting(Papers.Kind::slug).isEqualTo(Papers.listSlugs());
        assertThat(Papers.list(REVIEW))
                .allMatch(k -> k.purpose().startsWith("For ") && !k.title().contains(":"));
        Review begun = Reviewer.standard()
                .review(
                        Samples.plan("{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R\"}],"
                                + "\"sections\":[{\"id\":\"A\",\"from\":\"R\"}]}"),
                        ReviewParts.ALL);
        Map<String, String> open = new LinkedHashMap<>();
        Papers.list(begun).forEach(k -> open.put(k.slug(), String.join("; ", k.stillOpen())));
        assertThat(open.get("drawing")).contains("1 section not yet sized");
        assertThat(open.get("supplier")).contains("no tank is entered yet");
        assertThat(open.get("fitter")).contains("questions open");
        assertThat(open.get("parts")).contains("to count at the house");
    }
}
