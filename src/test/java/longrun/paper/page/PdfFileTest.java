package longrun.paper.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import longrun.Samples;
import longrun.drawing.route.DrawingUnits;
import longrun.drawing.route.Schematic;
import longrun.drawing.svg.Palette;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

class PdfFileTest {

    private static final Review REVIEW = Reviewer.standard().review(Samples.sample(), ReviewParts.ALL);
    private static final Printing PRINTING =
            new Printing(REVIEW, Samples.text("sample-plan.json"), LocalDate.of(2026, 10, 1), PaperSize.LETTER);

    private record Try(List<Element> body) implements Sheet {
        @Override
        public String slug() {
            return "try";
        }

        @Override
        public String title() {
            return "A sheet";
        }

        @Override
        public String under() {
            return "for a test";
        }

        @Override
        public List<Element> body(Printing printing) {
            return body.stream().map(Element::clone).toList();
        }
    }

    @Test
    void theSamePlanAndDayGiveTheSameBytes() {
        Sheet sheet = new Try(List.of(Html.picture(
                Schematic.svg(REVIEW, java.util.Optional.empty(), DrawingUnits.CUSTOMARY, Palette.PAPER),
                "the route",
                520,
                500)));
        assertThat(SheetFile.pdf(PRINTING, List.of(sheet))).isEqualTo(SheetFile.pdf(PRINTING, List.of(sheet)));
    }

    @Test
    void everyPageBearsTheCautionTheHouseAndItsNumber() throws Exception {
        List<Element> long_ = java.util.stream.IntStream.range(0, 90)
                .mapToObj(i -> Html.text("p", "", "line " + i))
                .toList();
        byte[] pdf = SheetFile.pdf(PRINTING, List.of(new Try(long_)));
        try (PDDocument read = Loader.loadPDF(pdf)) {
            int pages = read.getNumberOfPages();
            assertThat(pages).isGreaterThan(1);
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper words = new PDFTextStripper();
                words.setStartPage(page);
                words.setEndPage(page);
                assertThat(words.getText(read).replaceAll("\\s+", " "))
                        .contains("Gas can kill.", "Do not go back in.", "Fernbank cottage", page + " of " + pages);
            }
            assertThat(read.getDocumentCatalog()
                            .getNames()
                            .getEmbeddedFiles()
                            .getNames()
                            .get(PdfFile.PLAN))
                    .isNotNull();
            read.getPages()
                    .forEach(p -> p.getResources().getFontNames().forEach(f -> {
                        try {
                            assertThat(p.getResources().getFont(f).isEmbedded()).isTrue();
                        } catch (java.io.IOException e) {
                            throw new AssertionError(e);
                        }
                    }));
        }
    }

    @Test
    void whatAPersonTypedIsTextAndNeverMarkup() throws Exception {
        String typed = "<script>alert(1)</script> =cmd() \u05e9\u05dc\u05d5\u05dd \uD83D\uDE00 \u0007 \uD800";
        byte[] pdf = SheetFile.pdf(PRINTING, List.of(new Try(List.of(Html.text("p", "", typed)))));
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(read)).contains("<script>alert(1)</script> =cmd()");
        }
    }
}
