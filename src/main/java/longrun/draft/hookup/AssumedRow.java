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

/** Rows of parts that are taken as usual. They say so, part by part, until somebody has looked: {@code "seen": false}. */
public final class AssumedRow {

    static final String SEEN = "seen";

    private static final List<String> WITH_TRAP = List.of("shutoff", "sediment-trap", "flexible-connector");
    private static final List<String> WITHOUT_TRAP = List.of("shutoff", "flexible-connector");
    private static final List<String> RIGID = List.of("shutoff", "sediment-trap", "union", "rigid-pipe");

    /** What a part is wherever it is fitted; where it stands at one appliance says nothing of another. */
    private static final Set<String> OF_THE_PART =
            Set.of("part", "place", "size", "nipple", "length", "capacity", "capacityGas", "ratedDrop");

    private AssumedRow() {}

    static ArrayNode of(List<String> kinds) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        kinds.forEach(k -> list.addObject().put("part", k).put(SEEN, false));
        return list;
    }

    /** The parts of another row, without what was measured where they stand. */
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

    /** With a sediment trap unless the kind is excused, as it is vented. */
    static List<String> usualFor(JsonNode appliance) {
        TrapNeed need = TrapNeed.of(
                chosen(ApplianceKind.class, appliance.path("kind")),
                chosen(ApplianceVent.class, appliance.path("vent")));
        return need == TrapNeed.EXEMPT ? WITHOUT_TRAP : WITH_TRAP;
    }

    private static <E extends Enum<E> & Named> Fact<E> chosen(Class<E> choices, JsonNode entry) {
        return Named.find(choices, entry.asText("")).map(e -> Fact.known(e)).orElse(Fact.unknown());
    }

    /** Takes the usual row at every appliance that has none entered; one step. */
    public static void takeAll(HouseSession session) {
        List<String> without = listWithout(session);
        session.change(d -> without.forEach(a ->
                DraftTree.put(d.root(), a + "/connection", of(usualFor(d.root().at(a))))));
    }

    /** The appliances, by their pointers, at which no parts are entered. */
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
