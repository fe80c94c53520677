package longrun.draft.entry;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import longrun.plan.Plan;

/** Changes a draft, entry by entry; the objects and lists around an entry are made where they are missing. */
public final class DraftEdit {

    private final ObjectNode root;

    /** @param root the draft, which is changed in place */
    public DraftEdit(ObjectNode root) {
        this.root = root;
    }

    /** An empty plan. */
    public static DraftEdit begin() {
        return new DraftEdit(JsonNodeFactory.instance.objectNode().put("format", Plan.FORMAT));
    }

    /**
     * Changes a stored draft.
     *
     * @throws IllegalArgumentException where the text is not a JSON object
     */
    public static DraftEdit stored(String json) {
        if (DraftValue.parse(json).node() instanceof ObjectNode plan) {
            return new DraftEdit(plan);
        }
        throw new IllegalArgumentException("a stored draft is an object");
    }

    /** The value at a pointer now. */
    public DraftValue at(String pointer) {
        return DraftValue.of(root.at(pointer));
    }

    /** The whole draft as it is now. */
    public DraftValue whole() {
        return DraftValue.of(root);
    }

    /** Writes a text. */
    public void put(String pointer, String text) {
        DraftTree.put(root, pointer, TextNode.valueOf(text));
    }

    /** Writes a yes or no. */
    public void put(String pointer, boolean yes) {
        DraftTree.put(root, pointer, BooleanNode.valueOf(yes));
    }

    /** Writes a list of texts; an empty list means that there is none. */
    public void put(String pointer, List<String> texts) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        texts.forEach(list::add);
        DraftTree.put(root, pointer, list);
    }

    /** Adds an item to a list. */
    public void add(String list, NewItem item) {
        DraftTree.put(root, list + "/" + root.at(list).size(), item.node());
    }

    /** Removes an entry, and an object of which it was the last entry. */
    public void remove(String pointer) {
        DraftTree.remove(root, pointer);
    }

    /** Replaces the whole draft. */
    public void become(DraftValue plan) {
        root.removeAll();
        if (plan.node().deepCopy() instanceof ObjectNode other) {
            root.setAll(other);
        }
    }

    /** The JSON tree, for code below the screens. */
    public ObjectNode root() {
        return root;
    }
}
