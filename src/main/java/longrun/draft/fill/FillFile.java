package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longrun.draft.NotAPlan;
import longrun.draft.PlanFiles;

/**
 * Saves and opens the draft as a plan file. It opens what it has saved, and any plan whose tank and uses the page can show;
 * entries without a field stay in the plan and count. Any other plan is refused with the reason.
 */
public final class FillFile {

    private static final int MOST_LINES = 100;

    private FillFile() {}

    /** The text of the plan file: indented JSON, without the entries that belong to the page alone. */
    public static String write(FillDraft draft) {
        return draft.plan().toPrettyString() + "\n";
    }

    /**
     * The draft in a plan file.
     *
     * @throws NotAPlan where the page cannot show all that the plan holds; the message says why
     */
    public static FillDraft read(String text) throws NotAPlan {
        ObjectNode plan = (ObjectNode) PlanFiles.read(text).node();
        tank(plan);
        for (String holder : new String[] {"site", "use", FillDraft.OWN}) {
            if (plan.has(holder) && !plan.path(holder).isObject()) {
                throw new NotAPlan("its " + holder + " cannot be read");
            }
        }
        JsonNode starting = plan.path(FillDraft.OWN).path("starting");
        if (!starting.isMissingNode() && !starting.isArray()) {
            throw new NotAPlan("its starting values cannot be read");
        }
        if (plan.path("use").has("hotWater")) {
            throw new NotAPlan("its hot water is described as in a whole house; open it under Houses");
        }
        lines(plan);
        list(plan, "deliveries", plan);
        for (JsonNode d : plan.path("deliveries")) {
            if (!d.isObject()) {
                throw new NotAPlan("its past fills cannot be read");
            }
        }
        return FillDraft.of(plan);
    }

    /** Brings a single tank into the entry the page reads, from whichever of the two it is in, with or without a list. */
    private static void tank(ObjectNode plan) throws NotAPlan {
        List<JsonNode> all = new ArrayList<>();
        for (String entry : List.of("tank", "tanks")) {
            JsonNode there = plan.path(entry);
            if (there.isArray()) {
                there.forEach(all::add);
            } else if (!there.isMissingNode()) {
                all.add(there);
            }
        }
        if (all.stream().anyMatch(t -> !t.isObject())) {
            throw new NotAPlan("its tank cannot be read");
        }
        if (all.size() > 1) {
            throw new NotAPlan(
                    "it has several different tanks, and this page shows one tank or several of the same kind");
        }
        plan.remove(List.of("tank", "tanks"));
        if (!all.isEmpty()) {
            plan.set("tank", all.get(0));
        }
    }

    private static void lines(ObjectNode plan) throws NotAPlan {
        list(plan, FuelUseEntries.APPLIANCES, plan);
        JsonNode all = plan.path(FuelUseEntries.APPLIANCES);
        if (all.size() > MOST_LINES) {
            throw new NotAPlan("it has " + all.size() + " appliances, and this page shows up to " + MOST_LINES);
        }
        Set<String> ids = new HashSet<>();
        for (JsonNode a : all) {
            if (!a.isObject()
                    || !a.path("id").isTextual()
                    || !ids.add(a.path("id").asText())) {
                throw new NotAPlan("its appliances do not each have an id of their own");
            }
        }
        Set<String> used = new HashSet<>();
        if (plan.path("use") instanceof ObjectNode use) {
            for (String kind : new String[] {"heating", "others"}) {
                list(use, kind, plan);
                for (JsonNode each : use.path(kind)) {
                    String id = each.path(FuelUseEntries.APPLIANCE).asText();
                    if (!each.isObject() || !ids.contains(id) || !used.add(id)) {
                        throw new NotAPlan("it has a use that does not belong to one appliance; open it under Houses");
                    }
                }
            }
        }
    }

    /** A list of one item may be written as the item alone. */
    private static void list(ObjectNode in, String name, ObjectNode maker) throws NotAPlan {
        JsonNode there = in.path(name);
        if (there.isObject()) {
            ArrayNode list = maker.arrayNode();
            list.add(there);
            in.set(name, list);
        } else if (!there.isMissingNode() && !there.isArray()) {
            throw new NotAPlan("its " + name + " cannot be read");
        }
    }
}
