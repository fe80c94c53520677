package longrun.origin;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One of the program's own files of facts: a head of comment lines that says where they are from ({@code # source: ...}),
 * a line of headings, rows. What is wrong is named by file, line and column.
 */
public final class DataFile {

    private static final String FOLDER = "/longrun/data/";

    private final String name;
    private final List<Head> head;
    private final SheetLine headings;
    private final List<DataRow> rows;

    /**
     * A line of the head.
     *
     * @param key what stands before its first colon; blank where it has none
     */
    public record Head(long line, String key, String value) {

        private static Head of(SheetLine line) {
            String text = line.cells().get(0);
            int colon = text.indexOf(':');
            return colon < 0
                    ? new Head(line.number(), "", text)
                    : new Head(
                            line.number(),
                            text.substring(0, colon).strip(),
                            text.substring(colon + 1).strip());
        }
    }

    private DataFile(String name, List<Head> head, SheetLine headings, List<SheetLine> body) {
        this.name = name;
        this.head = List.copyOf(head);
        this.headings = headings;
        this.rows = body.stream().map(line -> new DataRow(this, line)).toList();
    }

    /**
     * Reads a file of the data folder.
     *
     * @param path within that folder, such as {@code tanks/vapour-pressure.csv}
     * @throws DataFault where the file is missing, does not say what it is and where it is from, or has a crooked row
     */
    public static DataFile read(String path) {
        DataFile file = parse(path, new String(bytes(path), StandardCharsets.UTF_8));
        file.need("title");
        file.need("source");
        return file;
    }

    /** A file of the data folder as it stands. */
    public static byte[] bytes(String path) {
        try (InputStream in = DataFile.class.getResourceAsStream(FOLDER + path)) {
            if (in == null) {
                throw new DataFault(path, 1, 1, "the file is missing");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads the text of a file; its head may hold anything. */
    public static DataFile parse(String name, String text) {
        List<Head> head = new ArrayList<>();
        List<SheetLine> body = new ArrayList<>();
        for (SheetLine line : SheetLine.read(name, text)) {
            if (line.comment()) {
                head.add(Head.of(line));
            } else {
                body.add(line);
            }
        }
        if (body.isEmpty()) {
            throw new DataFault(name, 1, 1, "no line of headings");
        }
        check(name, body);
        return new DataFile(name, head, body.get(0), body.subList(1, body.size()));
    }

    private static void check(String name, List<SheetLine> body) {
        Set<String> seen = new HashSet<>();
        int want = body.get(0).cells().size();
        for (int c = 0; c < want; c++) {
            String heading = body.get(0).cells().get(c);
            if (heading.isEmpty() || !seen.add(heading)) {
                String what = heading.isEmpty() ? "a column has no heading" : heading + " appears twice";
                throw new DataFault(name, body.get(0).number(), c + 1, what);
            }
        }
        for (SheetLine line : body) {
            int have = line.cells().size();
            if (have != want) {
                String what = have + " cells where the headings are " + want;
                throw new DataFault(name, line.number(), Math.min(have, want) + 1, what);
            }
        }
    }

    /** The head, line by line. */
    public List<Head> head() {
        return head;
    }

    /** The lines of the head with a key. */
    public List<Head> heads(String key) {
        return head.stream().filter(h -> h.key().equals(key)).toList();
    }

    public Optional<Head> find(String key) {
        return head.stream().filter(h -> h.key().equals(key)).findFirst();
    }

    /** The line of the head with a key, or the fault that names it. */
    public Head need(String key) {
        return find(key).orElseThrow(() -> fault(1, 1, "the head line '" + key + ":' is missing"));
    }

    /** Where its facts are from. */
    public String source() {
        return need("source").value();
    }

    public List<String> headings() {
        return headings.cells();
    }

    public List<DataRow> rows() {
        return rows;
    }

    /** What is wrong with the headings. */
    public DataFault headingFault(int column, String what) {
        return fault(headings.number(), column, what);
    }

    /** What is wrong, at its place. */
    public DataFault fault(long line, int column, String what) {
        return new DataFault(name, line, column, what);
    }

    int column(String heading) {
        int at = headings().indexOf(heading);
        if (at < 0) {
            throw headingFault(1, "there is no column " + heading);
        }
        return at;
    }
}
