package longrun.draft.sections;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import longrun.plan.choice.Material;
import longrun.words.UnitSystem;

/**
 * Reads a list copied from a spreadsheet: a line a row, cells parted by tabs. A heading names the columns and the unit
 * of the lengths; without one, the cell that can be read as legs is the legs, and what stands before it is the line and
 * what it leaves, after it what it feeds.
 */
public final class RoutePasteReader {

    private static final int MOST = 200;
    private static final Pattern UNIT =
            Pattern.compile(".*[,(\\[]\\s*(ft|feet|m|in|cm)\\b.*", Pattern.CASE_INSENSITIVE);
    private static final List<Pattern> HEADS = List.of(
            Pattern.compile("line|id|no\\.?|section|#"),
            Pattern.compile("from|leaves|after|upstream"),
            Pattern.compile(".*\\b(legs?|length|feet|ft|route|run)\\b.*"),
            Pattern.compile("(to|feeds|serves|appliance|end|name).*"),
            Pattern.compile("(material|pipe).*"));

    private final ObjectNode draft;
    private final UnitSystem units;

    public RoutePasteReader(ObjectNode draft, UnitSystem units) {
        this.draft = draft;
        this.units = units;
    }

    /** Columns of line, from, legs, feeds, material; -1 for none. */
    private record Columns(int[] at, boolean headed, String unit) {
        String cell(List<String> row, int what) {
            return at[what] < 0 || at[what] >= row.size() ? "" : row.get(at[what]);
        }
    }

    /** What was understood, and of which columns. */
    public record Understood(List<PastedRoute> lines, String columns) {}

    public Understood read(String text) {
        List<List<String>> rows = Arrays.stream(text.split("\\R"))
                .limit(MOST + 1L)
                .filter(l -> !l.isBlank())
                .map(l -> Arrays.stream(l.split("\t", -1))
                        .map(RoutePasteReader::unquoted)
                        .toList())
                .toList();
        if (rows.isEmpty()) {
            return new Understood(List.of(), "There was nothing in it.");
        }
        Columns columns = columns(rows);
        List<PastedRoute> lines = new ArrayList<>();
        for (List<String> row : columns.headed() ? rows.subList(1, rows.size()) : rows) {
            lines.add(line(row, columns));
        }
        return new Understood(lines, said(columns));
    }

    private static String unquoted(String cell) {
        String c = cell.strip();
        return c.length() > 1 && c.startsWith("\"") && c.endsWith("\"")
                ? c.substring(1, c.length() - 1).replace("\"\"", "\"").strip()
                : c;
    }

    private Columns columns(List<List<String>> rows) {
        List<String> first = rows.get(0);
        int[] at = {-1, -1, -1, -1, -1};
        String unit = units.lengthUnit().name();
        for (int c = 0; c < first.size(); c++) {
            for (int h = 0; h < HEADS.size(); h++) {
                if (at[h] < 0
                        && HEADS.get(h)
                                .matcher(first.get(c).toLowerCase(Locale.ROOT))
                                .matches()) {
                    at[h] = c;
                    Matcher m = UNIT.matcher(first.get(c));
                    if (h == 2 && m.matches()) {
                        unit = m.group(1).toLowerCase(Locale.ROOT).replace("feet", "ft");
                    }
                    break;
                }
            }
        }
        if (at[2] >= 0 && rows.size() > 1) {
            return new Columns(at, true, unit);
        }
        return new Columns(byContent(rows), false, unit);
    }

    private int[] byContent(List<List<String>> rows) {
        int width = rows.stream().mapToInt(List::size).max().orElse(0);
        OptionalInt legs = IntStream.range(0, width)
                .filter(c -> rows.stream()
                        .allMatch(r -> c < r.size()
                                && LegsText.feet(LegsText.stored(r.get(c), units))
                                        .isPresent()))
                .findFirst();
        int at = legs.orElse(-1);
        return new int[] {at > 0 ? 0 : -1, at > 1 ? 1 : -1, at, at >= 0 && at + 1 < width ? at + 1 : -1, -1};
    }

    private PastedRoute line(List<String> row, Columns columns) {
        List<String> problems = new ArrayList<>();
        List<String> legs = LegsText.stored(columns.cell(row, 2), units).stream()
                .map(l -> l.endsWith(" " + units.lengthUnit().name())
                        ? l.substring(0, l.length() - units.lengthUnit().name().length()) + columns.unit()
                        : l)
                .toList();
        if (legs.isEmpty()) {
            problems.add("no legs");
        } else if (LegsText.feet(legs).isEmpty()) {
            problems.add("legs not understood: write up 4, north 6, east 10");
        }
        String words = columns.cell(row, 3);
        String feeds = feeds(words);
        if (feeds.isEmpty()
                && !words.isEmpty()
                && !words.toLowerCase(Locale.ROOT).contains("branch")) {
            problems.add("nothing in the house is called " + words + "; the section is taken without it");
        }
        String material = material(columns.cell(row, 4), problems);
        return new PastedRoute(
                columns.cell(row, 0), columns.cell(row, 1), legs, feeds, words, material, List.copyOf(problems));
    }

    private String feeds(String words) {
        String wanted =
                words.toLowerCase(Locale.ROOT).replaceFirst("^to (the )?", "").strip();
        if (wanted.isEmpty()) {
            return "";
        }
        for (Map.Entry<String, String> e :
                new RouteLines(draft).mayFeed(Integer.MAX_VALUE).entrySet()) {
            String id = e.getKey().contains(":") ? e.getKey().substring(4) : e.getKey();
            if (!e.getKey().isEmpty()
                    && (wanted.equals(e.getValue().toLowerCase(Locale.ROOT))
                            || wanted.equals(id.toLowerCase(Locale.ROOT)))) {
                return e.getKey();
            }
        }
        return "";
    }

    private static String material(String words, List<String> problems) {
        if (words.isBlank()) {
            return "";
        }
        String wanted = words.toLowerCase(Locale.ROOT).strip();
        for (Material m : Material.values()) {
            if (wanted.equals(m.written()) || wanted.equals(m.label().toLowerCase(Locale.ROOT))) {
                return m.written();
            }
        }
        problems.add(words + " is no material known here; left out");
        return "";
    }

    private static String said(Columns c) {
        if (c.at()[2] < 0) {
            return "No column was understood as legs.";
        }
        List<String> said = new ArrayList<>();
        said.add(c.headed() ? "The first row was taken as the heading" : "No heading was found");
        List<String> names =
                List.of("the section", "what it leaves", "legs in " + c.unit(), "what it feeds", "material");
        for (int i = 0; i < names.size(); i++) {
            if (c.at()[i] >= 0) {
                said.add("column " + (c.at()[i] + 1) + " as " + names.get(i));
            }
        }
        return String.join("; ", said) + ".";
    }
}
