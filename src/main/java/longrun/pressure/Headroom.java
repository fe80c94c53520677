package longrun.pressure;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.Appliance;
import longrun.plan.Regulator;
import longrun.plan.SizeNames;
import longrun.quantity.HeatRate;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;
import longrun.sizing.Sizing;

/**
 * What can be added before a size changes: load at each outlet over all stages back to the tank, feet at the end of each
 * stage's longest run. Exact, from the table cells; the regulators' own room stands apart.
 */
public final class Headroom {

    private final Sizing sizing;
    private final Piping piping;
    private final LoadRoom loads;

    private Headroom(Sizing sizing) {
        this.sizing = sizing;
        this.piping = sizing.piping();
        this.loads = new LoadRoom(sizing);
    }

    public static Headroom of(Sizing sizing) {
        return new Headroom(sizing);
    }

    /**
     * Greatest whole Btu/h that can be added at an appliance (by its index in the plan) with every needed size unchanged
     * and no installed section turning undersized; 0 where one on the way already is or has no size; empty where
     * something on the way is not known.
     */
    public OptionalDouble outletBtuh(int appliance) {
        int section = section(appliance);
        return section < 0 || piping.stageIndex(section) < 0
                ? OptionalDouble.empty()
                : loads.btuh(section, loads.ownBtuh(section));
    }

    /** The least of a stage's outlets, capped ones and the next regulators included; empty where one is not known. */
    public OptionalDouble stageBtuh(int stage) {
        double least = Double.POSITIVE_INFINITY;
        for (Outlet outlet : piping.stages().get(stage).outlets()) {
            OptionalDouble here = loads.btuh(outlet.section(), loads.ownBtuh(outlet.section()));
            if (here.isEmpty()) {
                return OptionalDouble.empty();
            }
            least = Math.min(least, here.getAsDouble());
        }
        return Double.isInfinite(least) ? OptionalDouble.empty() : OptionalDouble.of(least);
    }

    /**
     * Feet that can be added to the last leg of a stage's longest run, rounded down to 0.01. Where fittings are counted
     * and that leg has no direction, each foot counts with the 20 percent for turns not known.
     */
    public OptionalDouble stageFt(int stage) {
        return new LengthRoom(sizing, stage).feet();
    }

    /** A regulator's capacity less its load, whole Btu/h, by its index; 0 where it is overloaded; empty if unknown. */
    public OptionalDouble regulatorBtuh(int regulator) {
        Stage stage = piping.stages().get(regulator);
        Regulator entered = stage.regulator();
        OptionalDouble load = piping.load(stage).btuh();
        return entered.capacity().isKnown() && load.isPresent() && piping.isComplete(regulator)
                ? OptionalDouble.of(Math.max(
                        0,
                        LoadRoom.wholeUpTo(
                                entered.capacity()
                                        .findValue()
                                        .map(HeatRate::btuh)
                                        .orElseThrow(),
                                load.getAsDouble())))
                : OptionalDouble.empty();
    }

    /** The section that grows first when load is added at an appliance; empty where none does, or it is not known. */
    public Optional<String> growsFirst(int appliance) {
        int section = section(appliance);
        int tight = section < 0 || piping.stageIndex(section) < 0 ? -1 : loads.tightest(section);
        return tight < 0 ? Optional.empty() : Optional.of(id(tight));
    }

    /** The headroom of an appliance in words: how much more, and what grows after that. */
    public String outletWords(int appliance) {
        Appliance entered = piping.plan().appliances().get(appliance);
        OptionalDouble more = outletBtuh(appliance);
        int section = section(appliance);
        if (more.isEmpty()) {
            return entered.id() + ": not known, an entry on the way is missing";
        }
        int tight = loads.tightest(section);
        if (more.getAsDouble() == 0) {
            return String.format(Locale.ROOT, "%s: no room, section %s carries no more", entered.id(), id(tight));
        }
        if (tight < 0) {
            return String.format(
                    Locale.ROOT, "%s: %,.0f Btu/h more: nothing changes", entered.id(), more.getAsDouble());
        }
        return String.format(
                Locale.ROOT,
                "%s: %,.0f Btu/h more: nothing changes; %,.0f Btu/h: section %s grows",
                entered.id(),
                more.getAsDouble(),
                more.getAsDouble() + 1,
                id(tight));
    }

    /** The feet of a stage in words: "6 ft farther: nothing changes; 6.01 ft: section B grows from 3/4 in." */
    public String stageWords(int stage) {
        LengthRoom room = new LengthRoom(sizing, stage);
        OptionalDouble feet = room.feet();
        if (feet.isEmpty()) {
            return "not known, an entry of the stage is missing";
        }
        if (room.isBlocked()) {
            return "no room: a section has no size or too small a one";
        }
        String after =
                String.join(", ", room.next().stream().map(s -> growth(room, s)).toList());
        return Words.feet(feet.getAsDouble()) + " farther: nothing changes; " + Words.feet(feet.getAsDouble() + 0.01)
                + ": " + after;
    }

    private String growth(LengthRoom room, int section) {
        SectionSize size = sizing.section(section);
        String name = "section " + id(section);
        String shown = shown(size, size.used().orElseThrow());
        if (room.endsTable(section)) {
            return name + " has no longer row in its table";
        }
        return size.status() == SectionStatus.ADEQUATE
                ? name + " asks for more than its " + shown
                : name + " grows from " + shown;
    }

    private static String shown(SectionSize size, int column) {
        var table = size.table().orElseThrow();
        return SizeNames.shown(table.material(), table.sizes().get(column));
    }

    private String id(int section) {
        return piping.section(section).id();
    }

    private int section(int appliance) {
        return piping.findSection(piping.plan()
                        .appliances()
                        .get(appliance)
                        .fedBy()
                        .findValue()
                        .orElse(""))
                .orElse(-1);
    }
}
