package longrun.paper;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.drawing.route.Schematic;
import longrun.paper.calculation.CalculationSheet;
import longrun.paper.file.ZipFile;
import longrun.paper.page.Printing;
import longrun.paper.page.Sheet;
import longrun.paper.page.SheetFile;
import longrun.parts.TakeOff;
import longrun.review.Review;
import longrun.words.Names;

/** The sheets there are, in the order they lie in when all are printed. */
public final class Papers {

    private static final List<Sheet> SHEETS = List.of(
            new SupplierSheet(),
            new DrawingSheet(),
            new FitterSheet(),
            new ValveSheet(),
            new CalculationSheet(),
            new PartsSheet());

    private Papers() {}

    /** The names of the sheets, as an address has them. */
    public static List<String> listSlugs() {
        return SHEETS.stream().map(Sheet::slug).toList();
    }

    /** One sheet, with what belongs to it, as a PDF; empty where none has that name. */
    public static Optional<byte[]> findPdf(String slug, Printing printing) {
        return SHEETS.stream()
                .filter(s -> s.slug().equals(slug))
                .findFirst()
                .map(s -> SheetFile.pdf(printing, s.printedWith(printing)));
    }

    /** All sheets in one PDF. */
    public static byte[] pdf(Printing printing) {
        return SheetFile.pdf(printing, SHEETS);
    }

    /**
     * A sheet as one chooses among them.
     *
     * @param slug its name in an address
     * @param title what it is
     * @param purpose what it is for and for whom
     * @param stillOpen what is still open in it; empty where nothing is
     */
    public record Kind(String slug, String title, String purpose, List<String> stillOpen) {}

    /** The sheets of a house, in the order they lie in. */
    public static List<Kind> list(Review review) {
        return SHEETS.stream()
                .map(s -> new Kind(
                        s.slug(),
                        Names.capital(
                                s.title().substring(s.title().indexOf(':') + 1).strip()),
                        s.purpose(),
                        s.stillOpen(review)))
                .toList();
    }

    /**
     * Everything in one zip: each sheet, the drawing, the parts list for a spreadsheet, and the
     * plan file as it is. The same printing gives the same bytes.
     *
     * @param planName the name of the plan file in it, one that every computer takes
     */
    public static byte[] zip(Printing printing, String planName) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(planName, printing.planJson().getBytes(StandardCharsets.UTF_8));
        SHEETS.forEach(s -> files.put(s.slug() + ".pdf", SheetFile.pdf(printing, s.printedWith(printing))));
        files.put("drawing.svg", drawing(printing.review()).getBytes(StandardCharsets.UTF_8));
        files.put("materials.csv", materials(printing.review()).getBytes(StandardCharsets.UTF_8));
        return ZipFile.write(files, printing.date());
    }

    /** The drawing of the route as a file. */
    public static String drawing(Review review) {
        return Schematic.sheet(review);
    }

    /** The parts list for a spreadsheet. */
    public static String materials(Review review) {
        return MaterialsCsv.write(TakeOff.of(review.sizing()));
    }
}
