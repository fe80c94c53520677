package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.piping.Piping;
import longrun.plan.Appliance;

/** Where the pressures at an appliance are from, one level deep. Empty figures have the value "not known". */
public final class PressureOrigins {

    /** A way of more sections than this is summed up: each has its own figure, and a reader has had enough. */
    private static final int SECTIONS_NAMED = 40;

    private final Pressures pressures;
    private final Piping piping;
    private final RegulatorOrigins regulators;

    public PressureOrigins(Pressures pressures) {
        this.pressures = pressures;
        this.regulators = new RegulatorOrigins(pressures);
        this.piping = pressures.sizing().piping();
    }

    /** The pressure at the end of an appliance's pipe, from the setting. */
    public Origin pressure(int appliance) {
        OutletPressure outlet = pressures.outlet(appliance);
        List<Origin> inputs = new ArrayList<>();
        if (outlet.regulator() >= 0) {
            inputs.add(regulators.setting(outlet.regulator()));
        }
        int way = 0;
        for (int s = outlet.section(); s >= 0; s = piping.parent(s)) {
            way++;
        }
        if (way > SECTIONS_NAMED) {
            inputs.add(FiguredElsewhere.inWc(
                    "drop of the " + way + " sections on the way",
                    pressures
                            .regulator(outlet.regulator())
                            .setting()
                            .flatMap(set -> outlet.pressure().map(set::minus))));
        } else {
            drops(outlet.section(), inputs);
        }
        return Origin.derived(
                "pressure at the pipe's end, " + id(appliance),
                Words.inWc(outlet.pressure()),
                "setting less the drop of each section, everything firing",
                Confidence.COMPUTED,
                inputs);
    }

    /** The drop of each section on the way, the regulator's end first. */
    private void drops(int last, List<Origin> inputs) {
        int first = inputs.size();
        for (int s = last; s >= 0; s = piping.parent(s)) {
            inputs.add(
                    first,
                    FiguredElsewhere.inWc(
                            "drop of section " + piping.section(s).id(),
                            pressures.section(s).drop()));
        }
    }

    /** The same from the setting less droop. */
    public Origin pressureDrooped(int appliance) {
        OutletPressure outlet = pressures.outlet(appliance);
        List<Origin> inputs =
                new ArrayList<>(List.of(FiguredElsewhere.inWc("pressure at the pipe's end", outlet.pressure())));
        if (outlet.regulator() >= 0) {
            inputs.add(regulators.droop(outlet.regulator()));
        }
        return Origin.derived(
                "the same, the regulator drooped, " + id(appliance),
                Words.inWc(outlet.pressureDrooped()),
                "from the setting less droop",
                Confidence.COMPUTED,
                inputs);
    }

    /** The pressure the label's least is held against. */
    public Origin pressureAtInlet(int appliance) {
        OutletPressure outlet = pressures.outlet(appliance);
        return Origin.derived(
                "pressure at the inlet of " + id(appliance),
                Words.inWc(outlet.pressureAtInlet()),
                "drooped pressure at the pipe's end less the connector",
                Confidence.COMPUTED,
                List.of(
                        FiguredElsewhere.inWc("drooped pressure at the pipe's end", outlet.pressureDrooped()),
                        connector(appliance)));
    }

    /** What the connector loses. */
    public Origin connector(int appliance) {
        ConnectorDrop drop = pressures.outlet(appliance).connector();
        String how = drop.assumed()
                ? "the whole rated drop (0.5 in. w.c. where not entered): the connector or its capacity is not entered, or"
                        + " nobody has looked at it"
                : "rated drop (0.5 in. w.c. where not entered) times (input / capacity)^1.85; rigid pipe none";
        return Origin.derived(
                "connector of " + id(appliance),
                Words.inWc(drop.drop()),
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
                Words.inWc(outlet.pressureAlone()),
                "setting less the drop of each section at this input alone",
                Confidence.COMPUTED,
                outlet.regulator() < 0 ? List.of(input) : List.of(regulators.setting(outlet.regulator()), input));
    }

    /** The pressure the label's greatest is held against. */
    public Origin pressureIdle(int appliance) {
        OutletPressure outlet = pressures.outlet(appliance);
        boolean entered = outlet.regulator() >= 0
                && pressures.regulator(outlet.regulator()).lockUpEntered();
        return Origin.derived(
                "pressure with nothing firing, " + id(appliance),
                Words.inWc(outlet.pressureIdle()),
                entered ? "setting times the lock-up share entered" : "setting times 120 %, the default",
                entered ? Confidence.COMPUTED : Confidence.MEMORY,
                outlet.regulator() < 0 ? List.of() : List.of(regulators.setting(outlet.regulator())));
    }

    /** What the gas loses by rising to an appliance, in none of the other figures. */
    public Origin staticTo(int appliance) {
        return Origin.derived(
                "lost by rising to " + id(appliance),
                pressures
                        .outlet(appliance)
                        .staticLoss()
                        .map(p -> Words.number(p.inWc(), 3) + " in. w.c.")
                        .orElse("not known"),
                "sum over the sections of its stage of 0.0073 in. w.c. a foot of rise, propane against air; in none of"
                        + " the others",
                Confidence.MEMORY,
                List.of());
    }

    /** What can be added at an appliance. */
    public Origin headroom(Headroom headroom, int appliance) {
        return Origin.derived(
                "headroom at " + id(appliance),
                Words.btuh(headroom.atAppliance(appliance)),
                "least of table cell less load over its sections back to the tank: " + headroom.outletWords(appliance),
                Confidence.COMPUTED,
                List.of());
    }

    private Appliance entered(int appliance) {
        return piping.plan().appliances().get(appliance);
    }

    private String id(int appliance) {
        return entered(appliance).id();
    }
}
