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
 * What a draft holds at one place, to be read only: an entry, a list, a thing with entries of its own, the whole plan, or
 * nothing. Screens read a draft through it; {@link DraftEdit} changes one.
 */
public final class Entered implements Iterable<Entered> {

    public static final Entered NOTHING = new Entered(MissingNode.getInstance());
    public static final Entered YES = new Entered(BooleanNode.TRUE);
    public static final Entered NO = new Entered(BooleanNode.FALSE);

    private final JsonNode node;

    private Entered(JsonNode node) {
        this.node = node;
    }

    public static Entered of(JsonNode node) {
        return new Entered(node);
    }

    /** An entry of one text. */
    public static Entered text(String text) {
        return new Entered(TextNode.valueOf(text));
    }

    /** A text of JSON the program itself has written; anything else is refused with IllegalArgumentException. */
    public static Entered parse(String json) {
        try {
            return new Entered(PlanReader.tree(json));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("what the program wrote is JSON", e);
        }
    }

    /** What stands at a JSON pointer below it. */
    public Entered at(String pointer) {
        return new Entered(node.at(pointer));
    }

    /** What it holds under a name. */
    public Entered get(String name) {
        return new Entered(node.path(name));
    }

    /** A list's item; nothing past its end. */
    public Entered get(int index) {
        return new Entered(node.path(index));
    }

    /** Its text; blank where it is no single entry. */
    public String text() {
        return node.isNull() ? "" : node.asText("");
    }

    /** The text under a name; blank where there is none. */
    public String textOf(String name) {
        return get(name).text();
    }

    /** The text under a name, or another where there is none. */
    public String textOf(String name, String otherwise) {
        return node.path(name).asText(otherwise);
    }

    /** Whether nothing is entered. */
    public boolean isNothing() {
        return node.isMissingNode() || node.isNull();
    }

    public boolean isList() {
        return node.isArray();
    }

    /** Whether it holds entries by their names. */
    public boolean isThing() {
        return node.isObject();
    }

    public boolean isText() {
        return node.isTextual();
    }

    public boolean isYesOrNo() {
        return node.isBoolean();
    }

    public boolean isYes() {
        return node.isBoolean() && node.booleanValue();
    }

    /** How many items or entries it holds itself; none where it is a single entry. */
    public int size() {
        return node.size();
    }

    public boolean isEmpty() {
        return node.isEmpty();
    }

    /** The names it holds entries under, as they are written. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Override
    public Iterator<Entered> iterator() {
        Iterator<JsonNode> nodes = node.iterator();
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return nodes.hasNext();
            }

            @Override
            public Entered next() {
                return new Entered(nodes.next());
            }
        };
    }

    /** The same without what it holds under a name. */
    public Entered without(String name) {
        JsonNode copy = node.deepCopy();
        if (copy instanceof ObjectNode object) {
            object.remove(name);
        }
        return new Entered(copy);
    }

    /** Reads it as a plan; what is no plan at all is refused there. */
    public Reading reading() {
        return FullPlanReader.read(node);
    }

    /** The tree itself, for what lies below the screens; to be read only. */
    public JsonNode node() {
        return node;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Entered o && node.equals(o.node);
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
