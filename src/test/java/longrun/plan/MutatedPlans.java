package longrun.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longrun.Samples;
import longrun.sizing.RandomPlans;

/**
 * Plans as a clumsy hand, another program or somebody hostile might send them: entries left out, doubled, replaced by
 * anything, renamed, and lists written without their brackets. The same seed makes the same plans.
 */
public final class MutatedPlans {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> JUNK = List.of(
            "null",
            "\"none\"",
            "\"\"",
            "\"NaN\"",
            "-1",
            "7",
            "1e308",
            "\"1e5 ft\"",
            "{}",
            "[]",
            "[[]]",
            "true",
            "\"> 3 ft\"",
            "\"99999999999999999999 ft\"",
            "\"0 psi\"",
            "\"tank\"",
            "\"\\u0000\"",
            "\"\\uD83D\"",
            "\"\\u202Eevil\"",
            "[null,null]",
            "\"3/0 in\"",
            "\"7/16\"",
            "\"down 3 ft\"",
            "\"nobody\"",
            "[\"nobody\",\"nobody\"]",
            "\"+999999999-12-31\"",
            "\"2026-02-30\"",
            "{\"0\":{\"id\":\"0\"},\"id\":\"x/y~z\"}",
            "\"<script>alert(1)</script>\"");

    private final Random random;
    private final List<ObjectNode> originals = new ArrayList<>();

    public MutatedPlans(long seed) {
        random = new Random(seed);
        originals.add(read(Samples.text("sample-plan.json")));
        originals.add(read(Samples.text("rules/whole-house.json")));
        originals.add(read(Samples.text("data/demo/orchard-house.json")));
        for (int k = 0; k < 5; k++) {
            originals.add(read(RandomPlans.json(random.nextInt(1000), 12)));
        }
    }

    private static ObjectNode read(String json) {
        try {
            return (ObjectNode) JSON.readTree(json);
        } catch (IOException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** The next plan, changed in one to four ways. */
    public ObjectNode next() {
        ObjectNode plan = originals.get(random.nextInt(originals.size())).deepCopy();
        int times = 1 + random.nextInt(4);
        for (int t = 0; t < times; t++) {
            List<Spot> spots = new ArrayList<>();
            collect(plan, spots);
            if (!spots.isEmpty()) {
                change(spots.get(random.nextInt(spots.size())), plan);
            }
        }
        return plan;
    }

    /** A value and what it stands in. */
    private record Spot(JsonNode owner, String name, int index) {

        JsonNode value() {
            return owner.isArray() ? owner.get(index) : owner.get(name);
        }

        void put(JsonNode value) {
            if (owner instanceof ArrayNode list) {
                list.set(index, value);
            } else {
                ((ObjectNode) owner).set(name, value);
            }
        }

        void remove() {
            if (owner instanceof ArrayNode list) {
                list.remove(index);
            } else {
                ((ObjectNode) owner).remove(name);
            }
        }
    }

    private static void collect(JsonNode node, List<Spot> out) {
        node.properties().forEach(e -> {
            if (!e.getKey().equals("format")) {
                out.add(new Spot(node, e.getKey(), -1));
            }
        });
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            out.add(new Spot(node, "", i));
        }
        node.forEach(child -> collect(child, out));
    }

    private void change(Spot spot, ObjectNode plan) {
        switch (random.nextInt(6)) {
            case 0 -> spot.remove();
            case 1 -> spot.put(read(JUNK.get(random.nextInt(JUNK.size())), spot));
            case 2 -> withoutBrackets(plan);
            case 3 -> rename(plan);
            case 4 -> {
                if (spot.owner() instanceof ArrayNode list) {
                    list.insert(random.nextInt(list.size() + 1), spot.value().deepCopy());
                } else {
                    spot.put(JSON.createArrayNode().add(spot.value()));
                }
            }
            default -> {
                List<Spot> others = new ArrayList<>();
                collect(plan, others);
                spot.put(others.get(random.nextInt(others.size())).value().deepCopy());
            }
        }
    }

    private static JsonNode read(String junk, Spot spot) {
        try {
            return JSON.readTree(junk);
        } catch (IOException e) {
            throw new IllegalArgumentException(spot.name(), e);
        }
    }

    /** Some list is written as its first item alone. */
    private void withoutBrackets(ObjectNode plan) {
        List<Spot> spots = new ArrayList<>();
        collect(plan, spots);
        spots.removeIf(s -> !(s.value().isArray() && s.value().size() > 0));
        if (!spots.isEmpty()) {
            Spot spot = spots.get(random.nextInt(spots.size()));
            spot.put(spot.value().get(random.nextInt(spot.value().size())));
        }
    }

    /** Some name is written otherwise, so that what names it names nothing. */
    private void rename(ObjectNode plan) {
        List<Spot> spots = new ArrayList<>();
        collect(plan, spots);
        spots.removeIf(s -> !List.of("id", "from", "fedBy", "room", "appliance", "at", "table", "firing")
                .contains(s.name()));
        if (!spots.isEmpty()) {
            spots.get(random.nextInt(spots.size())).put(new TextNode("no-such-" + random.nextInt(3)));
        }
    }
}
