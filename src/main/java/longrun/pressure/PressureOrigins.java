package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import longrun.capacity.CapacityTable;
import longrun.capacity.FittingLengths;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.piping.Piping;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.SizeNames;
import longrun.quantity.Pressure;
import longrun.sizing.SectionSize;

/** Where each figure of this package is from, one level deep. Empty figures have the value "not known". */
public final class PressureOrigins {

    private static final String EQUATION =
            "drop by the code's equation in flow form, %s pressure (2018 International Fuel Gas Code 402.4)";

    private final Pressures pressures;
    /** A way of more sections than this is summed up: each has its own figure, and a reader has had enough. */
    private static final int SECTIONS_NAMED = 40;

    private final Piping piping;

    public PressureOrigins(Pressures pressures) {
        this.pressures = pressures;
        this.piping = pressures.sizing().piping();
    }

    /** The drop of a section. */
    public Origin drop(int section) {
        SectionSize size = pressures.sizing().section(section);
        SectionFlow flow = pressures.flow(section);
        List<Origin> inputs = new ArrayList<>(List.of(load(section), measured(section), counted(section)));
        String how;
        Confidence confidence = Confidence.COMPUTED;
        if (flow.hasBore()) {
            how = String.format(Locale.ROOT, EQUATION, isHigh(section) ? "high" : "low");
            inputs.add(bore(size, flow));
            inputs.add(setting(piping.stageIndex(section)));
        } else if (size.used().isPresent()) {
            CapacityTable table = size.table().orElseThrow();
            how = "drop of its table times the section's length over the length at which the table carries this load;"
                    + " log-log between rows";
            inputs.add(tableLength(section, table, size));
            confidence = size.confidence().orElse(Confidence.COMPUTED);
        } else {
            how = "no size, so no drop";
        }
        return Origin.derived(
                "drop of section " + piping.section(section).id(),
                inWc(pressures.section(section).dropInWc()),
                how,
                confidence,
                inputs);
    }

    private boolean isHigh(int section) {
        return piping.findStage(section)
                .flatMap(s -> s.regulator().outlet().findValue())
                .filter(p -> p.psi() >= 1.5)
                .isPresent();
    }

    private Origin load(int section) {
        OptionalDouble load = piping.load(section).btuh();
        return Origin.derived(
                "load of section " + piping.section(section).id(),
                load.isPresent() ? Words.btuh(load.getAsDouble()) : "not known",
                "sum of the inputs it feeds (2018 International Fuel Gas Code 402.2)",
                Confidence.PRINT,
                List.of());
    }

    private Origin measured(int section) {
        OptionalDouble feet = piping.measuredFt(section);
        return Origin.entered("measured length", feet.isPresent() ? Words.feet(feet.getAsDouble()) : "not known");
    }

    private Origin counted(int section) {
        OptionalDouble feet = pressures.sizing().countedFt(section);
        return Origin.derived(
                "its own counted fittings",
                feet.isPresent() ? Words.feet(feet.getAsDouble()) : "not known",
                FittingLengths.SOURCE + "; corrugated tubing by the footnote of its table",
                Confidence.PRINT,
                List.of());
    }

    private static Origin bore(SectionSize size, SectionFlow flow) {
        CapacityTable table = size.table().orElseThrow();
        return Origin.derived(
                "bore of " + SizeNames.shown(table.material(), size.size().orElseThrow()),
                Words.number(flow.boreIn(), 3) + " in.",
                "inside diameter in the head of " + table.title() + ", " + table.source(),
                Confidence.PRINT,
                List.of());
    }

    private Origin tableLength(int section, CapacityTable table, SectionSize size) {
        int column = size.used().orElseThrow();
        OptionalDouble load = piping.load(section).btuh();
        OptionalDouble feet =
                load.isPresent() ? TableLength.feet(table, column, load.getAsDouble()) : OptionalDouble.empty();
        return Origin.derived(
                "length at which "
                        + SizeNames.shown(table.material(), table.sizes().get(column)) + " carries this load",
                feet.isPresent() ? Words.feet(feet.getAsDouble()) : "not known: above the table's first row",
                table.source() + ", column " + table.sizes().get(column),
                size.confidence().orElse(Confidence.COMPUTED),
                List.of());
    }

    private Origin setting(int regulator) {
        Fact<Pressure> outlet = pressures.regulator(regulator).regulator().outlet();
        return Origin.entered(
                "setting of " + pressures.regulator(regulator).regulator().id(),
                outlet.findText().orElse("not known"));
    }

