package longrun.draft.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A drawing of how the lines branch, in pieces that stand beside the rows: each regulator or line that feeds others is an
 * upright, and each line leaves its upright at its own row.
 */
public final class BranchDrawing {

    private static final int MIDDLE = 22; // of a row 44 px high
    private static final String OVER_THE_RULE = "-2"; // drawn over the hairline between two rows
    private static final int FIRST_LANE = 28;
    private static final int STEP = 14;
    private static final int MOST_LANES = 6;

    private final List<Line> lines;
    private final Map<String, Integer> lane = new LinkedHashMap<>();
    private final Map<String, Integer> begins = new LinkedHashMap<>();
    private final Map<String, Integer> ends = new LinkedHashMap<>();

    /** @param lines the lines of the run, in order */
    public BranchDrawing(List<Line> lines) {
        this.lines = lines;
        for (int i = 0; i < lines.size(); i++) {
            ends.put(lines.get(i).from(), i);
            begins.putIfAbsent(lines.get(i).from(), i);
        }
        for (int i = 0; i < lines.size(); i++) {
            for (String fed : lines.get(i).feeds()) {
                String source = fed.startsWith("R") && begins.containsKey(fed)
                        ? fed
                        : lines.get(i).id();
                begins.put(source, Math.min(i, begins.getOrDefault(source, i)));
            }
        }
        for (String source : begins.keySet()) {
            lane.put(source, Math.min(depth(source, 0), MOST_LANES));
        }
    }

    private int depth(String source, int tried) {
        for (Line line : lines) {
            if (tried < lines.size()
                    && (line.id().equals(source) || line.feeds().contains(source) && source.startsWith("R"))) {
                return 1 + depth(line.from(), tried + 1);
            }
        }
        return 0;
    }

    private int x(String source) {
        int l = lane.getOrDefault(source, 0);
        return l == 0 ? 8 : FIRST_LANE + (l - 1) * STEP;
    }

    /** Its width, px. */
    public int width() {
        int deepest = lane.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        return Math.max(28, FIRST_LANE + (deepest - 1) * STEP + 18);
    }

    /** The piece of the drawing beside one row, as SVG; a selected line is in the accent colour. */
    public String beside(int row, boolean selected) {
        Line line = lines.get(row);
        List<String> parts = new ArrayList<>();
        for (String source : begins.keySet()) {
            if (!ends.containsKey(source)) {
                continue;
            }
            boolean starts = row == begins.getOrDefault(source, row);
            boolean over = row > begins.getOrDefault(source, row) && row < ends.getOrDefault(source, row);
            boolean stops = row == ends.getOrDefault(source, row) && !starts;
            if (starts && ends.getOrDefault(source, row) > row) {
                parts.add(upright(x(source), MIDDLE + "", "100%"));
            } else if (over) {
                parts.add(upright(x(source), OVER_THE_RULE, "100%"));
            } else if (stops) {
                parts.add(upright(x(source), OVER_THE_RULE, String.valueOf(MIDDLE)));
            }
        }
        String own =
                line.feeds().stream().filter(f -> f.startsWith("R")).findFirst().orElse(line.id());
        int left = x(line.from());
        int right = line.branches() && lane.containsKey(upright(line, own)) ? x(upright(line, own)) : width() - 2;
        String pen = selected ? "p sel" : "p";
        parts.add("<line class='" + pen + "' x1='" + left + "' x2='" + (right + (line.branches() ? 1.25 : 0)) + "' y1='"
                + MIDDLE + "' y2='" + MIDDLE + "'/>");
        if (line.from().startsWith("R")
                && begins.getOrDefault(line.from(), row) == row
                && line.from().equals(PressureStart.FIRST_REGULATOR)) {
            parts.add(regulator(left));
        }
        boolean between = begins.getOrDefault(line.from(), row) < row && row < ends.getOrDefault(line.from(), row);
        if (between) {
            parts.add("<circle class='pf' cx='" + left + "' cy='" + MIDDLE + "' r='3.5'/>");
        }
        if (!own.equals(line.id())) {
            parts.add(regulator(right));
        }
        return "<svg aria-hidden='true'>" + String.join("", parts) + "</svg>";
    }

    /** The id of the upright at which a line ends: its own while nothing leaves the regulator at its end. */
    private String upright(Line line, String own) {
        return lane.containsKey(own) ? own : line.id();
    }

    private static String upright(int x, String y1, String y2) {
        return "<line class='p' x1='" + x + "' x2='" + x + "' y1='" + y1 + "' y2='" + y2 + "'/>";
    }

    private static String regulator(int x) {
        return "<circle class='pt' cx='" + x + "' cy='" + MIDDLE + "' r='6'/><path class='pn' d='M" + x + " "
                + (MIDDLE - 6) + "v-6m-6 0h12'/>";
    }
}
