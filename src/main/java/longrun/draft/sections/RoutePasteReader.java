package longrun.draft.sections;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import longrun.draft.entry.DraftValue;
import longrun.plan.choice.Material;
import longrun.words.UnitSystem;

/**
 * Reads a list pasted from a spreadsheet as sections of a route. A heading names the columns and the unit of the lengths.
 * Without one, the first column that can be read as legs is the legs; the columns before it are the section and what it
 * leaves, the column after it is what it feeds.
 */
public final class RoutePasteReader {

    private static final int LEGS = 0;
    private static final int ID = 1;
    private static final int FROM = 2;
    private static final int FEEDS = 3;
    private static final int MATERIAL = 4;

    private static final List<Pattern> HEADS = List.of(
            Pattern.compile(".*\\b(legs?|length|feet|ft|route|run)\\b.*"),
            Pattern.compile("line|id|no\\.?|section|#"),
            Pattern.compile("from|leaves|after|upstream"),
            Pattern.compile("(to|feeds|serves|appliance|end|name).*"),
            Pattern.compile("(material|pipe).*"));

    private final DraftValue draft;
    private final UnitSystem units;

    /** @param units the units of lengths that have none */
    public RoutePasteReader(DraftValue draft, UnitSystem units) {
        this.draft = draft;
        this.units = units;
    }

    /** The sections understood, and a sentence on the columns. */
    public record Understood(List<PastedSection> lines, String columns) {}

    /** Reads a list. */
    public Understood read(String text) {
        PastedTable headed = PastedTable.of(text, false, HEADS, LEGS + 1);
        if (headed.isEmpty()) {
            return new Understood(List.of(), "The list is empty.");
        }
        PastedTable table = headed.isHeaded() ? headed : byContent(headed);
        List<PastedSection> lines =
                table.body().stream().map(row -> line(row, table)).toList();
        return new Understood(lines, said(table));
    }

    private PastedTable byContent(PastedTable table) {
        OptionalInt found = IntStream.range(0, table.width())
                .filter(c -> table.filled(c).size() == table.body().size()
                        && table.filled(c).stream().allMatch(this::isLegs))
                .findFirst();
        int legs = found.orElse(-1);
        return table.with(
                legs, legs > 0 ? 0 : -1, legs > 1 ? 1 : -1, legs >= 0 && legs + 1 < table.width() ? legs + 1 : -1, -1);
    }

    private boolean isLegs(String cell) {
        return LegsText.feet(LegsText.stored(MaterialWords.of(cell).rest(), units))
                .isPresent();
    }

    private PastedSection line(List<String> row, PastedTable table) {
        List<String> problems = new ArrayList<>();
        MaterialWords measured = MaterialWords.of(table.cell(row, LEGS));
        String own = units.lengthUnit().name();
        String unit = unit(table);
        List<String> legs = LegsText.stored(measured.rest(), units).stream()
                .map(l -> l.endsWith(" " + own) ? l.substring(0, l.length() - own.length()) + unit : l)
                .toList();
        if (legs.isEmpty()) {
            problems.add("no legs");
        } else if (LegsText.feet(legs).isEmpty()) {
            problems.add("legs not understood: write up 4, north 6, east 10");
        }
        String words = table.cell(row, FEEDS);
        String feeds = feeds(words);
        if (feeds.isEmpty()
                && !words.isEmpty()
                && !words.toLowerCase(Locale.ROOT).contains("branch")) {
            problems.add("nothing in the house is called " + words + "; the section is taken without it");
        }
        String material = material(table.cell(row, MATERIAL), measured.material(), problems);
        return new PastedSection(
                table.cell(row, ID), table.cell(row, FROM), legs, feeds, words, material, List.copyOf(problems));
    }

    private String unit(PastedTable table) {
        String own = units.lengthUnit().name();
        return table.has(LEGS) ? table.unit(LEGS, own).toLowerCase(Locale.ROOT) : own;
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

    private static String material(String words, Optional<Material> measured, List<String> problems) {
        Optional<Material> material = MaterialWords.named(words).or(() -> written(words));
        if (material.isEmpty() && !words.isBlank()) {
            problems.add(words + " is not a known material and was left out");
        }
        return material.or(() -> words.isBlank() ? measured : Optional.empty())
                .map(Material::written)
                .orElse("");
    }

    /** A material by its name in a plan. */
    private static Optional<Material> written(String words) {
        String wanted = words.toLowerCase(Locale.ROOT).strip();
        for (Material m : Material.values()) {
            if (wanted.equals(m.written())) {
                return Optional.of(m);
            }
        }
        return Optional.empty();
    }

    private String said(PastedTable table) {
        return table.has(LEGS)
                ? table.said(
                        List.of("legs in " + unit(table), "the section", "what it leaves", "what it feeds", "material"))
                : "No column was understood as legs.";
    }
}
