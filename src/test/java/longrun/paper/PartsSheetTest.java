package longrun.paper;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.time.LocalDate;
import java.util.List;
import javax.imageio.ImageIO;
import longrun.Samples;
import longrun.paper.file.PagePictures;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.paper.page.SheetWords;
import longrun.parts.PartLine;
import longrun.parts.PipeNeed;
import longrun.parts.TakeOff;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The parts list on paper and for a spreadsheet, read back. */
class PartsSheetTest {

    private static final String DEMO = Samples.resource("/longrun/data/demo/orchard-house.json");

    private static Review review(String json) {
        return Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL);
    }

    private static List<CsvRecord> readBack(String csv) {
        return CsvReader.builder().ofCsvRecord(csv).stream().toList();
    }

    @Test
    void everyPartStandsOnThePaperWithItsCountAndHowItWasCounted() throws Exception {
        Review review = review(DEMO);
        Printing printing = new Printing(review, DEMO, LocalDate.of(2026, 10, 1), PaperSize.A4);
        String text;
        try (PDDocument read = Loader.loadPDF(Papers.findPdf("parts", printing).orElseThrow())) {
            text = new PDFTextStripper().getText(read).replaceAll("\\s+", "");
        }
        TakeOff parts = TakeOff.of(review.sizing());
        for (PipeNeed p : parts.pipe()) {
            assertThat(text)
                    .contains(
                            (p.item() + p.size()).replaceAll("\\s+", ""),
                            p.basis().replaceAll("\\s+", ""));
        }
        for (PartLine l : parts.lines()) {
            String count = l.counted().isEmpty() ? SheetWords.BLANK : l.counted();
            assertThat(text).contains((l.item() + l.size() + count + l.basis()).replaceAll("\\s+", ""));
        }
        assertThat(text).contains("D10+D5+E5", "thefewestthere");
    }

    @Test
    void theSpreadsheetHasEveryLineOfTheList() {
        Review review = review(DEMO);
        TakeOff parts = TakeOff.of(review.sizing());
        List<CsvRecord> rows = readBack(MaterialsCsv.write(parts));
        assertThat(rows.get(0).getFields()).isEqualTo(MaterialsCsv.COLUMNS);
        assertThat(rows).hasSize(1 + parts.pipe().size() + parts.lines().size());
        assertThat(rows).allMatch(r -> r.getFieldCount() == MaterialsCsv.COLUMNS.size());
        CsvRecord steel = rows.get(2);
        assertThat(steel.getFields())
                .startsWith("Pipe", "Steel pipe, Schedule 40", "1 in.", "22", "ft", "20", "21", "2", "A");
        assertThat(rows).noneMatch(r -> r.getField(3).equals("0"));
        assertThat(rows)
                .anyMatch(r -> r.getField(1).equals("Supports") && r.getField(3).isEmpty());
    }

    @Test
    void whatAPersonTypedIsNoFormulaInASpreadsheet() {
        for (String typed : List.of("=cmd()", "+1", "-2+3", "@SUM(A1)", "\t=1", "\u202E=cmd()", "\uFF1Dcmd()")) {
            String json = """
                    {"format":"longrun-plan/1","regulators":[{"id":"R","fedBy":"tank","outlet":"11 in w.c.","allowedDrop":"0.5 in w.c."}],
                     "sections":[{"id":%1$s,"from":"R","material":"csst","legs":["up 4 ft"],"ends":[%1$s]}],
                     "appliances":[{"id":"h","name":%1$s,"input":"60,000 Btu/h","fedBy":%1$s,
                       "connection":[{"part":"sediment-trap"},{"part":"union"}]}]}
                    """.formatted(new com.fasterxml.jackson.databind.node.TextNode(typed).toString());
            List<CsvRecord> rows =
                    readBack(MaterialsCsv.write(TakeOff.of(review(json).sizing())));
            assertThat(rows.size()).isGreaterThan(3);
            rows.forEach(r -> r.getFields()
                    .forEach(cell ->
                            assertThat(cell).doesNotMatch("(?s)[\\s\\p{Cf}]*[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20].*")));
            assertThat(rows).anyMatch(r -> r.getField(8).startsWith("'"));
        }
    }

    /** Names of 300 letters without a blank, markup, and letters from right to left: all stand on the paper, none beyond it. */
    @Test
    void whateverAPersonTypedStaysOnThePaper() throws Exception {
        String longest = "W".repeat(300);
        String json = """
                {"format":"longrun-plan/1","name":"<script>x</script> \u05e9\u05dc\u05d5\u05dd \ud83d\ude00 %1$s",
                 "regulators":[{"id":"R","name":"%1$s","fedBy":"tank","outlet":"11 in w.c.","allowedDrop":"0.5 in w.c."}],
                 "sections":[{"id":"S","from":"R","material":"steel","legs":["up 4 ft"]},
                             {"id":"P","from":"S","material":"pe-pipe","legs":["up 4 ft"],"ends":["%1$s"]}],
                 "appliances":[{"id":"h","name":"%1$s","input":"60,000 Btu/h","fedBy":"P",
                   "connection":[{"part":"shutoff"}]}]}
                """.formatted(longest);
        Printing printing = new Printing(review(json), json, LocalDate.of(2026, 10, 1), PaperSize.A4);
        byte[] pdf = Papers.findPdf("parts", printing).orElseThrow();
        for (int page = 0; page < PagePictures.count(pdf); page++) {
            var picture = ImageIO.read(new ByteArrayInputStream(PagePictures.png(pdf, page)));
            for (int y = 0; y < picture.getHeight(); y++) {
                for (int x = picture.getWidth() - 47; x < picture.getWidth(); x++) {
                    // 47 dots are 10 mm: no word reaches into the margin
                    if ((picture.getRGB(x, y) & 0xff) < 128) {
                        throw new AssertionError("page " + page + ": ink at " + x + ", " + y);
                    }
                }
            }
        }
        for (String slug : Papers.listSlugs()) {
            assertThat(Papers.findPdf(slug, printing)).isPresent();
        }
    }
}
