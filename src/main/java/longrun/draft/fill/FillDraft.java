package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.draft.entry.Entered;
import longrun.fuel.StartingClimate;
import longrun.words.UnitSystem;

/**
 * The page as typed: a plan document with one tank, a climate, what burns and past fills. Never changed once made: each
 * change is a new draft. What a plan has no place for, such as which entries are starting values, stands in an object of
 * its own that leaves with the page.
 */
public final class FillDraft {

    /** Where the page's own entries stand; no plan that leaves the page holds them. */
    static final String OWN = "fill";

    private static final String TANK = "tank";
    private static final String STARTING = "starting";

    private final ObjectNode plan;

    private FillDraft(ObjectNode plan) {
        this.plan = plan;
    }

    /** A plan that {@link FillFile} has found to be one this page shows. */
    public static FillDraft of(ObjectNode plan) {
        return new FillDraft(plan.deepCopy());
    }

    /** A page with its starting values: what can be seen at a glance and written over; no gauge and no use. */
    public static FillDraft empty() {
        ObjectNode p = JsonNodeFactory.instance.objectNode();
        p.put("format", longrun.plan.Plan.FORMAT);
        ObjectNode tank = p.putObject(TANK);
        TankChoice.GAL_500.write(tank);
        tank.put("count", 1).put("refillAt", "30 %");
        ClimateEntries.begin(p, StartingClimate.find("cold-inland").orElseThrow());
        p.withObject("/site").put("leadDays", 7);
        for (String each : List.of("TANK", "COUNT", "PLACEMENT", "REFILL_AT", "LEAD", "CLIMATE")) {
            starting(p, each, true);
        }
        return new FillDraft(p);
    }

    /** The demo: an invented house with a furnace, a range and a fireplace. */
    public static FillDraft demo(LocalDate today) {
        UnitSystem us = UnitSystem.CUSTOMARY;
        FillDraft d = empty().typed(FillEntry.GAUGE, "62", us, today)
                .typed(FillEntry.PRICE, "2.85", us, today)
                .typed(0, FuelUse.Column.NAME, "furnace", us)
                .typed(0, FuelUse.Column.INPUT, "60,000", us)
                .typed(0, FuelUse.Column.AMOUNT, "38,000", us)
                .typed(1, FuelUse.Column.NAME, "range", us)
                .typed(1, FuelUse.Column.INPUT, "65,000", us)
                .typed(1, FuelUse.Column.AMOUNT, "60", us)
                .typed(2, FuelUse.Column.NAME, "fireplace", us)
                .typed(2, FuelUse.Column.INPUT, "30,000", us);
        return d.with(2, FuelUse.How.HOURS)
                .typed(2, FuelUse.Column.AMOUNT, "2", us)
                .typed(2, FuelUse.Column.MONTHS, "Nov to Feb", us);
    }

    /** Its plan, to be read. */
    public Entered whole() {
        return Entered.of(plan());
    }

    /** The plan to be reviewed, saved or stored: a copy. */
    public ObjectNode plan() {
        ObjectNode p = plan.deepCopy();
        p.remove(OWN);
        return p;
    }

    /** The text kept in the browser. */
    public String kept() {
        return plan.toString();
    }

    /** What the plan holds for an entry, as text; an empty text where it holds nothing. */
    public String text(FillEntry entry) {
        return entry == FillEntry.COLDEST
                ? ClimateEntries.coldest(plan)
                : plan.at(entry.pointer()).asText("");
    }

    public List<String> months() {
        return ClimateEntries.texts(plan);
    }

    public Optional<Integer> coldestMonth() {
        return ClimateEntries.coldestMonth(plan);
    }

    /** The published climate that stands there unchanged. */
    public Optional<StartingClimate> climate() {
        return ClimateEntries.begun(plan);
    }

    /** The kind of tank, as offered for choice; empty where there is none, or one that is not offered. */
    public Optional<TankChoice> tank() {
        return TankChoice.of(plan.path(TANK));
    }

    /** Whether there is a tank at all, whichever it is. */
    public boolean hasTank() {
        return plan.path(TANK).has("kind");
    }

    public boolean isBuried() {
        return plan.path(TANK).path("placement").asText().equals("underground");
    }

    public List<FuelUse> lines() {
        return FuelUseEntries.of(plan);
    }

    public List<PastFillEntries.Past> past() {
        return PastFillEntries.of(plan);
    }

    /** Whether an entry still holds the value the page began with. */
    public boolean isStarting(String entry) {
        for (JsonNode each : plan.path(OWN).path(STARTING)) {
            if (each.asText().equals(entry)) {
                return true;
            }
        }
        return false;
    }

    /** The line and column a pointer of an error means. */
    public Optional<FuelUseCell> lineAt(String pointer) {
        return FuelUseEntries.at(plan, pointer);
    }

