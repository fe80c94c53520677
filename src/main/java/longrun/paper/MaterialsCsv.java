package longrun.paper;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;
import longrun.paper.page.Html;
import longrun.parts.PartGroup;
import longrun.parts.PartLine;
import longrun.parts.PipeNeed;
import longrun.parts.TakeOff;
import longrun.quantity.Show;

/**
 * The parts list for a spreadsheet (RFC 4180). A cell that a spreadsheet would take for a formula begins with an
 * apostrophe; what is not known is an empty cell, never a zero.
 */
final class MaterialsCsv {

    /** The columns, in order. */
    static final List<String> COLUMNS = List.of(
            "group",
            "item",
            "size",
            "count",
            "unit",
            "measured_ft",
            "stock_length_ft",
            "stock_lengths",
            "where",
            "how_counted",
            "price_a_foot",
            "price_in_all");

    private MaterialsCsv() {}

    /** The list as a file's text. */
    static String write(TakeOff parts) {
        StringWriter out = new StringWriter();
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out)) {
            csv.writeRecord(COLUMNS);
            parts.pipe().forEach(p -> csv.writeRecord(safe(pipe(p))));
            for (PartGroup group : PartGroup.values()) {
                parts.lines(group).forEach(l -> csv.writeRecord(safe(line(l))));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static List<String> pipe(PipeNeed p) {
        return List.of(
                PartGroup.PIPE.label(),
                p.item(),
                p.size(),
                number(p.toBuyFt()),
                "ft",
                number(p.measuredFt()),
                number(p.stockFt()),
                p.lengths().isPresent() ? String.valueOf(p.lengths().getAsInt()) : "",
                String.join(" ", p.sections()),
                p.basis(),
                p.price().map(x -> Show.plain(x.aFoot())).orElse(""),
                p.price().map(x -> number(x.inAll())).orElse(""));
    }

    private static List<String> line(PartLine l) {
        return List.of(
                l.group().label(),
                l.item(),
                l.size(),
                number(l.count()),
                l.unit().isEmpty() ? "pieces" : l.unit(),
                "",
                "",
                "",
                String.join(" ", l.where()),
                l.basis(),
                "",
                "");
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? Show.plain(value.getAsDouble()) : "";
    }

    private static List<String> safe(List<String> cells) {
        return cells.stream().map(MaterialsCsv::safe).toList();
    }

    private static String safe(String cell) {
        String text = Html.printable(cell).strip();
        return text.isEmpty() || "=+-@\uFF1D\uFF0B\uFF0D\uFF20".indexOf(text.charAt(0)) < 0 ? text : "'" + text;
    }
}
