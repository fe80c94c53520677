package longrun.paper.page;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import longrun.paper.file.HeldPlan;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;

/** Writes a document of sheets as a tagged PDF with its letters in it; nothing is fetched from anywhere. */
public final class PdfFile {

    /** Name of the plan inside the PDF. */
    static final String PLAN = HeldPlan.NAME;

    private static final String LETTERS = "letters";
    private static final Map<String, byte[]> FONTS = Map.of(
            "regular", bytes("/fonts/DejaVuSansCondensed.ttf"), "bold", bytes("/fonts/DejaVuSansCondensed-Bold.ttf"));

    static {
        XRLog.setLoggingEnabled(false); // it tells of each style sheet it reads
    }

    private PdfFile() {}

    /**
     * @param html the sheets
     * @param planJson goes in as an attachment
     * @param date stands in the file as its day of making, so that the same printing gives the same bytes
     */
    static byte[] write(Document html, String planJson, LocalDate date) {
        return write(html, date, Optional.of(planJson));
    }

    /** The same for a document that no plan stands behind. */
    public static byte[] write(Document html, LocalDate date) {
        return write(html, date, Optional.empty());
    }

    private static byte[] write(Document html, LocalDate date, Optional<String> planJson) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.usePdfUaAccessibility(true);
        builder.useProtocolsStreamImplementation(uri -> new Font(uri), LETTERS);
        builder.useExternalResourceAccessControl(
                (uri, type) -> uri.startsWith(LETTERS + ":"), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> uri.startsWith(LETTERS + ":"), ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useFont(() -> open("regular"), "Sheet", 400, FontStyle.NORMAL, true);
        builder.useFont(() -> open("bold"), "Sheet", 700, FontStyle.NORMAL, true);
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.withW3cDocument(new W3CDom().fromJsoup(html), LETTERS + ":sheet");
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            PDDocument pdf = renderer.getPdfDocument();
            if (planJson.isPresent()) {
                attach(pdf, planJson.get(), date);
            }
            stamp(pdf, date);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            pdf.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void stamp(PDDocument pdf, LocalDate date) {
        pdf.getDocumentInformation().setProducer("Longrun");
        pdf.getDocumentInformation().setCreationDate(day(date));
        pdf.getDocumentInformation().setModificationDate(day(date));
        pdf.setDocumentId(date.toEpochDay());
    }

    private static void attach(PDDocument pdf, String planJson, LocalDate date) throws IOException {
        byte[] plan = planJson.getBytes(StandardCharsets.UTF_8);
        PDEmbeddedFile file = new PDEmbeddedFile(pdf, new ByteArrayInputStream(plan));
        file.setSubtype("application/json");
        file.setSize(plan.length);
        file.setCreationDate(day(date));
        file.setModDate(day(date));
        PDComplexFileSpecification named = new PDComplexFileSpecification();
        named.setFile(PLAN);
        named.setFileUnicode(PLAN);
        named.setEmbeddedFile(file);
        named.setEmbeddedFileUnicode(file);
        named.setFileDescription("The plan these sheets were made from");
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(Map.of(PLAN, named));
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(pdf.getDocumentCatalog());
        names.setEmbeddedFiles(tree);
        pdf.getDocumentCatalog().setNames(names);
    }

    private static Calendar day(LocalDate date) {
        GregorianCalendar day = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        day.setTimeInMillis(date.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        return day;
    }

    private static InputStream open(String name) {
        byte[] font = FONTS.get(name);
        return new ByteArrayInputStream(font == null ? new byte[0] : font);
    }

    private static byte[] bytes(String path) {
        try (InputStream in = PdfFile.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + ": the letters of the sheets are not there");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The one thing a sheet may fetch: its letters, for the drawings. */
    private record Font(String uri) implements FSStream {

        @Override
        public InputStream getStream() {
            return open(uri.substring(uri.indexOf(':') + 1));
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }
}
