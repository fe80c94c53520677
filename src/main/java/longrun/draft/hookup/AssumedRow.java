package longrun.draft.hookup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import longrun.draft.HouseSession;
import longrun.draft.entry.DraftTree;
import longrun.piping.TrapNeed;
import longrun.plan.Fact;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.ApplianceVent;
import longrun.plan.choice.Named;

/** Usual rows of parts at an appliance. Each part is marked as assumed, {@code "seen": false}, until somebody has looked. */
public final class AssumedRow {

    static final String SEEN = "seen";

    private static final List<String> WITH_TRAP = List.of("shutoff", "sediment-trap", "flexible-connector");
    private static final List<String> WITHOUT_TRAP = List.of("shutoff", "flexible-connector");
    private static final List<String> RIGID = List.of("shutoff", "sediment-trap", "union", "rigid-pipe");

    /** Entries that describe the part itself; entries on where it is fitted do not apply to another appliance. */
    private static final Set<String> OF_THE_PART =
            Set.of("part", "place", "size", "nipple", "length", "capacity", "capacityGas", "ratedDrop");

    private AssumedRow() {}

    static ArrayNode of(List<String> kinds) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        kinds.forEach(k -> list.addObject().put("part", k).put(SEEN, false));
        return list;
    }

    /** The parts of another row, without the entries on where they are fitted. */
    static ArrayNode like(JsonNode connection) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (JsonNode part : connection) {
            ObjectNode own = list.addObject();
            part.properties().stream()
                    .filter(e -> OF_THE_PART.contains(e.getKey()))
                    .forEach(e -> own.set(e.getKey(), e.getValue().deepCopy()));
            own.put(SEEN, false);
        }
        return list;
    }

    static boolean isAssumed(JsonNode part) {
        JsonNode seen = part.path(SEEN);
        return (seen.isBoolean() && !seen.asBoolean()) || seen.asText().equals("none");
    }

    static List<List<String>> usual(JsonNode appliance) {
        List<String> first = usualFor(appliance);
        List<List<String>> rows = new ArrayList<>(List.of(first));
        for (List<String> row : List.of(WITH_TRAP, RIGID, WITHOUT_TRAP)) {
            if (!row.equals(first)) {
                rows.add(row);
            }
        }
        return List.copyOf(rows);
    }

    /** The usual row for an appliance: with a sediment trap unless the code exempts its kind. */
    static List<String> usualFor(JsonNode appliance) {
        TrapNeed need = TrapNeed.of(
                chosen(ApplianceKind.class, appliance.path("kind")),
                chosen(ApplianceVent.class, appliance.path("vent")));
        return need == TrapNeed.EXEMPT ? WITHOUT_TRAP : WITH_TRAP;
    }

    private static <E extends Enum<E> & Named> Fact<E> chosen(Class<E> choices, JsonNode entry) {
        return Named.find(choices, entry.asText("")).map(e -> Fact.known(e)).orElse(Fact.unknown());
    }

    /** Enters the usual row at every appliance without parts, as one step of undo. */
    public static void takeAll(HouseSession session) {
        List<String> without = listWithout(session);
        session.change(d -> without.forEach(a ->
                DraftTree.put(d.root(), a + "/connection", of(usualFor(d.root().at(a))))));
    }

    /** The pointers of the appliances without parts entered. */
    public static List<String> listWithout(HouseSession session) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < session.at("/appliances").size(); i++) {
            if (session.at("/appliances/" + i + "/connection").isNothing()) {
                out.add("/appliances/" + i);
            }
        }
        return out;
    }
}
