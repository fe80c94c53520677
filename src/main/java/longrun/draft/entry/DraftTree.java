package longrun.draft.entry;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** Entries of a draft by their JSON pointers. */
public final class DraftTree {

    private DraftTree() {}

    /** Writes an entry; the objects and lists around it are made where they are missing. */
    public static void put(ObjectNode root, String pointer, JsonNode value) {
        JsonNode at = root;
        JsonPointer way = JsonPointer.compile(pointer);
        for (; !way.tail().matches(); way = way.tail()) {
            JsonNode next = child(at, way);
            if (!next.isContainerNode()) {
                next = way.tail().mayMatchElement()
                        ? JsonNodeFactory.instance.arrayNode()
                        : JsonNodeFactory.instance.objectNode();
                set(at, way, next);
            }
            at = next;
        }
        set(at, way, value);
    }

    /** Removes an entry, and an object of which it was the last entry. */
    public static void remove(ObjectNode root, String pointer) {
        remove(root, JsonPointer.compile(pointer));
    }

    private static void remove(ObjectNode root, JsonPointer at) {
        JsonPointer above = at.head();
        JsonNode holder = root.at(above);
        if (holder instanceof ArrayNode list) {
            if (at.last().mayMatchElement()) {
                list.remove(at.last().getMatchingIndex());
            }
        } else if (holder instanceof ObjectNode object) {
            object.remove(at.last().getMatchingProperty());
            if (object.isEmpty() && !above.matches() && !above.last().mayMatchElement()) {
                remove(root, above);
            }
        }
    }

    private static JsonNode child(JsonNode at, JsonPointer step) {
        return at.isArray() && step.mayMatchElement()
                ? at.path(step.getMatchingIndex())
                : at.path(step.getMatchingProperty());
    }

    private static void set(JsonNode at, JsonPointer step, JsonNode value) {
        if (at instanceof ArrayNode list) {
            while (list.size() <= step.getMatchingIndex()) {
                list.addObject();
            }
            list.set(step.getMatchingIndex(), value);
        } else {
            ((ObjectNode) at).set(step.getMatchingProperty(), value);
        }
    }

    /** Whether an entry can be in the draft: the list items around it exist. */
    public static boolean holds(ObjectNode draft, String pointer) {
        JsonPointer above = JsonPointer.compile(pointer).head();
        while (above != null && !above.matches()) {
            if (above.last().mayMatchElement() && draft.at(above).isMissingNode()) {
                return false;
            }
            above = above.head();
        }
        return true;
    }

    /**
     * The entry that holds a pointer and can be left out as a whole: one leg of several is not an entry, since a run without
     * it would be too short. Empty where the pointer is at an item of a list, or at the plan itself.
     */
    public static Optional<String> entry(ObjectNode draft, String pointer) {
        JsonPointer at = JsonPointer.compile(pointer);
        while (!at.matches()) {
            JsonNode owner = draft.at(at.head());
            JsonNode own = draft.at(at);
            if (owner.isObject()) {
                boolean list = own.isArray() && own.path(0).isObject();
                return list || own.isObject() ? Optional.empty() : Optional.of(at.toString());
            }
            if (owner.isArray() && own.isObject()) {
                return Optional.empty();
            }
            at = at.head();
        }
        return Optional.empty();
    }
}
