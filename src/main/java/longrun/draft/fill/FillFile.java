package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.Set;
import longrun.draft.NotAPlan;
import longrun.draft.PlanFiles;

/**
 * The page as a plan file: what it writes it can open, and a plan whose tank and uses it can show; entries it has no field
 * for stay in the plan and count. A plan with more it leaves alone and says so.
 */
public final class FillFile {

    private static final int MOST_LINES = 100;

    private FillFile() {}

    /** The text of the plan file: JSON in lines, without the entries that are only of the page. */
    public static String write(FillDraft draft) {
        return draft.plan().toPrettyString() + "\n";
    }

    /** Opens a plan file; throws {@link NotAPlan}, which says why, where this page cannot show all it holds. */
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
            throw new NotAPlan("its hot water is told as a whole house tells it; open it under Houses");
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

    private static void tank(ObjectNode plan) throws NotAPlan {
        JsonNode tank = plan.path("tank");
        if (tank.isArray() && tank.size() == 1) {
            plan.set("tank", tank.get(0));
        } else if (!tank.isObject() && !tank.isMissingNode()
                || plan.path("tanks").size() > 0) {
            throw new NotAPlan("it has several tanks, and this page shows one, or several alike");
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
                throw new NotAPlan("its appliances are not told apart by ids of their own");
            }
        }
        Set<String> used = new HashSet<>();
        if (plan.path("use") instanceof ObjectNode use) {
            for (String kind : new String[] {"heating", "others"}) {
                list(use, kind, plan);
                for (JsonNode each : use.path(kind)) {
                    String id = each.path(FuelUseEntries.APPLIANCE).asText();
                    if (!each.isObject() || !ids.contains(id) || !used.add(id)) {
                        throw new NotAPlan("not every use in it is that of one appliance; open it under Houses");
                    }
                }
            }
        }
    }

    /** One entry may be written without a list. */
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