    /** The pressure at the end of an appliance's pipe, from the setting. */
    public Origin pressure(int appliance) {
        OutletPressure outlet = pressures.outlet(appliance);
        List<Origin> inputs = new ArrayList<>();
        if (outlet.regulator() >= 0) {
            inputs.add(setting(outlet.regulator()));
        }
        List<Integer> way = new ArrayList<>();
        for (int s = outlet.section(); s >= 0; s = piping.parent(s)) {
            way.add(0, s);
        }
        if (way.size() > SECTIONS_NAMED) {
            double lost = pressures.regulator(outlet.regulator()).settingInWc().orElse(Double.NaN)
                    - outlet.pressureInWc().orElse(Double.NaN);
            inputs.add(leaf(
                    "drop of the " + way.size() + " sections on the way",
                    Double.isNaN(lost) ? OptionalDouble.empty() : OptionalDouble.of(lost)));
            way.clear();
        }
        for (int s : way) {
            inputs.add(Origin.derived(
                    "drop of section " + piping.section(s).id(),
                    inWc(pressures.section(s).dropInWc()),
                    "see the section",
                    Confidence.COMPUTED,
                    List.of()));
        }
        return Origin.derived(
                "pressure at the pipe's end, " + id(appliance),
                inWc(outlet.pressureInWc()),
                "setting less the drop of each section, everything firing",
                Confidence.COMPUTED,
                inputs);
    }

    /** The same from the setting less droop. */
    public Origin pressureDrooped(int appliance) {
        OutletPressure outlet = pressures.outlet(appliance);
        List<Origin> inputs = new ArrayList<>(List.of(leaf("pressure at the pipe's end", outlet.pressureInWc())));
        if (outlet.regulator() >= 0) {
            inputs.add(droop(outlet.regulator()));
        }
        return Origin.derived(
                "the same, the regulator drooped, " + id(appliance),
                inWc(outlet.pressureDroopedInWc()),
                "from the setting less droop",
                Confidence.COMPUTED,
                inputs);
    }

    /** How far a regulator falls at its load. */
    public Origin droop(int regulator) {
        RegulatorPressure line = pressures.regulator(regulator);
        String figure = "droop of " + line.regulator().id();
        if (line.droop().isEmpty()) {
            return Origin.derived(figure, "not known", "no setting is entered", Confidence.MEMORY, List.of());
        }
        Droop droop = line.droop().get();
        String how = switch (droop.source()) {
            case ENTERED -> "droop at capacity, entered, times load over capacity";
            case MEASURED -> "setting less the pressure read at it with everything firing";
            case DEFAULT ->
                "default: 2 in. w.c. at capacity, a fifth of the setting for first-stage and 2 psi"
                        + " regulators, times load over capacity";
        };
        Origin capacity = Origin.entered(
                "capacity of " + line.regulator().id(),
                line.regulator().capacity().findText().orElse("not known, so the whole droop"));
        Origin load = Origin.derived(
                "load",
                line.load().complete() ? Words.btuh(line.load().knownBtuh()) : "not known",
                "sum of the inputs it feeds",
                Confidence.PRINT,
                List.of());
        Confidence confidence = droop.source() == Droop.Source.DEFAULT ? Confidence.MEMORY : Confidence.COMPUTED;
        return Origin.derived(figure, inWc(droop.atLoadInWc()), how, confidence, List.of(capacity, load));
    }

    /** The pressure the label's least is held against. */
    public Origin pressureAtInlet(int appliance) {
        OutletPressure outlet = pressures.outlet(appliance);
        return Origin.derived(
                "pressure at the inlet of " + id(appliance),
                inWc(outlet.pressureAtInletInWc()),
                "drooped pressure at the pipe's end less the connector",
                Confidence.COMPUTED,
                List.of(
                        leaf("drooped pressure at the pipe's end", outlet.pressureDroopedInWc()),
                        connector(appliance)));
    }

    /** What the connector loses. */
    public Origin connector(int appliance) {
        ConnectorDrop drop = pressures.outlet(appliance).connector();
        String how = drop.assumed()
                ? "the whole rated drop (0.5 in. w.c. where not entered): the connector or its capacity is not entered"
                : "rated drop (0.5 in. w.c. where not entered) times (input / capacity)^1.85; rigid pipe none";
        return Origin.derived(
                "connector of " + id(appliance),
                Words.inWc(drop.inWc()),
                how,
                Confidence.MEMORY,
                List.of(Origin.entered(
                        "input", entered(appliance).input().findText().orElse("not known"))));
    }

