package longrun.hotwater.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.origin.DataFile;

/** Draws of a standard 24 h test, which stand in where a house has none entered: the pattern whose volume is nearest. */
public final class DrawPatterns {

    /** Where the patterns are from. */
    public static final String SOURCE =
            "24-hour simulated-use test of water heaters, US uniform test method, 10 CFR 430 subpart B appendix E";

    /** The test's clock begins with a morning's showers: own reading. */
    private static final double BEGINS_MIN = 6 * 60;

    private static final Map<String, List<DataFile.Row>> ROWS = read();

    private DrawPatterns() {}

    private static Map<String, List<DataFile.Row>> read() {
        Map<String, List<DataFile.Row>> out = new LinkedHashMap<>();
        DataFile.read("water/draw-patterns.csv")
                .rows()
                .forEach(r -> out.computeIfAbsent(r.text("pattern"), p -> new ArrayList<>())
                        .add(r));
        return out;
    }

    /** Names of the patterns, smallest first. */
    public static List<String> names() {
        return List.copyOf(ROWS.keySet());
    }

    /** The pattern whose daily volume is nearest. */
    public static String nearest(double gallons) {
        String best = "";
        double away = Double.POSITIVE_INFINITY;
        for (String name : ROWS.keySet()) {
            double off = Math.abs(volume(name) - gallons);
            if (off < away) {
                away = off;
                best = name;
            }
        }
        return best;
    }

    /** Gallons a day of a pattern. */
    public static double volume(String name) {
        return rows(name).stream().mapToDouble(r -> r.number("volume_gal")).sum();
    }

    /** The draws of a pattern, used at a temperature. */
    public static List<Draw> draws(String name, double useF) {
        List<Draw> out = new ArrayList<>();
        for (DataFile.Row r : rows(name)) {
            String[] clock = r.text("time").split(":", 2);
            double minute = (Integer.parseInt(clock[0]) * 60 + Integer.parseInt(clock[1]) + BEGINS_MIN) % DrawDay.DAY;
            double flow = r.number("flow_gpm");
            out.add(new Draw(
                    "draw " + r.text("draw") + " of the test", minute, r.number("volume_gal") / flow, flow, useF));
        }
        return List.copyOf(out);
    }

    private static List<DataFile.Row> rows(String name) {
        return ROWS.getOrDefault(name, List.of());
    }
}
