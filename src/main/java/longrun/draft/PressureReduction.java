package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftValue;

/**
 * How the pressure is reduced between tank and appliances: the three usual arrangements of regulators. Choosing one fills in
 * the regulators with their settings and allowed drops, and the pipe between them. Sections already entered stay and leave
 * the last regulator.
 */
public enum PressureReduction {
    WALL(
            "10 psi line to a regulator on the wall",
            "First stage at the tank, second stage at the house; 11 in. w.c. inside.",
            List.of(Step.FIRST, Step.SECOND)),
    TANK(
            "One two-stage regulator at the tank",
            "11 in. w.c. all the way; for short distances.",
            List.of(Step.INTEGRAL)),
    TWO_PSI(
            "2 psi into the house",
            "A line regulator near the appliances brings it to 11 in. w.c.",
            List.of(Step.FIRST, Step.TWO_PSI, Step.LINE));

    /** A regulator as it is filled in; settings and drops are those the capacity tables are made for. */
    private record Step(String kind, String outlet, String drop) {
        static final Step FIRST = new Step("first-stage", "10 psi", "1 psi");
        static final Step SECOND = new Step("second-stage", "11 in w.c.", "0.5 in w.c.");
        static final Step INTEGRAL = new Step("integral-two-stage", "11 in w.c.", "0.5 in w.c.");
        static final Step TWO_PSI = new Step("two-psi", "2 psi", "1 psi");
        static final Step LINE = new Step("line", "11 in w.c.", "0.5 in w.c.");
    }

    private static final String REGULATORS = "regulators";
    private static final String SECTIONS = "sections";
    private static final String FED_BY = "fedBy";
    private static final String FROM = "from";
    private static final String ID = "id";

    private final String title;
    private final String note;
    private final List<Step> steps;

    PressureReduction(String title, String note, List<Step> steps) {
        this.title = title;
        this.note = note;
        this.steps = steps;
    }

    public String title() {
        return title;
    }

    public String note() {
        return note;
    }

    /** Which of the three a draft's regulators are; empty where they are none of them. */
    public static Optional<PressureReduction> of(DraftValue draft) {
        List<String> kinds = new ArrayList<>();
        draft.get(REGULATORS).forEach(r -> kinds.add(r.textOf("kind")));
        for (PressureReduction each : values()) {
            if (each.steps.stream().map(Step::kind).toList().equals(kinds)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** Whether one can be chosen: the draft has no regulators yet, or those of one of the three. */
    public static boolean canChoose(DraftValue draft) {
        return draft.get(REGULATORS).isEmpty() || of(draft).isPresent();
    }

    /** Fills in the regulators and the pipe between them. */
    public void into(DraftEdit edit) {
        ObjectNode draft = edit.root();
        ArrayNode regulators = draft.withArray(REGULATORS);
        while (regulators.size() > steps.size()) {
            dropLast(draft, regulators);
        }
        for (int i = 0; i < steps.size(); i++) {
            if (i == regulators.size()) {
                append(draft, regulators, i == 0 ? "tank" : feeder(draft, regulators, i));
            }
            Step step = steps.get(i);
            ObjectNode r = (ObjectNode) regulators.get(i);
            if (!r.path("kind").asText().equals(step.kind())) {
                r.put("kind", step.kind()).put("outlet", step.outlet()).put("allowedDrop", step.drop());
            }
        }
    }

    /** The pipes that left the last regulator go on from the pipe that fed it. */
    private static void dropLast(ObjectNode draft, ArrayNode regulators) {
        JsonNode last = regulators.remove(regulators.size() - 1);
        String feeder = last.path(FED_BY).asText("");
        if (feeder.isEmpty()) {
            feeder = regulators.get(regulators.size() - 1).path(ID).asText();
        }
        for (JsonNode s : leaving(draft, last.path(ID).asText())) {
            ((ObjectNode) s).put(FROM, feeder);
        }
    }

    private static void append(ObjectNode draft, ArrayNode regulators, String feeder) {
        Set<String> taken = ids(draft);
        int number = regulators.size() + 1;
        while (taken.contains("R" + number)) {
            number++;
        }
        String id = "R" + number;
        for (JsonNode s : leaving(draft, feeder)) {
            ((ObjectNode) s).put(FROM, id);
        }
        if (!regulators.isEmpty()) {
            String before = regulators.get(regulators.size() - 1).path(ID).asText();
            for (JsonNode s : leaving(draft, before)) {
                if (!s.path(ID).asText().equals(feeder)) {
                    ((ObjectNode) s).put(FROM, id);
                }
            }
        }
        regulators.addObject().put(ID, id).put(FED_BY, feeder);
    }

    /** The pipe that ends at the next regulator: the one buried line there is, else a new one. */
    private static String feeder(ObjectNode draft, ArrayNode regulators, int step) {
        String before = regulators.get(step - 1).path(ID).asText();
        List<JsonNode> leaving = leaving(draft, before);
        boolean yard = step == 1;
        if (yard && leaving.size() == 1) {
            String setting = leaving.get(0).path("setting").asText();
            if (setting.equals("underground") || setting.equals("outdoors")) {
                return leaving.get(0).path(ID).asText();
            }
        }
        Set<String> taken = ids(draft);
        String id = yard ? free(taken, "Y", 1) : freeLetter(taken);
        ObjectNode section = draft.withArray(SECTIONS).objectNode();
        section.put(ID, id).put(FROM, before);
        if (yard) {
            section.put("name", "tank to the wall").put("material", "pe-pipe").put("setting", "underground");
        } else {
            section.put("name", "wall to the line regulator")
                    .put("material", "steel")
                    .put("setting", "indoors");
        }
        draft.withArray(SECTIONS)
                .insert(yard ? 0 : Math.min(1, draft.path(SECTIONS).size()), section);
        return id;
    }

    private static String free(Set<String> taken, String letter, int from) {
        int number = from;
        while (taken.contains(letter + number)) {
            number++;
        }
        return letter + number;
    }

    private static String freeLetter(Set<String> taken) {
        for (char c = 'A'; c <= 'Z'; c++) {
            if (!taken.contains(String.valueOf(c))) {
                return String.valueOf(c);
            }
        }
        return free(taken, "L", 1);
    }

    private static List<JsonNode> leaving(ObjectNode draft, String id) {
        List<JsonNode> out = new ArrayList<>();
        for (JsonNode s : draft.path(SECTIONS)) {
            if (s.isObject() && s.path(FROM).asText().equals(id)) {
                out.add(s);
            }
        }
        return out;
    }

    private static Set<String> ids(ObjectNode draft) {
        Set<String> taken = new HashSet<>();
        for (String list : List.of(REGULATORS, SECTIONS, "rooms", "appliances")) {
            draft.path(list).forEach(n -> taken.add(n.path(ID).asText()));
        }
        return taken;
    }
}
