package longrun.paper.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.junit.jupiter.api.Test;

/** A plan attached to a PDF, read back; whatever else may lie in a PDF is left alone. */
class HeldPlanTest {

    private static byte[] holding(String name, byte[] content, boolean packed) throws Exception {
        try (PDDocument pdf = new PDDocument()) {
            pdf.addPage(new PDPage());
            PDEmbeddedFile file = packed
                    ? new PDEmbeddedFile(pdf, new ByteArrayInputStream(content), COSName.FLATE_DECODE)
                    : new PDEmbeddedFile(pdf, new ByteArrayInputStream(content));
            PDComplexFileSpecification named = new PDComplexFileSpecification();
            named.setFile(name);
            named.setEmbeddedFile(file);
            PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
            tree.setNames(Map.of(name, named));
            PDDocumentNameDictionary names = new PDDocumentNameDictionary(pdf.getDocumentCatalog());
            names.setEmbeddedFiles(tree);
            pdf.getDocumentCatalog().setNames(names);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            pdf.save(out);
            return out.toByteArray();
        }
    }

    @Test
    void thePlanComesOutAsItWentInPackedOrNot() throws Exception {
        byte[] plan =
                "{\"format\":\"longrun-plan/1\",\"name\":\"M\u00fchle \uD83D\uDE00\"}".getBytes(StandardCharsets.UTF_8);
        for (boolean packed : new boolean[] {false, true}) {
            assertThat(HeldPlan.find(holding(HeldPlan.NAME, plan, packed)))
                    .contains(new String(plan, StandardCharsets.UTF_8));
        }
    }

    @Test
    void aPdfOfAnyoneElseHoldsNone() throws Exception {
        assertThat(HeldPlan.find(holding("invoice.json", new byte[] {'{', '}'}, false)))
                .isEmpty();
        assertThat(HeldPlan.find("no pdf at all".getBytes(StandardCharsets.UTF_8)))
                .isEmpty();
        assertThat(HeldPlan.find(new byte[0])).isEmpty();
        try (PDDocument pdf = new PDDocument()) {
            pdf.addPage(new PDPage());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            pdf.save(out);
            assertThat(HeldPlan.find(out.toByteArray())).isEmpty();
        }
    }

    @Test
    void aSmallFileThatUnpacksToALargeOneIsNoPlan() throws Exception {
        byte[] pdf = holding(HeldPlan.NAME, new byte[5 << 20], true);
        assertThat(pdf.length).isLessThan(1 << 20);
        assertThat(HeldPlan.find(pdf)).isEmpty();
    }
}
