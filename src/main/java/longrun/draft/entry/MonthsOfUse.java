package longrun.draft.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;

/** The months of a use, as a list of numbers 1 to 12; no list means the whole year. */
public final class MonthsOfUse {

    private static final String MONTHS = "months";

    private MonthsOfUse() {}

    /** Whether the list of a use has a month. */
    public static boolean has(DraftValue use, int month) {
        for (JsonNode m : use.node().path(MONTHS)) {
            if (m.asInt() == month) {
                return true;
            }
        }
        return false;
    }

    /** Adds a month to the use at a pointer, or removes it; with the last month the list is removed. */
    public static void toggle(DraftEdit draft, String at, int month) {
        if (!(draft.root().at(at) instanceof ObjectNode use)) {
            return;
        }
        ArrayNode now = JsonNodeFactory.instance.arrayNode();
        boolean was = false;
        for (JsonNode m : use.path(MONTHS)) {
            if (m.asInt() == month) {
                was = true;
            } else {
                now.add(m);
            }
        }
        if (!was) {
            now.add(DecimalNode.valueOf(BigDecimal.valueOf(month)));
        }
        if (now.isEmpty()) {
            use.remove(MONTHS);
        } else {
            use.set(MONTHS, now);
        }
    }
}
