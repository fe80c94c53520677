package longrun.draft.entry;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import longrun.plan.Plan;

/** A plan being changed, entry by entry; what holds an entry is made where it is missing. */
public final class DraftEdit {

    private final ObjectNode root;

    public DraftEdit(ObjectNode root) {
        this.root = root;
    }

    /** An empty plan. */
    public static DraftEdit begin() {
        return new DraftEdit(JsonNodeFactory.instance.objectNode().put("format", Plan.FORMAT));
    }

    /** A plan as it is stored; what is none is refused with IllegalArgumentException. */
    public static DraftEdit stored(String json) {
        if (Entered.parse(json).node() instanceof ObjectNode plan) {
            return new DraftEdit(plan);
        }
        throw new IllegalArgumentException("a stored draft is an object");
    }

    /** What stands at a pointer now. */
    public Entered at(String pointer) {
        return Entered.of(root.at(pointer));
    }

    /** The whole as it stands now. */
    public Entered whole() {
        return Entered.of(root);
    }

    public void put(String pointer, String text) {
        DraftTree.put(root, pointer, TextNode.valueOf(text));
    }

    public void put(String pointer, boolean yes) {
        DraftTree.put(root, pointer, BooleanNode.valueOf(yes));
    }

    /** Writes a list of texts; an empty one says that there is none. */
    public void put(String pointer, List<String> texts) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        texts.forEach(list::add);
        DraftTree.put(root, pointer, list);
    }

    /** Adds an item to a list. */
    public void add(String list, NewItem item) {
        DraftTree.put(root, list + "/" + root.at(list).size(), item.node());
    }

    public void remove(String pointer) {
        DraftTree.remove(root, pointer);
    }

    /** Becomes another plan altogether. */
    public void become(Entered plan) {
        root.removeAll();
        if (plan.node().deepCopy() instanceof ObjectNode other) {
            root.setAll(other);
        }
    }

    /** The tree itself, for what lies below the screens. */
    public ObjectNode root() {
        return root;
    }
}
