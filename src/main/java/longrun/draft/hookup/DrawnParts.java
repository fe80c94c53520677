package longrun.draft.hookup;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import longrun.draft.entry.DraftTree;
import longrun.draft.entry.DraftValue;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.json.Reading;
import longrun.review.FullPlanReader;

/** Parts of a draft for drawing, while other entries may still be wrong; an entry not understood is left out. */
public final class DrawnParts {

    private static final int TRIES = 4;

    private DrawnParts() {}

    /** The parts of a connection in the draft. */
    public static List<Appliance.Part> of(DraftValue connection) {
        if (!connection.isList()) {
            return List.of();
        }
        ObjectNode appliance = JsonNodeFactory.instance.objectNode().put("id", "a");
        appliance.set("connection", connection.node().deepCopy());
        return read("appliances", appliance)
                .flatMap(p -> p.appliances().get(0).connection().findValue())
                .orElse(List.of());
    }

    /** A regulator in the draft; empty where it cannot be read. */
    public static Optional<Regulator> regulator(DraftValue regulator) {
        if (!(regulator.node().deepCopy() instanceof ObjectNode own)) {
            return Optional.empty();
        }
        own.remove("fedBy");
        own.put("id", "R");
        return read("regulators", own).map(p -> p.regulators().get(0));
    }

    private static Optional<Plan> read(String list, ObjectNode item) {
        ObjectNode plan = JsonNodeFactory.instance.objectNode().put("format", "longrun-plan/1");
        ArrayNode items = plan.putArray(list);
        items.add(item);
        for (int i = 0; i < TRIES; i++) {
            Reading reading = FullPlanReader.read(plan);
            if (reading.plan().isPresent()) {
                return reading.plan();
            }
            reading.errors().forEach(e -> DraftTree.remove(plan, e.pointer()));
        }
        return Optional.empty();
    }
}
