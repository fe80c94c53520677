package longrun.draft.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;

/** Where the pressure of the run starts; each fills in the regulators, so nobody needs the word stage to begin. */
public enum Start {
    WALL("Regulator on the wall", "10 psi from the tank, 11 in. w.c. inside"),
    TANK("Both at the tank", "11 in. w.c. all the way"),
    TWO_PSI("2 psi into the house", "a line regulator near the appliances");

    /** The regulator the run starts at. */
    public static final String FIRST = "R1";
    /** The line regulator at the end of the first line, for 2 psi. */
    public static final String LINE_REGULATOR = "R2";

    private final String title;
    private final String note;

    Start(String title, String note) {
        this.title = title;
        this.note = note;
    }

    public String title() {
        return title;
    }

    public String note() {
        return note;
    }

    /** Settings and drops as the capacity tables take them: 11 in. w.c. with 0.5, 2 psi with 1. */
    ArrayNode regulators() {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        switch (this) {
            case WALL -> add(all, FIRST, "second-stage", "11 in w.c.", "0.5 in w.c.");
            case TANK -> add(all, FIRST, "integral-two-stage", "11 in w.c.", "0.5 in w.c.");
            case TWO_PSI -> {
                add(all, FIRST, "two-psi", "2 psi", "1 psi");
                add(all, LINE_REGULATOR, "line", "11 in w.c.", "0.5 in w.c.");
            }
        }
        return all;
    }

    private static void add(ArrayNode all, String id, String kind, String outlet, String drop) {
        all.addObject().put("id", id).put("kind", kind).put("outlet", outlet).put("allowedDrop", drop);
    }

    /** Which start a plan's regulators are, if it is one of the three. */
    static java.util.Optional<Start> of(JsonNode regulators) {
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
