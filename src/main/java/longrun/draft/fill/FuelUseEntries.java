package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.PlanPath;
import longrun.quantity.Typed;
import longrun.words.UnitSystem;

/** What burns, in a plan document: an appliance for each line, and its use. A basis chosen without an amount is kept beside the plan. */
public final class FuelUseEntries {

    static final String APPLIANCES = "appliances";
    static final String APPLIANCE = "appliance";
    private static final String HOW = "how";
    private static final String EFFICIENCY = "efficiency";
    /** For a heater whose label is not known: an older one, or the least that may be sold (memory); the lower is the safer. */
    static final String USUAL_EFFICIENCY = "80 %";

    private FuelUseEntries() {}

    /** The lines in order. */
    public static List<FuelUse> of(ObjectNode plan) {
        List<FuelUse> out = new ArrayList<>();
        for (JsonNode a : plan.path(APPLIANCES)) {
            String id = a.path("id").asText();
            JsonNode heating = find(plan.path("use").path("heating"), id);
            JsonNode other = find(plan.path("use").path("others"), id);
            FuelUse.Basis basis = basis(plan, id, heating, other);
            JsonNode use = basis == FuelUse.Basis.HEATS ? heating : other;
            out.add(new FuelUse(
                    id,
                    a.path("name").asText(""),
                    a.path("input").asText(""),
                    basis,
                    use.path(basis.entry()).asText(""),
                    months(other.path("months")),
                    heating.path(EFFICIENCY).asText("")));
        }
        return out;
    }

    private static String months(JsonNode months) {
        if (months.isMissingNode()) {
            return "";
        }
        List<Integer> all = new ArrayList<>();
        months.forEach(m -> all.add(m.asInt()));
        boolean real = months.isArray() && !all.isEmpty() && all.stream().allMatch(m -> m >= 1 && m <= 12);
        return real ? MonthsText.written(all) : months.isValueNode() ? months.asText() : months.toString();
    }

    private static FuelUse.Basis basis(ObjectNode plan, String id, JsonNode heating, JsonNode other) {
        if (heating.isObject()) {
            return FuelUse.Basis.HEATS;
        }
        if (other.has("hoursPerDay")) {
            return FuelUse.Basis.HOURS;
        }
        String chosen = plan.path(FillDraft.OWN).path(HOW).path(id).asText("");
        for (FuelUse.Basis each : FuelUse.Basis.values()) {
            if (each.name().equals(chosen)) {
                return each;
            }
        }
        return FuelUse.Basis.GALLONS;
    }

    /** The item of a list that belongs to an appliance; missing where there is none. */
    public static JsonNode find(JsonNode list, String id) {
        for (JsonNode each : list) {
            if (each.path(APPLIANCE).asText().equals(id)) {
                return each;
            }
        }
        return com.fasterxml.jackson.databind.node.MissingNode.getInstance();
    }

    /** A new line at the end. */
    public static void add(ObjectNode plan) {
        ArrayNode all = plan.withArray(APPLIANCES);
        List<String> ids = new ArrayList<>();
        all.forEach(a -> ids.add(a.path("id").asText()));
        int n = 1;
        while (ids.contains("a" + n)) {
            n++;
        }
        all.addObject().put("id", "a" + n).put("kind", "other");
    }

    /** Stores what was typed in a column. */
    public static void type(ObjectNode plan, int index, FuelUse.Column column, String typed, UnitSystem units) {
        ObjectNode a = (ObjectNode) plan.withArray(APPLIANCES).get(index);
        String id = a.path("id").asText();
        FuelUse line = of(plan).get(index);
        switch (column) {
            case NAME -> nameTyped(plan, a, typed);
            case INPUT ->
                put(
                        a,
                        "input",
                        typed,
                        TextNode.valueOf(Typed.quantity(typed, units.heatUnit().name())));
            case AMOUNT -> amount(plan, id, line.basis(), typed, units);
            case MONTHS -> {
                JsonNode months = MonthsText.read(typed)
                        .<JsonNode>map(all -> {
                            ArrayNode list = plan.arrayNode();
                            all.forEach(m -> list.add(DecimalNode.valueOf(new java.math.BigDecimal(m))));
                            return list;
                        })
                        .orElse(TextNode.valueOf(typed));
                put(other(plan, id), "months", typed, months);
            }
            case EFFICIENCY -> {
                if (find(plan.path("use").path("heating"), id) instanceof ObjectNode heating) {
                    put(heating, EFFICIENCY, typed, TextNode.valueOf(Typed.quantity(typed, "%")));
                }
            }
        }
    }

    private static void put(ObjectNode in, String entry, String typed, JsonNode value) {
        if (typed.isBlank()) {
            in.remove(entry);
        } else {
            in.set(entry, value);
        }
    }

    /** A name sets the kind, and the name of a heater sets the basis to heating, until the person has chosen a basis. */
    private static void nameTyped(ObjectNode plan, ObjectNode a, String typed) {
        String id = a.path("id").asText();
        a.put("name", typed);
        String kind = FuelUseKind.of(typed);
        boolean heats = find(plan.path("use").path("heating"), id).isObject();
        a.put("kind", heats && !FuelUseKind.heatsTheHouse(kind) ? "space-heater" : kind);
        boolean saidHow = plan.path(FillDraft.OWN).path(HOW).has(id);
        boolean nothing = of(plan).stream()
                .filter(b -> b.id().equals(id))
                .allMatch(b -> b.amount().isBlank());
        if (!saidHow && nothing) {
            setBasis(plan, id, FuelUseKind.heatsTheHouse(kind) ? FuelUse.Basis.HEATS : FuelUse.Basis.GALLONS);
        }
    }

