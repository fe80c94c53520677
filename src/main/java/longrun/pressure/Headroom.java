package longrun.pressure;

import java.util.Locale;
import java.util.Optional;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.Appliance;
import longrun.plan.Regulator;
import longrun.plan.SizeNames;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
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
     * Greatest heat rate, whole Btu/h, that can be added at an appliance (by its index in the plan) with every needed size unchanged
     * and no installed section turning undersized; 0 where one on the way already is or has no size; empty where
     * something on the way is not known.
     */
    public Optional<HeatRate> atAppliance(int appliance) {
        int section = section(appliance);
        return section < 0 || piping.stageIndex(section) < 0
                ? Optional.empty()
                : loads.room(section, loads.own(section));
    }

    /** The least of a stage's outlets, capped ones and the next regulators included; empty where one is not known. */
    public Optional<HeatRate> ofStage(int stage) {
        double least = Double.POSITIVE_INFINITY;
        for (Outlet outlet : piping.stages().get(stage).outlets()) {
            Optional<HeatRate> here = loads.room(outlet.section(), loads.own(outlet.section()));
            if (here.isEmpty()) {
                return Optional.empty();
            }
            least = Math.min(least, here.get().btuh());
        }
        return Double.isInfinite(least) ? Optional.empty() : Optional.of(HeatRate.ofBtuh(least));
    }

    /**
     * What can be added to the last leg of a stage's longest run, rounded down to 0.01 ft. Where fittings are counted
     * and that leg has no direction, each foot counts with the 20 percent for turns not known.
     */
    public Optional<Length> lengthOfStage(int stage) {
        return new LengthRoom(sizing, stage).find();
    }

    /** A regulator's capacity less its load, whole Btu/h, by its index; 0 where it is overloaded; empty if unknown. */
    public Optional<HeatRate> ofRegulator(int regulator) {
        Stage stage = piping.stages().get(regulator);
        Regulator entered = stage.regulator();
        Optional<HeatRate> load = piping.load(stage).whole();
        return entered.capacity().isKnown() && load.isPresent() && piping.isComplete(regulator)
                ? Optional.of(HeatRate.ofBtuh(Math.max(
                        0,
                        LoadRoom.wholeUpTo(
                                entered.capacity()
                                        .findValue()
                                        .map(HeatRate::btuh)
                                        .orElseThrow(),
                                load.get().btuh()))))
                : Optional.empty();
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
        Optional<HeatRate> more = atAppliance(appliance);
        int section = section(appliance);
        if (more.isEmpty()) {
            return entered.id() + ": not known, an entry on the way is missing";
        }
        int tight = loads.tightest(section);
        if (more.get().btuh() == 0) {
            return String.format(Locale.ROOT, "%s: no room, section %s carries no more", entered.id(), id(tight));
        }
        if (tight < 0) {
            return String.format(
                    Locale.ROOT,
                    "%s: %,.0f Btu/h more: nothing changes",
                    entered.id(),
                    more.get().btuh());
        }
        return String.format(
                Locale.ROOT,
                "%s: %,.0f Btu/h more: nothing changes; %,.0f Btu/h: section %s grows",
                entered.id(),
                more.get().btuh(),
                more.get().btuh() + 1,
                id(tight));
    }

    /** The feet of a stage in words: "6 ft farther: nothing changes; 6.01 ft: section B grows from 3/4 in." */
    public String stageWords(int stage) {
        LengthRoom room = new LengthRoom(sizing, stage);
        Optional<Length> more = room.find();
        if (more.isEmpty()) {
            return "not known, an entry of the stage is missing";
        }
        if (room.isBlocked()) {
            return "no room: a section has no size or too small a one";
        }
        String after =
                String.join(", ", room.next().stream().map(s -> growth(room, s)).toList());
        return Words.feet(more.get()) + " farther: nothing changes; "
                + Words.feet(more.get().plus(Length.ofFeet(0.01)))
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
