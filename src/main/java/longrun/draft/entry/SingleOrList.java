package longrun.draft.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Entries that a plan may write as a single item or as a list. */
public final class SingleOrList {

    private SingleOrList() {}

    /** The pointers of the items at some pointers; the first pointer itself where there are none. */
    public static List<String> of(DraftValue draft, String... pointers) {
        List<String> out = new ArrayList<>();
        for (String pointer : pointers) {
            DraftValue there = draft.at(pointer);
            if (there.isList()) {
                for (int i = 0; i < there.size(); i++) {
                    out.add(pointer + "/" + i);
                }
            } else if (there.isObject()) {
                out.add(pointer);
            }
        }
        return out.isEmpty() ? List.of(pointers[0]) : List.copyOf(out);
    }

    /** Adds an item; a single item without a list becomes the first of the list. */
    public static void addItem(DraftEdit draft, String pointer) {
        JsonNode there = draft.root().at(pointer);
        ArrayNode list = there instanceof ArrayNode all ? all : JsonNodeFactory.instance.arrayNode();
        if (there.isObject()) {
            list.add(there);
        }
        list.addObject();
        DraftTree.put(draft.root(), pointer, list);
    }

    /** Adds a different tank at an index; a single tank without a list becomes the first of the list. */
    public static void addTank(DraftEdit draft, int index) {
        ObjectNode d = draft.root();
        ArrayNode all = d.path("tank") instanceof ArrayNode many ? many : d.withArray("tanks");
        if (d.path("tank") instanceof ObjectNode alone) {
            all.insert(0, alone);
            d.remove("tank");
        }
        while (all.size() <= index) {
            all.addObject();
        }
    }
}
