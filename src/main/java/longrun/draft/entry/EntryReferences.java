package longrun.draft.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import longrun.words.IsolatedName;

/** The entries that refer to something that is to be removed. Each is removed with it, or its reference is cleared. */
public final class EntryReferences {

    /** Where a plan refers to an appliance; a star is an item of a list, or a single item without a list. */
    private static final List<String> APPLIANCES = List.of(
            "use/heating/*/appliance",
            "use/hotWater/onDemand/appliance",
            "use/others/*/appliance",
            "use/occasions/*/firing/*");

    /** Where a plan refers to anything. */
    private static final List<String> ANYTHING = List.of("readings/*/at", "answers/*/at");

    private EntryReferences() {}

    /**
     * An entry that refers to it.
     *
     * @param pointer the pointer of the reference; of the sections, where they feed nothing else
     * @param words what it is, in words
     * @param removedToo whether it is usually removed with it
     */
    public record Reference(String pointer, String words, boolean removedToo) {

        private boolean isPipe() {
            return pointer.startsWith("/sections/");
        }
    }

    /** The references to the appliance at a pointer, last the pipe that feeds nothing else; none where its id is not unique. */
    public static List<Reference> appliance(DraftValue entered, String pointer) {
        JsonNode draft = entered.node();
        String id = draft.at(pointer + "/id").asText("");
        if (id.isEmpty() || isTwice(draft.path("appliances"), id)) {
            return List.of();
        }
        List<Reference> out = new ArrayList<>();
        for (String each : APPLIANCES) {
            for (String at : naming(draft, each, id)) {
                out.add(new Reference(at, words(draft, at), true));
            }
        }
        out.addAll(anything(draft, id));
        List<Integer> drop = drop(draft, pointer);
        if (!drop.isEmpty()) {
            out.add(pipe(draft, drop));
        }
        return out;
    }

    /** The readings and answers that refer to an id. */
    public static List<Reference> anything(DraftValue entered, String id) {
        return anything(entered.node(), id);
    }

    private static List<Reference> anything(JsonNode draft, String id) {
        List<Reference> out = new ArrayList<>();
        for (String each : ANYTHING) {
            for (String at : naming(draft, each, id)) {
                out.add(new Reference(at, words(draft, at), true));
            }
        }
        return out;
    }

    /**
     * Removes the entries that refer to something, or only clears their references where they are to stay.
     *
     * @param staying the pointers of the references whose entries stay
     */
    public static void take(DraftEdit edit, List<Reference> mentions, Set<String> staying) {
        take(edit.root(), mentions, staying);
    }

    private static void take(ObjectNode draft, List<Reference> mentions, Set<String> staying) {
        List<Reference> lastFirst = new ArrayList<>(mentions);
        Collections.reverse(lastFirst);
        for (Reference m : lastFirst) {
            if (m.isPipe()) {
                continue;
            }
            if (m.pointer().contains("/firing")) {
                takeFiring(draft, m.pointer());
            } else {
                DraftTree.remove(
                        draft,
                        staying.contains(m.pointer())
                                ? m.pointer()
                                : m.pointer().substring(0, m.pointer().lastIndexOf('/')));
            }
        }
        // Last, since the readings at the pipe are removed with it.
        mentions.stream()
                .filter(m -> m.isPipe() && !staying.contains(m.pointer()))
                .forEach(m -> takePipe(draft, m.pointer()));
    }

    // Finding the references.

    private static List<String> naming(JsonNode draft, String pattern, String id) {
        List<String> out = new ArrayList<>();
        walk(draft, "", List.of(pattern.split("/")), id, out);
        return out;
    }

    private static void walk(JsonNode at, String pointer, List<String> way, String id, Collection<String> out) {
        if (way.isEmpty()) {
            if (at.isTextual() && at.asText().equals(id)) {
                out.add(pointer);
            }
            return;
        }
        List<String> rest = way.subList(1, way.size());
        if (!way.get(0).equals("*")) {
            walk(at.path(way.get(0)), pointer + "/" + way.get(0), rest, id, out);
        } else if (at.isArray()) {
            for (int i = 0; i < at.size(); i++) {
                walk(at.get(i), pointer + "/" + i, rest, id, out);
            }
        } else {
            walk(at, pointer, rest, id, out);
        }
    }

    private static boolean isTwice(JsonNode list, String id) {
        int count = 0;
        for (JsonNode each : list) {
            count += each.path("id").asText("").equals(id) ? 1 : 0;
        }
        return count > 1;
    }

