package longrun.draft.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;

/** Where the pressure of a run starts; each choice sets the regulators. */
public enum PressureStart {
    WALL("Regulator on the wall", "10 psi from the tank, 11 in. w.c. inside"),
    TANK("Both at the tank", "11 in. w.c. all the way"),
    TWO_PSI("2 psi into the house", "a line regulator near the appliances");

    /** The id of the regulator at which the run starts. */
    public static final String FIRST_REGULATOR = "R1";
    /** The id of the line regulator at the end of the first line, with 2 psi. */
    public static final String LINE_REGULATOR = "R2";

    private final String title;
    private final String note;

    PressureStart(String title, String note) {
        this.title = title;
        this.note = note;
    }

    /** Its name in the choice. */
    public String title() {
        return title;
    }

    /** The line under its name in the choice. */
    public String note() {
        return note;
    }

    /** The regulators, with the settings and drops of the capacity tables: 11 in. w.c. with 0.5, 2 psi with 1. */
    ArrayNode regulators() {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        switch (this) {
            case WALL -> add(all, FIRST_REGULATOR, "second-stage", "11 in w.c.", "0.5 in w.c.");
            case TANK -> add(all, FIRST_REGULATOR, "integral-two-stage", "11 in w.c.", "0.5 in w.c.");
            case TWO_PSI -> {
                add(all, FIRST_REGULATOR, "two-psi", "2 psi", "1 psi");
                add(all, LINE_REGULATOR, "line", "11 in w.c.", "0.5 in w.c.");
            }
        }
        return all;
    }

    private static void add(ArrayNode all, String id, String kind, String outlet, String drop) {
        all.addObject().put("id", id).put("kind", kind).put("outlet", outlet).put("allowedDrop", drop);
    }

    /** The start by the regulators of a plan; empty where they are none of the three. */
    static java.util.Optional<PressureStart> of(JsonNode regulators) {
        List<String> kinds = new java.util.ArrayList<>();
        regulators.forEach(r -> kinds.add(r.path("kind").asText()));
        if (kinds.isEmpty() || kinds.equals(List.of("second-stage"))) {
            return java.util.Optional.of(WALL);
        }
        if (kinds.equals(List.of("integral-two-stage"))) {
            return java.util.Optional.of(TANK);
        }
        return kinds.equals(List.of("two-psi", "line")) ? java.util.Optional.of(TWO_PSI) : java.util.Optional.empty();
    }
}