    /** The pressure with one appliance alone. */
    public Origin pressureAlone(int appliance) {
        OutletPressure outlet = pressures.outlet(appliance);
        Origin input =
                Origin.entered("input", entered(appliance).input().findText().orElse("not known"));
        return Origin.derived(
                "pressure with " + id(appliance) + " alone",
                inWc(outlet.pressureAloneInWc()),
                "setting less the drop of each section at this input alone",
                Confidence.COMPUTED,
                outlet.regulator() < 0 ? List.of(input) : List.of(setting(outlet.regulator()), input));
    }

    /** The pressure the label's greatest is held against. */
    public Origin pressureIdle(int appliance) {
        OutletPressure outlet = pressures.outlet(appliance);
        boolean entered = outlet.regulator() >= 0
                && pressures.regulator(outlet.regulator()).lockUpEntered();
        return Origin.derived(
                "pressure with nothing firing, " + id(appliance),
                inWc(outlet.pressureIdleInWc()),
                entered ? "setting times the lock-up share entered" : "setting times 120 %, the default",
                entered ? Confidence.COMPUTED : Confidence.MEMORY,
                outlet.regulator() < 0 ? List.of() : List.of(setting(outlet.regulator())));
    }

    /** What a section loses by rising. */
    public Origin staticHead(int section) {
        return Origin.derived(
                "static of section " + piping.section(section).id(),
                inWc(pressures.section(section).staticInWc()),
                "0.0073 in. w.c. a foot of rise, propane against air",
                Confidence.MEMORY,
                List.of(measured(section)));
    }

    /** A section's gas speed at its end. */
    public Origin velocity(int section) {
        OptionalDouble speed = pressures.section(section).velocityFtPerS();
        return Origin.derived(
                "velocity in section " + piping.section(section).id(),
                speed.isPresent() ? Words.number(speed.getAsDouble(), 1) + " ft/s" : "not known",
                "load / 2,488 Btu/ft3 at the pressure of its end, over the bore",
                Confidence.COMPUTED,
                List.of(
                        load(section),
                        leaf("pressure at its end", pressures.section(section).endInWc())));
    }

    /** A section's inside volume. */
    public Origin insideVolume(int section) {
        OptionalDouble volume = pressures.section(section).insideFt3();
        return Origin.derived(
                "inside volume of section " + piping.section(section).id(),
                volume.isPresent() ? Words.number(volume.getAsDouble(), 4) + " ft3" : "not known",
                "area of the bore times measured length",
                Confidence.COMPUTED,
                List.of(measured(section)));
    }

    /** The least and greatest setting of a regulator. */
    public Origin window(int regulator) {
        SettingWindow window = pressures.window(regulator);
        String bounds = InletPressureLow.bounds(window);
        List<Origin> inputs = new ArrayList<>();
        window.lowestFor().ifPresent(who -> inputs.add(leaf("lowest, asked by " + who, window.lowestInWc())));
        window.highestFor().ifPresent(who -> inputs.add(leaf("highest, asked by " + who, window.highestInWc())));
        return Origin.derived(
                "setting window of "
                        + pressures.regulator(regulator).regulator().id(),
                bounds.isEmpty() ? "not known" : bounds,
                "lowest: greatest of label least, drop, droop and connector; highest: least of label greatest over"
                        + " lock-up share",
                Confidence.COMPUTED,
                inputs);
    }

    /** What can be added at an appliance. */
    public Origin headroom(Headroom headroom, int appliance) {
        OptionalDouble room = headroom.outletBtuh(appliance);
        return Origin.derived(
                "headroom at " + id(appliance),
                room.isPresent() ? Words.btuh(room.getAsDouble()) : "not known",
                "least of table cell less load over its sections back to the tank: " + headroom.outletWords(appliance),
                Confidence.COMPUTED,
                List.of());
    }

    private static Origin leaf(String figure, OptionalDouble inWc) {
        return Origin.derived(figure, inWc(inWc), "see there", Confidence.COMPUTED, List.of());
    }

    private static String inWc(OptionalDouble value) {
        return value.isPresent() ? Words.inWc(value.getAsDouble()) : "not known";
    }

    private Appliance entered(int appliance) {
        return piping.plan().appliances().get(appliance);
    }

    private String id(int appliance) {
        return entered(appliance).id();
    }
}