    private static String words(JsonNode draft, String at) {
        if (at.startsWith("/use/heating")) {
            return "The heating, under Fuel";
        }
        if (at.startsWith("/use/hotWater")) {
            return "The on-demand heater, under Hot water";
        }
        if (at.startsWith("/use/others")) {
            String gas = owner(draft, at).path("volumePerYear").asText("");
            return "A use of gas" + (gas.isEmpty() ? "" : " of " + gas + " a year") + ", under Fuel";
        }
        if (at.contains("/firing")) {
            String name = draft.at(at.substring(0, at.indexOf("/firing")))
                    .path("name")
                    .asText("");
            return "What fires together" + (name.isEmpty() ? "" : ": " + IsolatedName.of(name));
        }
        if (at.startsWith("/readings")) {
            String read = owner(draft, at).path("pressure").asText("");
            return "A gauge reading" + (read.isEmpty() ? "" : " of " + read) + ", under Pipe route";
        }
        return "An answer to a finding about it";
    }

    private static JsonNode owner(JsonNode draft, String at) {
        return draft.at(at.substring(0, at.lastIndexOf('/')));
    }

    // The pipe to the appliance.

    /** The sections that feed the appliance and nothing else, the last before it first. */
    private static List<Integer> drop(JsonNode draft, String pointer) {
        List<Integer> out = new ArrayList<>();
        String end = draft.at(pointer + "/fedBy").asText("");
        int hanging = 1; // the appliance itself, then the section before
        while (!end.isEmpty()) {
            int index = section(draft, end);
            if (index < 0 || out.contains(index) || hangingOn(draft, end) != hanging) {
                break;
            }
            out.add(index);
            end = draft.path("sections").get(index).path("from").asText("");
        }
        return out;
    }

    private static int section(JsonNode draft, String id) {
        JsonNode sections = draft.path("sections");
        for (int i = 0; sections.isArray() && i < sections.size(); i++) {
            if (sections.get(i).path("id").asText("").equals(id)) {
                return i;
            }
        }
        return -1;
    }

    private static int hangingOn(JsonNode draft, String id) {
        int count = 0;
        for (JsonNode s : draft.path("sections")) {
            count += s.path("from").asText("").equals(id) ? 1 : 0;
        }
        for (String list : List.of("appliances", "regulators")) {
            for (JsonNode each : draft.path(list)) {
                count += each.path("fedBy").asText("").equals(id) ? 1 : 0;
            }
        }
        return count;
    }

    /** It is removed by default only where another branch stays; else no pipe would be left after the regulator. */
    private static Reference pipe(JsonNode draft, List<Integer> drop) {
        JsonNode sections = draft.path("sections");
        List<String> names = new ArrayList<>();
        StringBuilder pointer = new StringBuilder("/sections");
        drop.stream().sorted().forEach(i -> {
            names.add(sections.get(i).path("id").asText());
            pointer.append('/').append(i);
        });
        String from = sections.get(drop.get(drop.size() - 1)).path("from").asText("");
        boolean branches = section(draft, from) >= 0;
        String which = names.size() == 1
                ? "Section " + names.get(0) + ", which feeds"
                : "Sections " + String.join(", ", names) + ", which feed";
        return new Reference(pointer.toString(), which + " nothing else", branches);
    }

    // Removing.

    private static void takePipe(ObjectNode draft, String pointer) {
        String[] indexes = pointer.substring("/sections/".length()).split("/");
        for (int i = indexes.length - 1; i >= 0; i--) {
            String at = "/sections/" + indexes[i];
            String id = draft.at(at + "/id").asText("");
            DraftTree.remove(draft, at);
            take(draft, anything(draft, id), Set.of());
        }
    }

    /** Removes an appliance from an occasion, and an occasion at which nothing is left to fire. */
    private static void takeFiring(ObjectNode draft, String pointer) {
        DraftTree.remove(draft, pointer);
        String occasion = pointer.substring(0, pointer.indexOf("/firing"));
        if (draft.at(occasion + "/firing").isEmpty()) {
            DraftTree.remove(draft, occasion);
        }
    }

    /** Removes a room; the room of its appliances, and where openings into it lead, are then not entered. */
    public static void takeRoom(DraftEdit edit, String at) {
        ObjectNode draft = edit.root();
        String id = draft.at(at + "/id").asText();
        DraftTree.remove(draft, at);
        draft.path("appliances").forEach(a -> clear(a, "room", id));
        draft.path("rooms").forEach(r -> r.path("openings").forEach(o -> clear(o, "to", id)));
    }

    private static void clear(JsonNode thing, String entry, String id) {
        if (thing instanceof ObjectNode object && object.path(entry).asText().equals(id)) {
            object.remove(entry);
        }
    }
}
