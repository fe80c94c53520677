package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.FreeId;

/** Makes a whole house of a run: it adds the tank and, where the run has none, the first-stage regulator and its line. */
public final class RunToHouse {

    private static final String REGULATORS = "regulators";
    private static final String SECTIONS = "sections";

    private RunToHouse() {}

    /** A house with the run's own regulators, lines and appliances; a plan that is not a run stays as it is. */
    public static DraftValue house(DraftValue run) {
        return DraftValue.of(house((ObjectNode) run.node().deepCopy()));
    }

    private static ObjectNode house(ObjectNode house) {
        if (house.path(REGULATORS).path(0).has("fedBy")) {
            return house;
        }
        List<String> kinds = new ArrayList<>();
        house.path(REGULATORS).forEach(r -> kinds.add(r.path("kind").asText()));
        if (kinds.equals(List.of("integral-two-stage"))) {
            ((ObjectNode) house.path(REGULATORS).get(0)).put("fedBy", "tank");
        } else if (kinds.equals(List.of("second-stage")) || kinds.equals(List.of("two-psi", "line"))) {
            putFirstStageBefore(house);
        }
        return house;
    }

    private static void putFirstStageBefore(ObjectNode house) {
        ArrayNode regulators = house.withArray(REGULATORS);
        // From the last, so that no two have the same name in between.
        for (int i = regulators.size() - 1; i >= 0; i--) {
            ObjectNode r = (ObjectNode) regulators.get(i);
            String before = r.path("id").asText();
            String after = "R" + (i + 2);
            r.put("id", after);
            for (JsonNode s : house.path(SECTIONS)) {
                if (s.path("from").asText().equals(before)) {
                    ((ObjectNode) s).put("from", after);
                }
            }
        }
        String yard = FreeId.of(DraftValue.of(house), "Y1");
        ((ObjectNode) regulators.get(0)).put("fedBy", yard);
        ObjectNode first = regulators.objectNode();
        first.put("id", "R1").put("kind", "first-stage").put("fedBy", "tank");
        first.put("outlet", "10 psi").put("allowedDrop", "1 psi");
        regulators.insert(0, first);
        ObjectNode line = regulators.objectNode();
        line.put("id", yard).put("name", "tank to the wall").put("from", "R1");
        line.put("material", "pe-pipe").put("setting", "underground");
        house.withArray(SECTIONS).insert(0, line);
    }
}
