package longrun.paper.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** The plan that lies in a PDF as an attachment, so that whoever gets the paper as a file can open the house from it. */
public final class HeldPlan {

    /** Name of the plan inside the PDF. */
    public static final String NAME = "house.longrun.json";

    private static final int MOST_BYTES = 1 << 20;

    private HeldPlan() {}

    /** The plan's text; empty where the bytes are no PDF, hold none, or hold one over 1 MiB. */
    public static Optional<String> find(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
            if (names == null || names.getEmbeddedFiles() == null) {
                return Optional.empty();
            }
            var attached = names.getEmbeddedFiles().getNames();
            PDComplexFileSpecification file = attached == null ? null : attached.get(NAME);
            return file == null || file.getEmbeddedFile() == null ? Optional.empty() : text(file.getEmbeddedFile());
        } catch (IOException | RuntimeException e) {
            return Optional.empty(); // whatever is wrong with it, it is none of ours
        }
    }

    /** Read by its own bytes and never more than a plan may have: a small file can unpack to a very large one. */
    private static Optional<String> text(PDEmbeddedFile file) throws IOException {
        COSStream stream = file.getCOSObject();
        COSBase filter = stream.getFilters();
        if (filter != null && !COSName.FLATE_DECODE.equals(filter)) {
            return Optional.empty();
        }
        try (InputStream raw = stream.createRawInputStream();
                InputStream in = filter == null ? raw : new InflaterInputStream(raw)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES
                    ? Optional.empty()
                    : Optional.of(new String(bytes, StandardCharsets.UTF_8));
        }
    }
}
