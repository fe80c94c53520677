package longrun.draft.entry;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import longrun.plan.json.PlanReader;
import longrun.plan.json.Reading;
import longrun.review.FullPlanReader;
import org.jspecify.annotations.Nullable;

/**
 * A value in a draft, to be read only: an entry, a list, an object with entries of its own, the whole plan, or nothing.
 * Screens read a draft through it; {@link DraftEdit} changes one.
 */
public final class DraftValue implements Iterable<DraftValue> {

    /** Nothing entered. */
    public static final DraftValue NOTHING = new DraftValue(MissingNode.getInstance());
    /** The answer yes. */
    public static final DraftValue YES = new DraftValue(BooleanNode.TRUE);
    /** The answer no. */
    public static final DraftValue NO = new DraftValue(BooleanNode.FALSE);

    private final JsonNode node;

    private DraftValue(JsonNode node) {
        this.node = node;
    }

    /** The value of a JSON node. */
    public static DraftValue of(JsonNode node) {
        return new DraftValue(node);
    }

    /** A text. */
    public static DraftValue text(String text) {
        return new DraftValue(TextNode.valueOf(text));
    }

    /**
     * The value of JSON that the program itself has written.
     *
     * @throws IllegalArgumentException where the text is not JSON
     */
    public static DraftValue parse(String json) {
        try {
            return new DraftValue(PlanReader.tree(json));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("text written by the program must be JSON", e);
        }
    }

    /** The value at a JSON pointer below it; nothing where there is none. */
    public DraftValue at(String pointer) {
        return new DraftValue(node.at(pointer));
    }

    /** The value with a name; nothing where there is none. */
    public DraftValue get(String name) {
        return new DraftValue(node.path(name));
    }

    /** The item of a list at an index; nothing past its end. */
    public DraftValue get(int index) {
        return new DraftValue(node.path(index));
    }

    /** Its text; blank where it is not a single entry. */
    public String text() {
        return node.isNull() ? "" : node.asText("");
    }

    /** The text with a name; blank where there is none. */
    public String textOf(String name) {
        return get(name).text();
    }

    /** The text with a name, or another text where there is none. */
    public String textOf(String name, String otherwise) {
        return node.path(name).asText(otherwise);
    }

    /** Whether nothing is entered. */
    public boolean isNothing() {
        return node.isMissingNode() || node.isNull();
    }

    /** Whether it is a list. */
    public boolean isList() {
        return node.isArray();
    }

    /** Whether it has entries by name. */
    public boolean isObject() {
        return node.isObject();
    }

    /** Whether it is a text. */
    public boolean isText() {
        return node.isTextual();
    }

    /** Whether it is a yes or a no. */
    public boolean isYesOrNo() {
        return node.isBoolean();
    }

    /** Whether it is a yes. */
    public boolean isYes() {
        return node.isBoolean() && node.booleanValue();
    }

    /** The number of its items or entries; 0 for a single entry. */
    public int size() {
        return node.size();
    }

    /** Whether it has no items or entries. */
    public boolean isEmpty() {
        return node.isEmpty();
    }

    /** The names of its entries, in order. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Override
    public Iterator<DraftValue> iterator() {
        Iterator<JsonNode> nodes = node.iterator();
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return nodes.hasNext();
            }

            @Override
            public DraftValue next() {
                return new DraftValue(nodes.next());
            }
        };
    }

    /** The same without the entry with a name. */
    public DraftValue without(String name) {
        JsonNode copy = node.deepCopy();
        if (copy instanceof ObjectNode object) {
            object.remove(name);
        }
        return new DraftValue(copy);
    }

    /** Reads it as a plan; the result holds the plan or its errors. */
    public Reading reading() {
        return FullPlanReader.read(node);
    }

    /** The JSON tree, for code below the screens; to be read only. */
    public JsonNode node() {
        return node;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DraftValue o && node.equals(o.node);
    }

    @Override
    public int hashCode() {
        return node.hashCode();
    }

    /** As JSON. */
    @Override
    public String toString() {
        return node.toString();
    }
}
