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
import longrun.draft.entry.DraftAppliances;
import longrun.draft.entry.DraftTree;
import longrun.draft.entry.DraftValue;
import longrun.plan.Appliance.Part;
import longrun.plan.PlanPath;
import longrun.plan.choice.Named;
import longrun.plan.choice.PartKind;
import longrun.rules.shape.RightOrder;
import longrun.words.IsolatedName;

/** The parts at one appliance in the draft, in flow order. Each change is one step of undo. */
public final class HookupParts {

    private final HouseSession session;
    private final String appliance;
    private final String at;

    /**
     * The parts of an appliance.
     *
     * @param appliance its pointer
     */
    public HookupParts(HouseSession session, String appliance) {
        this.session = session;
        this.appliance = appliance;
        this.at = appliance + "/connection";
    }

    /** The pointer of their list. */
    public String pointer() {
        return at;
    }

    /** The entry: a list, "none", or nothing. */
    public DraftValue entry() {
        return session.at(at);
    }

    /** The parts in flow order; none where they are not entered. */
    public List<Part> list() {
        return DrawnParts.of(entry());
    }

    /** The kinds of the parts in flow order; empty for one that is not understood. */
    List<Optional<PartKind>> kinds() {
        return list().stream().map(p -> p.part().findValue()).toList();
    }

    /** The name of the part at an index. */
    public String nameOf(int index) {
        return entry().get(index).textOf("part", "part").replace('-', ' ');
    }

    /** The name of the appliance. */
    public String name() {
        int index = PlanPath.of(appliance).findIndex().orElseThrow();
        return IsolatedName.of(DraftAppliances.of(session.draft()).name(index));
    }

    /** The kinds and places of the parts as a key, which differs where the list does. */
    public String structure() {
        StringBuilder key = new StringBuilder();
        entry().forEach(p ->
                key.append(p.textOf("part")).append(p.textOf("place")).append(';'));
        return key.toString();
    }

    /** Enters a usual row of parts, assumed until somebody has seen them. */
    public void begin(List<String> kinds) {
        session.change(d -> DraftTree.put(d.root(), at, AssumedRow.of(kinds)));
    }

    /** Copies the parts of another appliance, assumed until somebody has seen them here. */
    public void copyFrom(String otherAppliance) {
        session.change(d -> DraftTree.put(d.root(), at, AssumedRow.like(d.root().at(otherAppliance + "/connection"))));
    }

    /** Whether a part is assumed and nobody has seen it. */
    public boolean isAssumed(int index) {
        return AssumedRow.isAssumed(entry().get(index).node());
    }

    /** How many of the parts are assumed. */
    public int countAssumed() {
        return (int) IntStream.range(0, entry().isList() ? entry().size() : 0)
                .filter(this::isAssumed)
                .count();
    }

    /** Records that somebody has seen a part and it is as entered. */
    public void markSeen(int index) {
        session.change(d -> d.put(at + "/" + index + "/" + AssumedRow.SEEN, true));
    }

    /** Records that somebody has seen all the parts and they are as entered. */
    public void markAllSeen() {
        session.change(d -> d.root().at(at).forEach(p -> {
            if (AssumedRow.isAssumed(p)) {
                ((ObjectNode) p).put(AssumedRow.SEEN, true);
            }
        }));
    }

    /** The names of the other appliances with parts entered, by pointer. */
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

    /** The usual rows, the one for the appliance's kind first: without a sediment trap where the code requires none. */
    public List<List<String>> usual() {
        return AssumedRow.usual(session.at(appliance).node());
    }

    /** Adds a part where its kind belongs, and returns its index. */
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

    /** Moves a part; returns false where an index does not exist. */
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

    /** Removes a part; with the last one the parts are not known. */
    public void remove(int index) {
        session.change(d -> ((ArrayNode) d.root().at(at)).remove(index));
        if (entry().isEmpty()) {
            session.remove(at);
        }
    }

    /** The indexes of the parts in the order that every code accepts. */
    public List<Integer> right() {
        return RightOrder.of(kinds());
    }

    /** Puts the parts in the order that every code accepts. */
    public void putInOrder() {
        List<Integer> right = right();
        session.change(d -> {
            ArrayNode list = (ArrayNode) d.root().at(at);
            ArrayNode sorted = JsonNodeFactory.instance.arrayNode();
            right.forEach(i -> sorted.add(list.get(i)));
            ((ObjectNode) d.root().at(appliance)).set("connection", sorted);
        });
    }

    /** Answers that nothing is fitted. */
    public void none() {
        session.choose(at, "none");
    }

    /** Answers that the parts are not known. */
    public void unknown() {
        session.remove(at);
    }
}
