package longrun.draft.run;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.Set;
import longrun.plan.Plan;

/** The run as a plan file: what this page writes it can open; a plan of a whole house it leaves alone and says so. */
public final class RunFile {

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(com.fasterxml.jackson.core.StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    private static final int MOST_LINES = 500;

    private RunFile() {}

    /** A file this page cannot show, with the reason in words. */
    public static final class NotARun extends Exception {
        private static final long serialVersionUID = 1L;

        public NotARun(String why) {
            super(why);
        }
    }

    public static String write(RunDraft draft) {
        return draft.plan().toPrettyString() + "\n";
    }

    public static RunDraft read(String text) throws NotARun {
        JsonNode node;
        try {
            node = JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new NotARun("it is no plan file: it cannot be read as JSON");
        }
        if (!(node instanceof ObjectNode plan) || !plan.path("format").asText().equals(Plan.FORMAT)) {
            throw new NotARun("it is no plan file: a plan says \"format\": \"" + Plan.FORMAT + "\"");
        }
        if (Start.of(plan.path("regulators")).isEmpty()) {
            throw new NotARun("its regulators are those of a whole house, and this page shows one run");
        }
        if (!plan.has("regulators") || plan.path("regulators").isEmpty()) {
            plan.set("regulators", Start.WALL.regulators());
        }
        lines(plan);
        return RunDraft.of(plan);
    }

    private static void lines(ObjectNode plan) throws NotARun {
        Set<String> ids = new HashSet<>();
        Set<String> sources = new HashSet<>(Set.of(Start.FIRST, Start.LINE_REGULATOR));
        JsonNode sections = plan.path("sections");
        if (sections.size() > MOST_LINES) {
            throw new NotARun("it holds " + sections.size() + " lines, and this page shows up to " + MOST_LINES);
        }
        for (JsonNode s : sections) {
            JsonNode legs = s.path("legs");
            boolean plain = s.isObject()
                    && legs.size() <= 1
                    && (legs.isEmpty() || legs.get(0).isTextual());
            if (!plain || legs.path(0).asText("").matches("(?i)(north|east|south|west|up|down)\\b.*")) {
                throw new NotARun("its lines say which way they go, and this page shows plain lengths");
            }
            if (!ids.add(s.path("id").asText())) {
                throw new NotARun("two of its lines are named " + s.path("id").asText());
            }
            if (Pipe.of(s.path(RunMaterials.MATERIAL).asText()).isEmpty()) {
                throw new NotARun("its line " + s.path("id").asText() + " is of a material this page does not offer");
            }
        }
        sources.addAll(ids);
        for (JsonNode s : sections) {
            if (!sources.contains(s.path("from").asText())) {
                throw new NotARun("its line " + s.path("id").asText() + " leaves nothing this page knows");
            }
        }
        Set<String> fed = new HashSet<>();
        for (JsonNode a : plan.path("appliances")) {
            String by = a.path("fedBy").asText();
            if (!a.isObject() || !ids.contains(by) || !fed.add(by)) {
                throw new NotARun("not every appliance in it has a line of its own");
            }
        }
    }
}
