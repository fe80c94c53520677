package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.draft.entry.DraftValue;
import longrun.fuel.StartingClimate;
import longrun.words.UnitSystem;

/**
 * The draft of How long does a fill last: a plan document with one tank, a climate, what burns and past fills. Immutable:
 * each change makes a new draft. What a plan has no entry for, such as which entries are starting values, is kept in an
 * object of its own that is not saved with the plan.
 */
public final class FillDraft {

    /** The entry for what belongs to the page alone; it is removed from the plan that is saved. */
    static final String OWN = "fill";

    private static final String TANK = "tank";
    private static final String STARTING = "starting";

    private final ObjectNode plan;

    private FillDraft(ObjectNode plan) {
        this.plan = plan;
    }

    /** The draft of a plan that {@link FillFile} has accepted. */
    public static FillDraft of(ObjectNode plan) {
        return new FillDraft(plan.deepCopy());
    }

    /** A draft with starting values, each to be seen and replaced; without a gauge reading and without a use. */
    public static FillDraft empty() {
        ObjectNode p = JsonNodeFactory.instance.objectNode();
        p.put("format", longrun.plan.Plan.FORMAT);
        ObjectNode tank = p.putObject(TANK);
        TankChoice.GAL_500.write(tank);
        tank.put("count", 1).put("refillAt", "30 %");
        ClimateEntries.begin(p, StartingClimate.find("cold-inland").orElseThrow());
        p.withObject("/site").put("leadDays", 7);
        for (String each : List.of("TANK", "COUNT", "PLACEMENT", "REFILL_AT", "LEAD", "CLIMATE")) {
            setStartingValue(p, each, true);
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
        return d.with(2, FuelUse.Basis.HOURS)
                .typed(2, FuelUse.Column.AMOUNT, "2", us)
                .typed(2, FuelUse.Column.MONTHS, "Nov to Feb", us);
    }

    /** Its plan, to be read entry by entry. */
    public DraftValue whole() {
        return DraftValue.of(plan());
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

    /** What is stored for an entry, as text; blank where nothing is. */
    public String text(FillEntry entry) {
        return entry == FillEntry.COLDEST
                ? ClimateEntries.coldest(plan)
                : plan.at(entry.pointer()).asText("");
    }

    /** The twelve monthly means as stored, January first; blank where nothing is typed. */
    public List<String> months() {
        return ClimateEntries.texts(plan);
    }

    /** The coldest month, January 0; empty while the twelve means cannot all be read. */
    public Optional<Integer> coldestMonth() {
        return ClimateEntries.coldestMonth(plan);
    }

    /** The published climate that was chosen, if it is unchanged. */
    public Optional<StartingClimate> climate() {
        return ClimateEntries.begun(plan);
    }

    /** The tank as one of those offered; empty where there is none, or one that is not offered. */
    public Optional<TankChoice> tank() {
        return TankChoice.of(plan.path(TANK));
    }

    /** Whether there is a tank, offered or not. */
    public boolean hasTank() {
        return plan.path(TANK).has("kind");
    }

    /** Whether the tank is underground. */
    public boolean isBuried() {
        return plan.path(TANK).path("placement").asText().equals("underground");
    }

    /** The lines of what burns. */
    public List<FuelUse> lines() {
        return FuelUseEntries.of(plan);
    }

    /** The past fills. */
    public List<PastFillEntries.Past> past() {
        return PastFillEntries.of(plan);
    }

    /** Whether an entry still holds its starting value. */
    public boolean isStartingValue(String entry) {
        for (JsonNode each : plan.path(OWN).path(STARTING)) {
            if (each.asText().equals(entry)) {
                return true;
            }
        }
        return false;
    }

    /** The line and column of what burns for the pointer of an error; empty where it is another entry. */
    public Optional<FuelUseCell> lineAt(String pointer) {
        return FuelUseEntries.at(plan, pointer);
    }

    /** Whether another draft has the same tank in the same place, so that its answer may still be shown for this one. */
    public boolean hasSameTank(FillDraft other) {
        return plan.path(TANK).path("kind").equals(other.plan.path(TANK).path("kind"))
                && tank().equals(other.tank())
                && isBuried() == other.isBuried();
    }

    /** A copy with what was typed in a single entry; a gauge reading without a date of its own counts as read today. */
    public FillDraft typed(FillEntry entry, String typed, UnitSystem units, LocalDate today) {
        return changed(p -> {
            setStartingValue(p, entry.name(), false);
            if (entry == FillEntry.COLDEST) {
                setStartingValue(p, "CLIMATE", false);
                ClimateEntries.typeColdest(p, typed, units);
                return;
            }
            put(p, entry, typed, units);
            boolean ownDate = p.at(FillEntry.GAUGE_DATE.pointer()).isValueNode()
                    && !isStartingValue(p, FillEntry.GAUGE_DATE.name());
            if (entry == FillEntry.GAUGE && !ownDate) {
                put(p, FillEntry.GAUGE_DATE, typed.isBlank() ? "" : today.toString(), units);
                setStartingValue(p, FillEntry.GAUGE_DATE.name(), !typed.isBlank());
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

    /** A copy with what was typed for a month, January 0. */
    public FillDraft typedMonth(int month, String typed, UnitSystem units) {
        return changed(p -> {
            setStartingValue(p, "CLIMATE", false);
            ClimateEntries.typeMonth(p, month, typed, units);
        });
    }

    /** A copy with what was typed in a line of what burns; typing in the line after the last begins a new one. */
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
                setStartingValue(p, "efficiency " + FuelUseEntries.of(p).get(at).id(), false);
            }
            FuelUseEntries.dropBlankEnd(p);
        });
    }

    /** A copy with what was typed in a past fill; typing in the line after the last begins a new one. */
    public FillDraft typedPast(int index, PastFillEntries.Column column, String typed, UnitSystem units) {
        return changed(p -> PastFillEntries.type(p, index, column, typed, units));
    }

    /** A copy with past fills pasted as text, one on each line; a line without a digit is a heading and left out. */
    public FillDraft pasted(String text, UnitSystem units) {
        return changed(p -> PastFillEntries.paste(p, text, units));
    }

    /** A copy in which the use of a line is entered on another basis. */
    public FillDraft with(int line, FuelUse.Basis basis) {
        return changed(p -> {
            if (line >= p.path(FuelUseEntries.APPLIANCES).size()) {
                FuelUseEntries.add(p);
            }
            FuelUseEntries.choose(p, line, basis);
        });
    }

    /** A copy with another tank. */
    public FillDraft with(TankChoice tank) {
        return changed(p -> {
            setStartingValue(p, "TANK", false);
            tank.write(p.withObject("/" + TANK));
        });
    }

    /** A copy with the tank underground or above ground. */
    public FillDraft buried(boolean buried) {
        return changed(p -> {
            setStartingValue(p, "PLACEMENT", false);
            p.withObject("/" + TANK).put("placement", buried ? "underground" : "above-ground");
        });
    }

    /** A copy with a published climate. */
    public FillDraft with(StartingClimate climate) {
        return changed(p -> {
            setStartingValue(p, "CLIMATE", false);
            ClimateEntries.begin(p, climate);
        });
    }

    /** A copy without a line of what burns. */
    public FillDraft withoutLine(int index) {
        return changed(p -> FuelUseEntries.removeLine(p, index));
    }

    /** A copy without a past fill. */
    public FillDraft withoutPast(int index) {
        return changed(p -> PastFillEntries.remove(p, index));
    }

    private static boolean isStartingValue(ObjectNode p, String entry) {
        return new FillDraft(p).isStartingValue(entry);
    }

    /** Marks an entry as holding its starting value, or removes the mark. */
    public static void setStartingValue(ObjectNode plan, String entry, boolean is) {
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
