package longrun.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.rules.shape.House;

/**
 * One row of the boundaries: a rule at a place of the sample house after an edit, the state it must come to, and where
 * it tells something the severity and the section it is printed in.
 */
record Boundary(String rule, String place, String edit, String state, String severity, String section) {

    private static final Map<String, List<Boundary>> BY_TOPIC = read();

    /** The rows under each heading of the file, by that heading. */
    static Map<String, List<Boundary>> byTopic() {
        return BY_TOPIC;
    }

    static List<Boundary> all() {
        return BY_TOPIC.values().stream().flatMap(List::stream).toList();
    }

    House house() {
        return Edits.house("whole-house.json", edit);
    }

    private static Map<String, List<Boundary>> read() {
        Map<String, List<Boundary>> out = new LinkedHashMap<>();
        List<Boundary> rows = new ArrayList<>();
        for (String line : Samples.text("rules/boundaries.csv").lines().skip(1).toList()) {
            if (line.startsWith("#")) {
                rows = new ArrayList<>();
                out.put(line.substring(1).strip(), rows);
            } else if (!line.isBlank()) {
                rows.add(of(line));
            }
        }
        return out;
    }

    private static Boundary of(String line) {
        String[] cells = Stream.of(line.split("\\|", -1)).map(String::strip).toArray(String[]::new);
        if (cells.length != 6) {
            throw new IllegalArgumentException("six columns wanted: " + line);
        }
        return new Boundary(cells[0], cells[1], cells[2], cells[3], cells[4], cells[5]);
    }
}
