package longrun.paper;

import java.util.List;
import java.util.Optional;

/** The sheets there are, in the order they lie in when all are printed. */
public final class Papers {

    private static final List<Sheet> SHEETS = List.of(
            new SupplierSheet(), new DrawingSheet(), new FitterSheet(), new CalculationSheet(), new PartsSheet());

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
                .map(s -> SheetFile.pdf(printing, s.printedWith()));
    }

    /** All sheets in one PDF. */
    public static byte[] pdf(Printing printing) {
        return SheetFile.pdf(printing, SHEETS);
    }
}
