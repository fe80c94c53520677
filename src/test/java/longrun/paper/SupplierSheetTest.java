package longrun.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import longrun.Samples;
import longrun.review.Parts;
import longrun.review.Review;
import longrun.review.Reviewer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class SupplierSheetTest {

    private static String text(String json) throws Exception {
        Review review = Reviewer.standard().review(Samples.plan(json), Parts.ALL);
        Printing printing = new Printing(review, json, LocalDate.of(2026, 10, 1), PaperSize.LETTER);
        try (PDDocument pdf =
                Loader.loadPDF(Papers.findPdf("supplier", printing).orElseThrow())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    @Test
    void theSupplierReadsSettingVapourTankDeliveryAndLeakCheckAsNumberedQuestions() throws Exception {
        assertThat(text(Samples.resource("/longrun/data/demo/orchard-house.json")))
                .containsSubsequence("1 Setting", "2 Vapour", "3 Tank", "4 Delivery", "5 Leak check")
                .contains("324,000 Btu/h", "10.25 in. w.c.", "11.67 in. w.c.", "500 gal", "8 \u00B0F", "30 %")
                .contains("Call by", "7 days from call to truck", "Gas can kill.");
    }

    @Test
    void aHouseWithoutFiguresLeavesBlanksAndNeverAZero() throws Exception {
        String words = text(
                "{\"format\":\"longrun-plan/1\",\"name\":\"Empty\",\"tank\":{\"kind\":\"asme\"},\"appliances\":[{\"id\":\"range\",\"kind\":\"range\"}]}");
        assertThat(words)
                .contains("______", "Not known yet", "not all uses are known yet")
                .doesNotContain(" 0 Btu/h", " 0 gal");
    }
}
