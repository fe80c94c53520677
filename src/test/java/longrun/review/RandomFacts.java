package longrun.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Puts what the rules ask for into a plan at random: right, wrong, looked at and not there, or nothing. */
final class RandomFacts {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> DISTANCES =
            List.of("\"none\"", "\"2 ft\"", "\"4 ft\"", "\"12 ft\"", "\"> 4 ft\"");
    private static final List<String> FLAGS = List.of("true", "false", "true");

    /** What may be entered in each list of a plan, as JSON. */
    private static final Map<String, Map<String, List<String>>> ENTRIES = Map.of(
            "regulators",
            Map.ofEntries(
                    Map.entry("setting", List.of("\"outdoors\"", "\"outdoors\"", "\"indoors\"", "\"concealed\"")),
                    Map.entry("vent", List.of("\"outdoors\"", "\"limiter\"", "\"piped\"", "\"none\"")),
                    Map.entry("capacityAtInlet", List.of("\"1 psi\"", "\"5 psi\"", "\"9 in w.c.\"")),
                    Map.entry("ventToOpening", DISTANCES),
                    Map.entry("ventToIgnition", DISTANCES),
                    Map.entry("ventToIntake", DISTANCES),
                    Map.entry("ventToVentTerminal", DISTANCES),
                    Map.entry("shutoffBefore", FLAGS),
                    Map.entry("teeBefore", FLAGS),
                    Map.entry("teeAfter", FLAGS),
                    Map.entry("access", FLAGS)),
            "sections",
            Map.of(
                    "setting", List.of("\"outdoors\"", "\"underground\"", "\"indoors\"", "\"concealed\""),
                    "under", List.of("\"none\"", "\"none\"", "\"building\"", "\"drive\""),
                    "ends", List.of("[\"anodeless-riser\",\"anodeless-riser\"]", "[]"),
                    "passes", List.of("[]", "[{\"what\":\"outside-wall\"}]")),
            "appliances",
            Map.of(
                    "vent",
                    List.of("\"direct\"", "\"fan\"", "\"draft\"", "\"none\""),
                    "terminalToRegulator",
                    DISTANCES));

    /** The same of the parts of a hookup, by the part. */
    private static final Map<String, Map<String, List<String>>> OF_PARTS = Map.of(
            "shutoff",
            Map.of(
                    "distance", DISTANCES,
                    "sameRoom", FLAGS,
                    "accessible", FLAGS,
                    "readyAccess", FLAGS,
                    "labelled", FLAGS,
                    "size", List.of("\"1/2\"", "\"3/4\"")),
            "sediment-trap",
            Map.of("nipple", List.of("\"2 in\"", "\"4 in\""), "capPointsDown", FLAGS, "gasTurns", FLAGS),
            "flexible-connector",
            Map.of(
                    "length", List.of("\"3 ft\"", "\"7 ft\""),
                    "throughWall", List.of("false", "false", "true"),
                    "concealed", List.of("false", "false", "true"),
                    "capacity", List.of("\"60 kBtu/h\"", "\"400 kBtu/h\""),
                    "size", List.of("\"1/2\"", "\"3/4\"")));

    private RandomFacts() {}

    /** Leaves what stands there already, and makes two of three entries that may be made. */
    static void enter(ObjectNode plan, Random random) {
        new TreeMap<>(ENTRIES).forEach((list, entries) -> plan.path(list).forEach(e -> enter(e, entries, random)));
        plan.path("appliances")
                .forEach(a -> a.path("connection")
                        .forEach(p ->
                                enter(p, OF_PARTS.getOrDefault(p.path("part").asText(), Map.of()), random)));
        agree(plan, random);
    }

    /** Of two entries that deny each other, taking one away rightly leaves what the other says. */
    private static void agree(ObjectNode plan, Random random) {
        plan.path("sections").forEach(s -> {
            if (!s.path("setting").asText().equals("underground")) {
                ((ObjectNode) s).remove("under");
            }
            if (s.path("ends").size() == 2) {
                ((ObjectNode) s).remove("passes"); // up a riser at both ends it passes no wall
            }
        });
        plan.path("appliances")
                .forEach(a -> a.path("connection").forEach(p -> {
                    if (p.path("accessible").isBoolean()
                            && !p.path("accessible").asBoolean()) {
                        ((ObjectNode) p).remove("readyAccess");
                    }
                }));
        boolean atRegulators = random.nextBoolean(); // from vent to terminal is one distance
        plan.path("regulators").forEach(r -> ((ObjectNode) r).remove(atRegulators ? "none" : "ventToVentTerminal"));
        plan.path("appliances").forEach(a -> ((ObjectNode) a).remove(atRegulators ? "terminalToRegulator" : "none"));
    }

    private static void enter(JsonNode holder, Map<String, List<String>> entries, Random random) {
        new TreeMap<>(entries).forEach((name, values) -> {
            if (random.nextInt(3) > 0 && !holder.has(name)) {
                try {
                    ((ObjectNode) holder).set(name, JSON.readTree(values.get(random.nextInt(values.size()))));
                } catch (IOException e) {
                    throw new IllegalStateException(name, e);
                }
            }
        });
    }
}