    /** Whether another draft asks about the same tank in the same place: then its answer may stand under this. */
    public boolean isAskedLike(FillDraft other) {
        return plan.path(TANK).path("kind").equals(other.plan.path(TANK).path("kind"))
                && tank().equals(other.tank())
                && isBuried() == other.isBuried();
    }

    /** Takes what was typed in a single entry; a gauge reading without a date of its own counts as read today. */
    public FillDraft typed(FillEntry entry, String typed, UnitSystem units, LocalDate today) {
        return changed(p -> {
            starting(p, entry.name(), false);
            if (entry == FillEntry.COLDEST) {
                starting(p, "CLIMATE", false);
                ClimateEntries.typeColdest(p, typed, units);
                return;
            }
            put(p, entry, typed, units);
            boolean ownDate =
                    p.at(FillEntry.GAUGE_DATE.pointer()).isValueNode() && !isStarting(p, FillEntry.GAUGE_DATE.name());
            if (entry == FillEntry.GAUGE && !ownDate) {
                put(p, FillEntry.GAUGE_DATE, typed.isBlank() ? "" : today.toString(), units);
                starting(p, FillEntry.GAUGE_DATE.name(), !typed.isBlank());
            }
        });
    }

    private static void put(ObjectNode p, FillEntry entry, String typed, UnitSystem units) {
        int slash = entry.pointer().lastIndexOf('/');
        ObjectNode holder = p.withObject(entry.pointer().substring(0, slash));
        String name = entry.pointer().substring(slash + 1);
        if (typed.isBlank()) {
            holder.remove(name);
        } else {
            holder.set(name, entry.node(typed, units));
        }
    }

    public FillDraft typedMonth(int month, String typed, UnitSystem units) {
        return changed(p -> {
            starting(p, "CLIMATE", false);
            ClimateEntries.typeMonth(p, month, typed, units);
        });
    }

    /** Takes what was typed in a line of what burns; typing in the line after the last begins a new one. */
    public FillDraft typed(int index, FuelUse.Column column, String typed, UnitSystem units) {
        return changed(p -> {
            int lines = p.path(FuelUseEntries.APPLIANCES).size();
            if (index >= lines) {
                if (typed.isBlank()) {
                    return;
                }
                FuelUseEntries.add(p);
            }
            int at = Math.min(index, lines);
            FuelUseEntries.type(p, at, column, typed, units);
            if (column == FuelUse.Column.EFFICIENCY) {
                starting(p, "efficiency " + FuelUseEntries.of(p).get(at).id(), false);
            }
            FuelUseEntries.dropBlankEnd(p);
        });
    }

    public FillDraft typedPast(int index, PastFillEntries.Column column, String typed, UnitSystem units) {
        return changed(p -> PastFillEntries.type(p, index, column, typed, units));
    }

    /** Adds past fills pasted as text, one a line; a line without a digit is a heading and left out. */
    public FillDraft pasted(String text, UnitSystem units) {
        return changed(p -> PastFillEntries.paste(p, text, units));
    }

    public FillDraft with(int line, FuelUse.How how) {
        return changed(p -> {
            if (line >= p.path(FuelUseEntries.APPLIANCES).size()) {
                FuelUseEntries.add(p);
            }
            FuelUseEntries.choose(p, line, how);
        });
    }

    public FillDraft with(TankChoice tank) {
        return changed(p -> {
            starting(p, "TANK", false);
            tank.write(p.withObject("/" + TANK));
        });
    }

    public FillDraft buried(boolean buried) {
        return changed(p -> {
            starting(p, "PLACEMENT", false);
            p.withObject("/" + TANK).put("placement", buried ? "underground" : "above-ground");
        });
    }

    public FillDraft with(StartingClimate climate) {
        return changed(p -> {
            starting(p, "CLIMATE", false);
            ClimateEntries.begin(p, climate);
        });
    }

    public FillDraft withoutLine(int index) {
        return changed(p -> FuelUseEntries.removeLine(p, index));
    }

    public FillDraft withoutPast(int index) {
        return changed(p -> PastFillEntries.remove(p, index));
    }

    private static boolean isStarting(ObjectNode p, String entry) {
        return new FillDraft(p).isStarting(entry);
    }

    /** Says of an entry that it holds the value the page began with, or no longer does. */
    public static void starting(ObjectNode plan, String entry, boolean is) {
        ArrayNode all = plan.withObject("/" + OWN).withArray(STARTING);
        for (int i = all.size() - 1; i >= 0; i--) {
            if (all.get(i).asText().equals(entry)) {
                all.remove(i);
            }
        }
        if (is) {
            all.add(entry);
        }
    }

    private FillDraft changed(Consumer<ObjectNode> change) {
        ObjectNode p = plan.deepCopy();
        change.accept(p);
        return new FillDraft(p);
    }
}
