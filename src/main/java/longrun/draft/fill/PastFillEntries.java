package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.plan.json.PlanLimits;
import longrun.quantity.Typed;
import longrun.words.UnitSystem;

/** Past fills in a plan document, and how they are pasted from a list of bills. */
public final class PastFillEntries {

    private static final String DELIVERIES = "deliveries";
    /** One more than a plan may have, so that a longer list is refused with a message and not cut off unnoticed. */
    private static final long MOST_PASTED = PlanLimits.HOUSE.others() + 1L;

    private static final Pattern LAST_NUMBER = Pattern.compile(
            "(.*?)[\\s;,:|]+([0-9][0-9.,]*\\s*(?:gal(?:lons?)?\\.?|L|liters?|litres?)?)\\s*", Pattern.CASE_INSENSITIVE);

    private PastFillEntries() {}

    /** A past fill: its date and the volume delivered, as stored. */
    public record Past(String date, String gallons) {

        /** Whether nothing is typed. */
        public boolean isBlank() {
            return date.isBlank() && gallons.isBlank();
        }
    }

    /** The columns of a past fill. */
    public enum Column {
        DATE,
        GALLONS
    }

    /** The past fills in order. */
    public static List<Past> of(ObjectNode plan) {
        List<Past> out = new ArrayList<>();
        plan.path(DELIVERIES)
                .forEach(d -> out.add(
                        new Past(d.path("date").asText(""), d.path("volume").asText(""))));
        return out;
    }

    /** Stores what was typed in a column; typing in the line after the last adds one. */
    public static void type(ObjectNode plan, int index, Column column, String typed, UnitSystem units) {
        ArrayNode all = plan.withArray(DELIVERIES);
        if (index >= all.size()) {
            if (typed.isBlank()) {
                return;
            }
            all.addObject();
        }
        ObjectNode d = (ObjectNode) all.get(Math.min(index, all.size() - 1));
        String entry = column == Column.DATE ? "date" : "volume";
        if (typed.isBlank()) {
            d.remove(entry);
        } else {
            d.put(
                    entry,
                    column == Column.DATE
                            ? Typed.date(typed)
                            : Typed.quantity(typed, units == UnitSystem.CUSTOMARY ? "gal" : "L"));
        }
        dropBlankEnd(all);
    }

    private static void dropBlankEnd(ArrayNode all) {
        for (int i = all.size() - 1; i >= 0 && blank(all.get(i)); i--) {
            all.remove(i);
        }
    }

    private static boolean blank(JsonNode d) {
        return !d.has("date") && !d.has("volume");
    }

    /** Removes a past fill. */
    public static void remove(ObjectNode plan, int index) {
        plan.withArray(DELIVERIES).remove(index);
    }

    /** Adds the lines of a list, date first and gallons last; a heading is left out, anything else is taken as written. */
    public static void paste(ObjectNode plan, String text, UnitSystem units) {
        text.lines().filter(l -> !l.isBlank()).limit(MOST_PASTED).forEach(line -> {
            Past p = line(line);
            if (!line.matches(".*[0-9].*")) {
                return; // a heading
            }
            int at = plan.withArray(DELIVERIES).size();
            type(plan, at, Column.DATE, p.date(), units);
            type(plan, at, Column.GALLONS, p.gallons(), units);
        });
    }

    private static Past line(String line) {
        String[] cells = line.split("\t", -1);
        if (cells.length > 1) {
            return new Past(cells[0].strip(), cells[cells.length - 1].strip());
        }
        Matcher m = LAST_NUMBER.matcher(line.strip());
        return m.matches() ? new Past(m.group(1).strip(), m.group(2).strip()) : new Past(line.strip(), "");
    }
}
