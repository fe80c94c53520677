package longrun.draft.hookup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import longrun.draft.HouseSession;
import longrun.draft.entry.DraftTree;
import longrun.draft.entry.Entered;
import longrun.draft.entry.EnteredAppliances;
import longrun.plan.Appliance.Part;
import longrun.plan.PlanPath;
import longrun.plan.choice.Named;
import longrun.plan.choice.PartKind;
import longrun.rules.shape.RightOrder;
import longrun.words.IsolatedName;

/** One appliance's parts in the draft, in flow order: begun, added, moved, taken away, put right. Each is one step. */
public final class HookupParts {

    private final HouseSession session;
    private final String appliance;
    private final String at;

    /**
     * The parts of an appliance.
     *
     * @param appliance pointer to it
     */
    public HookupParts(HouseSession session, String appliance) {
        this.session = session;
        this.appliance = appliance;
        this.at = appliance + "/connection";
    }

    /** Pointer to their list. */
    public String pointer() {
        return at;
    }

    /** The entry as it stands: a list, a word, or missing. */
    public Entered entry() {
        return session.at(at);
    }

    public List<Part> list() {
        return DrawnParts.of(entry());
    }

    /** The kinds in flow order; empty where one is not understood. */
    List<Optional<PartKind>> kinds() {
        return list().stream().map(p -> p.part().findValue()).toList();
    }

    /** What the part at an index is called. */
    public String nameOf(int index) {
        return entry().get(index).textOf("part", "part").replace('-', ' ');
    }

    /** What the appliance is called. */
    public String name() {
        int index = PlanPath.of(appliance).findIndex().orElseThrow();
        return IsolatedName.of(EnteredAppliances.of(session.draft()).name(index));
    }

    /** What makes the list another list: kinds and places. */
    public String structure() {
        StringBuilder key = new StringBuilder();
        entry().forEach(p ->
                key.append(p.textOf("part")).append(p.textOf("place")).append(';'));
        return key.toString();
    }

    /** Takes a row of parts as usual: assumed until somebody has seen them. */
    public void begin(List<String> kinds) {
        session.change(d -> DraftTree.put(d.root(), at, AssumedRow.of(kinds)));
    }

    /** Takes the parts of another appliance, assumed until somebody has seen them here. */
    public void copyFrom(String otherAppliance) {
        session.change(d -> DraftTree.put(d.root(), at, AssumedRow.like(d.root().at(otherAppliance + "/connection"))));
    }

    /** Whether a part is taken as usual and nobody has seen it. */
    public boolean isAssumed(int index) {
        return AssumedRow.isAssumed(entry().get(index).node());
    }

    /** How many of its parts nobody has seen. */
    public int countAssumed() {
        return (int) IntStream.range(0, entry().isList() ? entry().size() : 0)
                .filter(this::isAssumed)
                .count();
    }

    /** Somebody has looked at a part, and it is as entered. */
    public void markSeen(int index) {
        session.change(d -> d.put(at + "/" + index + "/" + AssumedRow.SEEN, true));
    }

    /** Somebody has looked at all the parts, and they are as entered. */
    public void markAllSeen() {
        session.change(d -> d.root().at(at).forEach(p -> {
            if (AssumedRow.isAssumed(p)) {
                ((ObjectNode) p).put(AssumedRow.SEEN, true);
            }
        }));
    }

    /** The other appliances that have parts entered: what each is called, by its pointer. */
    public Map<String, String> othersWithParts() {
        Map<String, String> out = new LinkedHashMap<>();
        for (int i = 0; i < session.at("/appliances").size(); i++) {
            HookupParts other = new HookupParts(session, "/appliances/" + i);
            if (!other.appliance.equals(appliance)
                    && other.entry().isList()
                    && !other.entry().isEmpty()) {
                out.put(other.appliance, other.name());
            }
        }
        return out;
    }

    /** The usual rows, the one for the appliance's kind first: without a trap where the code asks for none. */
    public List<List<String>> usual() {
        return AssumedRow.usual(session.at(appliance).node());
    }

    /** Adds a part where one of its kind belongs, and gives its index. */
    public int add(String kind) {
        PartKind named = Named.find(PartKind.class, kind).orElseThrow();
        int place = RightOrder.placeFor(named, kinds());
        session.change(d -> {
            if (!d.at(at).isList()) {
                d.put(at, List.of());
            }
            ((ArrayNode) d.root().at(at)).insertObject(place).put("part", kind);
        });
        return place;
    }

    /** Moves a part; false where there is no such place. */
    public boolean move(int from, int to) {
        int count = entry().size();
        if (from < 0 || to < 0 || from >= count || to >= count) {
            return false;
        }
        session.change(d -> {
            ArrayNode list = (ArrayNode) d.root().at(at);
            JsonNode part = list.remove(from);
            list.insert(to, part);
        });
        return true;
    }

    public void remove(int index) {
        session.change(d -> ((ArrayNode) d.root().at(at)).remove(index));
        if (entry().isEmpty()) {
            session.remove(at);
        }
    }

    /** The indices in the order every code accepts. */
    public List<Integer> right() {
        return RightOrder.of(kinds());
    }

    /** Puts all parts in the order every code accepts. */
    public void putInOrder() {
        List<Integer> right = right();
        session.change(d -> {
            ArrayNode list = (ArrayNode) d.root().at(at);
            ArrayNode sorted = JsonNodeFactory.instance.arrayNode();
            right.forEach(i -> sorted.add(list.get(i)));
            ((ObjectNode) d.root().at(appliance)).set("connection", sorted);
        });
    }

    /** Looked, and nothing is fitted. */
    public void none() {
        session.choose(at, "none");
    }

    /** Not known. */
    public void unknown() {
        session.remove(at);
    }
}
