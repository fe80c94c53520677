package longrun.hotwater.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/** Draws of a standard 24 h test, which stand in where a house has none entered: the pattern whose volume is nearest. */
public final class DrawPatterns {

    /** Where the patterns are from. */
    public static final String SOURCE;

    /** The test's clock begins with a morning's showers: own reading. */
    private static final double BEGINS_MIN = 6 * 60;

    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}):([0-5][0-9])");
    private static final Map<String, List<TestDraw>> PATTERNS = new LinkedHashMap<>();

    static {
        DataFile file = DataFile.read("water/draw-patterns.csv");
        SOURCE = file.source();
        for (DataRow r : file.rows()) {
            PATTERNS.computeIfAbsent(r.text("pattern"), p -> new ArrayList<>())
                    .add(new TestDraw(r.text("draw"), minute(r), r.positive("volume_gal"), r.positive("flow_gpm")));
        }
    }

    /**
     * A draw of the test.
     *
     * @param minute of the test
     */
    private record TestDraw(String number, double minute, double gallons, double gpm) {}

    private DrawPatterns() {}

    private static double minute(DataRow row) {
        Matcher clock = CLOCK.matcher(row.text("time"));
        if (!clock.matches()) {
            throw row.fault("time", "'" + row.text("time") + "' is not a time, such as 0:30");
        }
        return 60 * Double.parseDouble(clock.group(1)) + Double.parseDouble(clock.group(2));
    }

    /** The pattern whose daily volume is nearest. */
    public static String nearest(double gallons) {
        String best = "";
        double away = Double.POSITIVE_INFINITY;
        for (String name : PATTERNS.keySet()) {
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
        return rows(name).stream().mapToDouble(TestDraw::gallons).sum();
    }

    /** The draws of a pattern, used at a temperature. */
    public static List<Draw> draws(String name, double useF) {
        List<Draw> out = new ArrayList<>();
        for (TestDraw d : rows(name)) {
            double minute = (d.minute() + BEGINS_MIN) % DrawDay.DAY;
            out.add(new Draw("draw " + d.number() + " of the test", minute, d.gallons() / d.gpm(), d.gpm(), useF));
        }
        return List.copyOf(out);
    }

    private static List<TestDraw> rows(String name) {
        return PATTERNS.getOrDefault(name, List.of());
    }
}
