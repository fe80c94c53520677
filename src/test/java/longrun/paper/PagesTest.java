package longrun.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.drawing.route.Schematic;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.paper.page.Sheet;
import longrun.paper.page.SheetFile;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages as they come out of a printer: nothing cut off, none blank, letters that can be read, black on white. */
class PagesTest {

    private static final float DPI = 50;
    private static final double EDGE_MM = 6;
    private static final double SMALLEST_PT = 8;
    private static final List<Sheet> OURS =
            List.of(new SupplierSheet(), new DrawingSheet(), new FitterSheet(), new ValveSheet());

    static Stream<Arguments> houses() {
        String demo = Samples.resource("/longrun/data/demo/orchard-house.json");
        return Stream.of(
                Arguments.of("the demo house on letter", demo, PaperSize.LETTER),
                Arguments.of("a crowded house", SupplierSheetTest.crowded(), PaperSize.LETTER),
                Arguments.of("a house with nothing in it", "{\"format\":\"longrun-plan/1\"}", PaperSize.A4));
    }

    private static Printing printing(String json, PaperSize size) {
        return new Printing(
                Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL), json, LocalDate.of(2026, 10, 1), size);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("houses")
    void everyPageCanBePrintedAndRead(String house, String json, PaperSize size) throws Exception {
        Printing printing = printing(json, size);
        try (PDDocument pdf = Loader.loadPDF(SheetFile.pdf(printing, OURS))) {
            PDFRenderer renderer = new PDFRenderer(pdf);
            for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                looksRight(renderer.renderImageWithDPI(page, DPI, ImageType.RGB), house + ", page " + (page + 1));
            }
            letters(pdf);
            assertThat(pictures(pdf.getDocumentCatalog().getStructureTreeRoot()))
                    .as("pictures with words for those who do not see them")
                    .isNotEmpty()
                    .allSatisfy(alternative -> assertThat(alternative).isNotBlank());
        }
        for (Element svg : SheetFile.html(printing, OURS).select("svg")) {
            assertThat(svg.attr("alt")).isNotBlank();
            double points = width(svg) / Double.parseDouble(svg.attr("width"));
            double letters = svg.select("text.k").isEmpty() ? 14 : 11;
            boolean key = svg.select("title").text().startsWith("Key");
            assertThat(points * letters)
                    .as(
                            "points of the smallest letters in: %s",
                            svg.select("title").text())
                    .isGreaterThanOrEqualTo(key ? 0 : SMALLEST_PT);
        }
    }

    private static void looksRight(BufferedImage page, String name) {
        int edge = (int) Math.floor(EDGE_MM / 25.4 * DPI);
        int foot = (int) Math.ceil(27 / 25.4 * DPI);
        int ink = 0;
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                int rgb = page.getRGB(x, y) & 0xffffff;
                if (rgb > 0xf0f0f0) {
                    continue;
                }
                boolean atEdge = x < edge || y < edge || x >= page.getWidth() - edge || y >= page.getHeight() - edge;
                assertThat(atEdge).as("ink at %d %d of %s", x, y, name).isFalse();
                assertThat(Math.abs((rgb >> 16) - (rgb & 0xff)))
                        .as("colour on %s", name)
                        .isLessThan(8);
                ink += y < page.getHeight() - foot ? 1 : 0;
            }
        }
        assertThat(ink).as("ink over the foot of %s", name).isGreaterThan(40);
    }

    private static void letters(PDDocument pdf) throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        List<String> small = new ArrayList<>();
        PDFTextStripper reader = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                fonts.add(letter.getFont());
                double points = letter.getFontSize() * letter.getTextMatrix().getScalingFactorX();
                if (points < SMALLEST_PT - 0.01) {
                    small.add(letter.getUnicode() + " at " + points);
                }
            }
        };
        reader.getText(pdf);
        assertThat(fonts.stream().distinct())
                .allSatisfy(f -> assertThat(f.isEmbedded()).isTrue());
        assertThat(small).isEmpty();
    }

    /** The alternative text of every figure in the tree of tags. */
    private static List<String> pictures(PDStructureNode node) {
        List<String> out = new ArrayList<>();
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if ("Figure".equals(element.getStructureType())) {
                    out.add(String.valueOf(element.getAlternateDescription()));
                }
                out.addAll(pictures(element));
            }
        }
        return out;
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void picturesBesideEachOtherFitBetweenTheMargins(PaperSize size) {
        Printing demo = printing(Samples.resource("/longrun/data/demo/orchard-house.json"), size);
        for (Element row : SheetFile.html(demo, List.of(new SupplierSheet())).select("table.two tr")) {
            double wide =
                    row.select("svg").stream().mapToDouble(PagesTest::width).sum();
            assertThat(wide + 14).isLessThan(size.widthPt() - SheetFile.BESIDE);
        }
    }

    private static double width(Element svg) {
        return Double.parseDouble(svg.attr("style").replaceAll("^width:([0-9.]+)pt.*", "$1"));
    }

    @Test
    void aWideRouteLiesBroadsideAndALargeOneInPartsWithAKey() throws Exception {
        Printing demo = printing(Samples.resource("/longrun/data/demo/orchard-house.json"), PaperSize.LETTER);
        try (PDDocument pdf = Loader.loadPDF(SheetFile.pdf(demo, List.of(new DrawingSheet())))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            assertThat(pdf.getPage(0).getMediaBox().getWidth()).isCloseTo(11 * 72f, within(0.5f));
        }
        StringBuilder sections = new StringBuilder("{\"id\":\"S0\",\"from\":\"R1\",\"legs\":[\"east 60 ft\"]}");
        for (int i = 1; i < 24; i++) {
            sections.append(",{\"id\":\"S" + i + "\",\"from\":\"S" + (i - 1) + "\",\"legs\":[\"east 60 ft\"]}");
        }
        Printing wide = printing(
                "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"fedBy\":\"tank\"}],\"sections\":["
                        + sections + "]}",
                PaperSize.A4);
        try (PDDocument pdf = Loader.loadPDF(SheetFile.pdf(wide, List.of(new DrawingSheet())))) {
            assertThat(pdf.getNumberOfPages()).isGreaterThan(2);
            assertThat(new PDFTextStripper().getText(pdf)).contains("Key: the route in", "Part A1; goes on in");
        }
        // each section's words stand whole in some part
        String parts = Schematic.parts(wide.review(), 1200, 700).stream()
                .map(p -> p.svg())
                .reduce("", String::concat);
        for (int i = 0; i < 24; i++) {
            assertThat(parts).contains(">S" + i + "<");
        }
    }

    @Test
    void whatAPersonTypedIsTextInEveryDrawingAndSheet() throws Exception {
        Printing hostile = printing(SupplierSheetTest.crowded(), PaperSize.LETTER);
        String html = SheetFile.html(hostile, OURS).outerHtml();
        assertThat(html).doesNotContain("<script");
        assertThat(Schematic.sheet(hostile.review())).doesNotContain("<script").contains("&lt;script&gt;");
        try (PDDocument pdf = Loader.loadPDF(SheetFile.pdf(hostile, OURS))) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("<script>alert(1)");
        }
    }
}
