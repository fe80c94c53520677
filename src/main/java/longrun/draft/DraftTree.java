package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.regex.Pattern;

/** Entries of a draft by their JSON pointers. */
public final class DraftTree {

    private static final Pattern INDEX = Pattern.compile("0|[1-9][0-9]{0,8}");

    private DraftTree() {}

    /** Writes an entry; what holds it is made where it is missing. */
    public static void put(ObjectNode root, String pointer, JsonNode value) {
        String[] names = names(pointer);
        JsonNode at = root;
        for (int i = 0; i < names.length - 1; i++) {
            JsonNode next = child(at, names[i]);
            if (!next.isContainerNode()) {
                next = INDEX.matcher(names[i + 1]).matches()
                        ? JsonNodeFactory.instance.arrayNode()
                        : JsonNodeFactory.instance.objectNode();
                set(at, names[i], next);
            }
            at = next;
        }
        set(at, names[names.length - 1], value);
    }

    /** Takes an entry away, and the object it was the last entry of. */
    public static void remove(ObjectNode root, String pointer) {
        String[] names = names(pointer);
        String parent = pointer.substring(0, pointer.lastIndexOf('/'));
        JsonNode at = root.at(parent);
        String last = names[names.length - 1];
        if (at instanceof ArrayNode list) {
            if (INDEX.matcher(last).matches()) {
                list.remove(Integer.parseInt(last));
            }
        } else if (at instanceof ObjectNode object) {
            object.remove(last);
            boolean isItem =
                    names.length > 1 && INDEX.matcher(names[names.length - 2]).matches();
            if (object.isEmpty() && names.length > 1 && !isItem) {
                remove(root, parent);
            }
        }
    }

    private static JsonNode child(JsonNode at, String name) {
        return at.isArray() && INDEX.matcher(name).matches() ? at.path(Integer.parseInt(name)) : at.path(name);
    }

    private static void set(JsonNode at, String name, JsonNode value) {
        if (at instanceof ArrayNode list) {
            int index = Integer.parseInt(name);
            while (list.size() <= index) {
                list.addObject();
            }
            list.set(index, value);
        } else {
            ((ObjectNode) at).set(name, value);
        }
    }

    private static String[] names(String pointer) {
        String[] names = pointer.substring(1).split("/", -1);
        for (int i = 0; i < names.length; i++) {
            names[i] = names[i].replace("~1", "/").replace("~0", "~");
        }
        return names;
    }

    /** Whether an entry has a place in the draft: the list items it stands in are there. */
    static boolean holds(ObjectNode draft, String pointer) {
        int slash = pointer.indexOf('/', 1);
        while (slash >= 0) {
            String above = pointer.substring(0, slash);
            if (above.substring(above.lastIndexOf('/') + 1).matches("[0-9]+")
                    && draft.at(above).isMissingNode()) {
                return false;
            }
            slash = pointer.indexOf('/', slash + 1);
        }
        return true;
    }

    /**
     * The entry a pointer is in, such as may be not known as a whole: one leg of several is no entry, since a run without
     * it would be too short. Empty where the pointer is at an item of a list, or at the plan itself.
     */
    static Optional<String> entry(ObjectNode draft, String pointer) {
        String at = pointer;
        while (!at.isEmpty()) {
            int slash = at.lastIndexOf('/');
            String above = at.substring(0, slash);
            JsonNode owner = draft.at(above);
            if (owner.isObject()) {
                boolean list = draft.at(at).isArray() && draft.at(at).path(0).isObject();
                return list || draft.at(at).isObject() ? Optional.empty() : Optional.of(at);
            }
            if (owner.isArray() && draft.at(at).isObject()) {
                return Optional.empty();
            }
            at = above;
        }
        return Optional.empty();
    }
}
