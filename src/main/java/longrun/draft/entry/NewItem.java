package longrun.draft.entry;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;

/** The entries with which a new item of a list begins: texts by name, in order. */
public record NewItem(List<Text> texts) {

    /** An item without entries. */
    public static final NewItem EMPTY = new NewItem(List.of());

    /** One of its entries. */
    public record Text(String name, String text) {}

    /** An item with one entry. */
    public static NewItem of(String name, String text) {
        return EMPTY.and(name, text);
    }

    /** A copy with another entry; a blank text adds none. */
    public NewItem and(String name, String text) {
        return text.isBlank()
                ? this
                : new NewItem(Stream.concat(texts.stream(), Stream.of(new Text(name, text)))
                        .toList());
    }

    ObjectNode node() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        texts.forEach(t -> node.put(t.name(), t.text()));
        return node;
    }
}
