package longrun.draft.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.Set;
import longrun.draft.NotAPlan;
import longrun.draft.PlanFiles;

/** Saves and opens a run as a plan file. A plan of a whole house is refused with the reason. */
public final class RunFile {

    private static final int MOST_LINES = 500;

    private RunFile() {}

    /** The text of the plan file: indented JSON. */
    public static String write(RunDraft draft) {
        return draft.plan().toPrettyString() + "\n";
    }

    /**
     * The run in a plan file.
     *
     * @throws NotAPlan where the page cannot show all that the plan holds; the message says why
     */
    public static RunDraft read(String text) throws NotAPlan {
        ObjectNode plan = (ObjectNode) PlanFiles.read(text).node();
        if (PressureStart.of(plan.path("regulators")).isEmpty()) {
            throw new NotAPlan("its regulators are those of a whole house, and this page shows one run");
        }
        if (!plan.has("regulators") || plan.path("regulators").isEmpty()) {
            plan.set("regulators", PressureStart.WALL.regulators());
        }
        lines(plan);
        return RunDraft.of(plan);
    }

    private static void lines(ObjectNode plan) throws NotAPlan {
        Set<String> ids = new HashSet<>();
        Set<String> sources = new HashSet<>(Set.of(PressureStart.FIRST_REGULATOR, PressureStart.LINE_REGULATOR));
        JsonNode sections = plan.path("sections");
        if (sections.size() > MOST_LINES) {
            throw new NotAPlan("it holds " + sections.size() + " lines, and this page shows up to " + MOST_LINES);
        }
        for (JsonNode s : sections) {
            JsonNode legs = s.path("legs");
            boolean plain = s.isObject()
                    && legs.size() <= 1
                    && (legs.isEmpty() || legs.get(0).isTextual());
            if (!plain || legs.path(0).asText("").matches("(?i)(north|east|south|west|up|down)\\b.*")) {
                throw new NotAPlan("its lines have directions, and this page shows plain lengths");
            }
            if (!ids.add(s.path("id").asText())) {
                throw new NotAPlan("two of its lines are named " + s.path("id").asText());
            }
            if (Pipe.of(s.path(RunMaterials.MATERIAL).asText()).isEmpty()) {
                throw new NotAPlan("its line " + s.path("id").asText() + " is of a material this page does not offer");
            }
        }
        sources.addAll(ids);
        for (JsonNode s : sections) {
            if (!sources.contains(s.path("from").asText())) {
                throw new NotAPlan(
                        "its line " + s.path("id").asText() + " does not leave a line or regulator of the run");
            }
        }
        Set<String> fed = new HashSet<>();
        for (JsonNode a : plan.path("appliances")) {
            String by = a.path("fedBy").asText();
            if (!a.isObject() || !ids.contains(by) || !fed.add(by)) {
                throw new NotAPlan("not every appliance in it has a line of its own");
            }
        }
    }
}
