package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.piping.Piping;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.quantity.Pressure;

/** Where the figures of the regulator schedule are from, one level deep. Empty figures have the value "not known". */
public final class RegulatorOrigins {

    private final Pressures pressures;
    private final Piping piping;

    public RegulatorOrigins(Pressures pressures) {
        this.pressures = pressures;
        this.piping = pressures.sizing().piping();
    }

    private Regulator entered(int regulator) {
        return pressures.regulator(regulator).regulator();
    }

    /** What it is set to. */
    public Origin setting(int regulator) {
        Fact<Pressure> outlet = entered(regulator).outlet();
        return Origin.entered(
                "setting of " + entered(regulator).id(), outlet.findText().orElse("not known"));
    }

    /** The inlet pressure it will see with everything firing. */
    public Origin inlet(int regulator) {
        Optional<Pressure> inlet = pressures.regulator(regulator).inlet();
        String figure = "inlet pressure " + entered(regulator).id() + " will see";
        int before = piping.stageFeeding(regulator);
        if (before < 0) {
            String how = entered(regulator).fedBy().is("tank")
                    ? "the tank's own pressure, which varies with the weather; see the tank's figures"
                    : "what feeds it is not entered";
            return Origin.derived(figure, "not known", how, Confidence.COMPUTED, List.of());
        }
        RegulatorPressure ahead = pressures.regulator(before);
        Optional<Pressure> pipe = ahead.drooped().flatMap(fallen -> inlet.map(fallen::minus));
        return Origin.derived(
                figure,
                Words.inWc(inlet),
                "setting of the regulator before it, less its droop, less what the pipe between them loses, everything"
                        + " firing",
                Confidence.COMPUTED,
                List.of(
                        // in both units, so that the sum can be followed
                        Origin.entered("setting of " + ahead.regulator().id(), Words.inWc(ahead.setting())),
                        droop(before),
                        FiguredElsewhere.inWc("lost in the pipe between them", pipe)));
    }

    /** Its outlet at no flow. */
    public Origin lockUp(int regulator) {
        RegulatorPressure line = pressures.regulator(regulator);
        return Origin.derived(
                "lock-up of " + line.regulator().id(),
                Words.inWc(line.lockUp()),
                line.lockUpEntered() ? "the share entered, of the setting" : "120 % of the setting, the default",
                line.lockUpEntered() ? Confidence.COMPUTED : Confidence.MEMORY,
                List.of(setting(regulator)));
    }

    /** What it passes, and at which inlet pressure that holds. */
    public Origin rating(int regulator) {
        Regulator r = entered(regulator);
        String at = r.capacityAtInlet()
                .findText()
                .map(p -> " at an inlet of " + p)
                .orElse(", at an inlet that is not entered");
        return Origin.entered(
                "capacity of " + r.id(),
                r.capacity().findText().map(c -> c + at).orElse("not known"));
    }

    /** What it must pass. */
    public Origin load(int regulator) {
        RegulatorPressure line = pressures.regulator(regulator);
        return Origin.derived(
                "load of " + line.regulator().id(),
                Words.btuh(line.load().whole()),
                "sum of the inputs it feeds (2018 International Fuel Gas Code 402.2)",
                Confidence.PRINT,
                List.of());
    }

    /** What it could pass beyond its load. */
    public Origin spare(int regulator) {
        RegulatorPressure line = pressures.regulator(regulator);
        return Origin.derived(
                "to spare at " + line.regulator().id(),
                Words.btuh(line.spare()),
                "capacity less load; a fifth of the capacity is wanted (common practice)",
                Confidence.COMPUTED,
                List.of(rating(regulator), load(regulator)));
    }

    /** How far a regulator falls at its load. */
    public Origin droop(int regulator) {
        RegulatorPressure line = pressures.regulator(regulator);
        String figure = "droop of " + line.regulator().id();
        if (line.droop().isEmpty()) {
            return Origin.derived(figure, "not known", "no setting is entered", Confidence.MEMORY, List.of());
        }
        return droop(figure, line, line.droop().get());
    }

    /** Its outlet with everything firing, as it was predicted before a gauge was held to it. */
    public Origin predictedDroop(int regulator) {
        RegulatorPressure line = pressures.regulator(regulator);
        String figure = "outlet of " + line.regulator().id() + " with everything firing";
        Optional<Pressure> set = entered(regulator).outlet().findValue();
        if (set.isEmpty()) {
            return Origin.derived(figure, "not known", "no setting is entered", Confidence.MEMORY, List.of());
        }
        Droop predicted = Droop.predicted(line.regulator(), set.get(), line.load());
        Optional<Pressure> outlet =
                predicted.atLoad().map(falls -> set.get().minus(falls).orNone());
        return Origin.derived(
                figure,
                Words.inWc(outlet),
                "setting less droop",
                Confidence.COMPUTED,
                List.of(
                        setting(regulator),
                        droop("droop predicted of " + line.regulator().id(), line, predicted)));
    }

    private static Origin droop(String figure, RegulatorPressure line, Droop droop) {
        String how = switch (droop.source()) {
            case ENTERED -> "droop at capacity, entered, times load divided by capacity";
            case MEASURED -> "setting less the pressure read at it with everything firing";
            case DEFAULT ->
                "default: 2 in. w.c. at capacity, a fifth of the setting for first-stage and 2 psi"
                        + " regulators, times load divided by capacity";
        };
        Origin capacity = Origin.entered(
                "capacity of " + line.regulator().id(),
                line.regulator().capacity().findText().orElse("not known, so the whole droop"));
        Origin load = Origin.derived(
                "load", Words.btuh(line.load().whole()), "sum of the inputs it feeds", Confidence.PRINT, List.of());
        Confidence confidence = droop.source() == Droop.Source.DEFAULT ? Confidence.MEMORY : Confidence.COMPUTED;
        return Origin.derived(figure, Words.inWc(droop.atLoad()), how, confidence, List.of(capacity, load));
    }

    /** The least and greatest setting of a regulator. */
    public Origin window(int regulator) {
        SettingWindow window = pressures.window(regulator);
        String bounds = InletPressureLow.bounds(window);
        List<Origin> inputs = new ArrayList<>();
        window.lowestFor()
                .ifPresent(who -> inputs.add(FiguredElsewhere.inWc("lowest, asked by " + who, window.lowest())));
        window.highestFor()
                .ifPresent(who -> inputs.add(FiguredElsewhere.inWc("highest, asked by " + who, window.highest())));
        return Origin.derived(
                "setting window of "
                        + pressures.regulator(regulator).regulator().id(),
                bounds.isEmpty() ? "not known" : bounds,
                "lowest: greatest of label least, drop, droop and connector; highest: least of label greatest over"
                        + " lock-up share",
                Confidence.COMPUTED,
                inputs);
    }
}
