package longrun.paper.calculation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.origin.Origin;
import longrun.paper.page.Html;
import longrun.words.OriginWords;
import org.jsoup.nodes.Element;

/**
 * The lines of a calculation: a figure, what it was made from, how. What a figure was made from stands before it; a line
 * that stood once does not stand again.
 */
final class CalculationTable {

    private static final List<String> HEADINGS = List.of("At", "What", "Made from", "How", "Figure");
    private static final List<String> CLASSES = List.of("z s at", "what", "made", "how", "fig");

    private final Set<String> printed = new HashSet<>();

    /** A step's lines, and under them how each figure came about. */
    List<Element> of(String title, List<CalculationPart.Line> lines) {
        List<CalculationPart.Line> all = new ArrayList<>();
        lines.forEach(l -> add(l, all));
        if (all.isEmpty()) {
            return List.of(Html.text("p", "", "Every figure of it stands above."));
        }
        Map<String, String> letters = letters(all);
        Set<String> told = new HashSet<>();
        List<List<String>> rows = new ArrayList<>();
        for (CalculationPart.Line line : all) {
            Origin o = line.origin();
            rows.add(List.of(
                    line.at(),
                    OriginWords.plain(o.figure()),
                    o.inputs().stream().map(i -> input(i, letters, told)).collect(Collectors.joining("; ")),
                    how(o, letters, told),
                    figure(line)));
        }
        List<Element> out = new ArrayList<>();
        out.add(Html.table(title, HEADINGS, CLASSES, rows).addClass("calc"));
        letters.forEach((how, letter) -> {
            if (told.contains(how)) {
                out.add(Html.text("p", "src", "(" + letter + ") " + how + "."));
            }
        });
        return out;
    }

    private void add(CalculationPart.Line line, List<CalculationPart.Line> all) {
        Origin origin = line.origin();
        if (origin.how().isBlank()) {
            throw without(line.pointer(), origin);
        }
        boolean ofOneArrangement = line.pointer().startsWith("/hotWater/");
        if (!printed.add((ofOneArrangement ? line.at() : "") + origin)) {
            return;
        }
        for (Origin input : origin.inputs()) {
            if (input.how().isBlank()) {
                throw without(line.pointer(), input);
            }
            if (!input.inputs().isEmpty()) {
                add(new CalculationPart.Line(line.pointer(), line.at(), input), all);
            }
        }
        all.add(line);
    }

    private static String figure(CalculationPart.Line line) {
        if (line.isByMonth()) {
            return "by month, below";
        }
        return line.values().isEmpty() ? OriginWords.plain(line.origin().value()) : "by the minute, below";
    }

    private static IllegalStateException without(String pointer, Origin origin) {
        return new IllegalStateException(pointer + ": " + origin.figure() + " has no origin");
    }

    /** A letter for each way that more than one figure came about by, and for each behind a figure that has no line. */
    private static Map<String, String> letters(List<CalculationPart.Line> lines) {
        Map<String, Integer> uses = new LinkedHashMap<>();
        for (CalculationPart.Line line : lines) {
            uses.merge(told(line.origin()), 1, Integer::sum);
            for (Origin input : line.origin().inputs()) {
                if (!isEntered(input) && input.inputs().isEmpty()) {
                    uses.merge(told(input), 2, Integer::sum);
                }
            }
        }
        Map<String, String> letters = new LinkedHashMap<>();
        uses.forEach((how, count) -> {
            if (count > 1) {
                letters.put(how, letter(letters.size()));
            }
        });
        return letters;
    }

    /** a to z, then aa to zz. */
    private static String letter(int index) {
        String last = String.valueOf((char) ('a' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }

    private static String how(Origin o, Map<String, String> letters, Set<String> told) {
        String how = told(o);
        String letter = letters.get(how);
        if (letter == null) {
            return how;
        }
        told.add(how);
        return "(" + letter + ")";
    }

    private static String input(Origin input, Map<String, String> letters, Set<String> told) {
        String said = OriginWords.plain(input.figure()) + " " + OriginWords.plain(input.value());
        if (isEntered(input) || !input.inputs().isEmpty()) {
            return said;
        }
        return said + " " + how(input, letters, told);
    }

    private static boolean isEntered(Origin o) {
        return o.confidence().isEmpty() && o.how().startsWith("entered");
    }

    private static String told(Origin o) {
        return OriginWords.plain(o.how())
                + o.confidence().map(c -> "; held as " + c.written()).orElse("");
    }
}