    private static void amount(ObjectNode plan, String id, FuelUse.Basis basis, String typed, UnitSystem units) {
        ObjectNode use = basis == FuelUse.Basis.HEATS ? heating(plan, id) : other(plan, id);
        JsonNode value = switch (basis) {
            case HEATS ->
                TextNode.valueOf(Typed.quantity(typed, units.heatUnit().name()));
            case GALLONS -> TextNode.valueOf(Typed.quantity(typed, units == UnitSystem.CUSTOMARY ? "gal" : "L"));
            case HOURS ->
                Typed.number(typed).<JsonNode>map(DecimalNode::valueOf).orElse(TextNode.valueOf(typed));
        };
        put(use, basis.entry(), typed, value);
        keepBasis(plan, id, basis);
    }

    /** Changes the basis of a line; an amount entered on the old basis is dropped. */
    public static void choose(ObjectNode plan, int index, FuelUse.Basis basis) {
        ObjectNode a = (ObjectNode) plan.withArray(APPLIANCES).get(index);
        String id = a.path("id").asText();
        setBasis(plan, id, basis);
        keepBasis(plan, id, basis);
        String kind = FuelUseKind.of(a.path("name").asText(""));
        a.put("kind", basis == FuelUse.Basis.HEATS && !FuelUseKind.heatsTheHouse(kind) ? "space-heater" : kind);
    }

    private static void keepBasis(ObjectNode plan, String id, FuelUse.Basis basis) {
        plan.withObject("/" + FillDraft.OWN + "/" + HOW).put(id, basis.name());
    }

    private static void setBasis(ObjectNode plan, String id, FuelUse.Basis basis) {
        if (basis == FuelUse.Basis.HEATS) {
            remove(plan, "others", id);
            ObjectNode heating = heating(plan, id);
            if (!heating.has(EFFICIENCY)) {
                heating.put(EFFICIENCY, USUAL_EFFICIENCY);
                FillDraft.setStartingValue(plan, EFFICIENCY + " " + id, true);
            }
        } else {
            remove(plan, "heating", id);
            ObjectNode other = other(plan, id);
            other.remove(basis == FuelUse.Basis.HOURS ? FuelUse.Basis.GALLONS.entry() : FuelUse.Basis.HOURS.entry());
        }
    }

    private static ObjectNode heating(ObjectNode plan, String id) {
        return use(plan, "heating", id);
    }

    private static ObjectNode other(ObjectNode plan, String id) {
        return use(plan, "others", id);
    }

    private static ObjectNode use(ObjectNode plan, String list, String id) {
        ObjectNode use = plan.withObject("/use");
        return find(use.path(list), id) instanceof ObjectNode there
                ? there
                : use.withArray(list).addObject().put(APPLIANCE, id);
    }

    private static void remove(ObjectNode plan, String list, String id) {
        JsonNode all = plan.path("use").path(list);
        for (int i = all.size() - 1; i >= 0; i--) {
            if (all.get(i).path(APPLIANCE).asText().equals(id)) {
                ((ArrayNode) all).remove(i);
            }
        }
    }

    /** Removes a line, its appliance and its use. */
    public static void removeLine(ObjectNode plan, int index) {
        String id = plan.withArray(APPLIANCES).remove(index).path("id").asText();
        remove(plan, "heating", id);
        remove(plan, "others", id);
        FillDraft.setStartingValue(plan, EFFICIENCY + " " + id, false);
        plan.withObject("/" + FillDraft.OWN + "/" + HOW).remove(id);
    }

    /** Removes the lines at the end in which nothing is typed. */
    public static void dropBlankEnd(ObjectNode plan) {
        List<FuelUse> all = of(plan);
        for (int i = all.size() - 1; i >= 0; i--) {
            FuelUse b = all.get(i);
            if (!b.name().isBlank()
                    || !b.input().isBlank()
                    || !b.amount().isBlank()
                    || !b.months().isBlank()) {
                return;
            }
            removeLine(plan, i);
        }
    }

    /** The line and column for the pointer of an error; empty where no field of the page holds the entry. */
    public static Optional<FuelUseCell> at(ObjectNode plan, String pointer) {
        PlanPath path = PlanPath.of(pointer);
        List<FuelUse> all = of(plan);
        if (path.length() == 3 && path.isIn(APPLIANCES) && path.findIndex().isPresent()) {
            int at = path.findIndex().getAsInt();
            return at < all.size() && path.step(2).equals("input")
                    ? Optional.of(new FuelUseCell(at, FuelUse.Column.INPUT))
                    : Optional.empty();
        }
        if (path.length() >= 4 && path.isIn("use") && path.findIndex(2).isPresent()) {
            String id = plan.path("use")
                    .path(path.step(1))
                    .path(path.findIndex(2).getAsInt())
                    .path(APPLIANCE)
                    .asText();
            FuelUse.Column column = switch (path.step(3)) {
                case "months" -> FuelUse.Column.MONTHS;
                case EFFICIENCY -> FuelUse.Column.EFFICIENCY;
                default -> FuelUse.Column.AMOUNT;
            };
            for (int i = 0; i < all.size(); i++) {
                if (all.get(i).id().equals(id)) {
                    return Optional.of(new FuelUseCell(i, column));
                }
            }
        }
        return Optional.empty();
    }
}
