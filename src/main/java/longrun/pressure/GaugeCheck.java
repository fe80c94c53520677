package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import longrun.plan.Plan;
import longrun.plan.choice.ReadingKind;
import longrun.quantity.Pressure;

/**
 * A gauge reading beside what was predicted. A regulator may do better than its whole droop and lock-up, so a reading
 * agrees anywhere between the setting and the predicted figure, give or take what a gauge shows.
 *
 * @param reading index in the plan's readings
 * @param readInWc what the gauge showed, in. w.c.
 * @param predictedInWc the figure the house was judged by, in. w.c.; empty where it is not known
 * @param verdict what comes of the two
 * @param words "agrees", or "differs: look at ..."
 */
public record GaugeCheck(int reading, double readInWc, OptionalDouble predictedInWc, Verdict verdict, String words) {

    /** What comes of holding a reading against the prediction. */
    public enum Verdict {
        AGREES,
        DIFFERS,
        /** Nothing to hold it against. */
        NOT_PREDICTED
    }

    /** What a house's gauge and two readers differ by, under 1.5 psi (common practice). */
    static final double GAUGE_IN_WC = 0.2;

    /** The same from 1.5 psi, as a share of the pressure (common practice). */
    static final double GAUGE_SHARE = 0.05;

    /** The readings of pressures in use, in the plan's order; tests and leak checks stand in the test plan. */
    public static List<GaugeCheck> of(Pressures pressures) {
        Plan plan = pressures.sizing().piping().plan();
        Map<String, Integer> regulators = new TreeMap<>();
        Map<String, Integer> appliances = new TreeMap<>();
        for (int r = 0; r < plan.regulators().size(); r++) {
            regulators.put(plan.regulators().get(r).id(), r);
        }
        for (int a = 0; a < plan.appliances().size(); a++) {
            appliances.put(plan.appliances().get(a).id(), a);
        }
        List<GaugeCheck> out = new ArrayList<>();
        for (int i = 0; i < plan.readings().size(); i++) {
            Plan.Reading r = plan.readings().get(i);
            boolean inUse = !r.what().is(ReadingKind.TEST) && !r.what().is(ReadingKind.LEAK_CHECK);
            if (inUse && r.what().isKnown() && r.pressure().isKnown()) {
                String at = r.at().findValue().orElse("");
                Span span = regulators.containsKey(at)
                        ? atRegulator(pressures, regulators.get(at), r)
                        : appliances.containsKey(at) ? atAppliance(pressures, appliances.get(at), r) : Span.UNKNOWN;
                out.add(judge(i, r.pressure().findValue().map(Pressure::inWc).orElseThrow(), span));
            }
        }
        return List.copyOf(out);
    }

    /** The prediction, and how far a reading may lie from it towards the setting. */
    private record Span(OptionalDouble predicted, OptionalDouble other, String below, String above) {
        static final Span UNKNOWN = new Span(OptionalDouble.empty(), OptionalDouble.empty(), "", "");
    }

    private static Span atRegulator(Pressures pressures, int index, Plan.Reading r) {
        RegulatorPressure regulator = pressures.regulator(index);
        String id = regulator.regulator().id();
        String setting = "the setting of " + id;
        if (regulator.settingInWc().isEmpty()) {
            return Span.UNKNOWN;
        }
        if (idle(r)) {
            return new Span(
                    regulator.lockUpInWc(), regulator.settingInWc(), setting, setting + " and whether its seat closes");
        }
        Droop droop = Droop.predicted(
                regulator.regulator(), Pressure.ofInWc(regulator.settingInWc().getAsDouble()), regulator.load());
        OptionalDouble drooped = droop.atLoadInWc().isPresent()
                ? OptionalDouble.of(Math.max(
                        0,
                        regulator.settingInWc().getAsDouble()
                                - droop.atLoadInWc().getAsDouble()))
                : OptionalDouble.empty();
        return new Span(
                drooped,
                regulator.settingInWc(),
                setting + ", its inlet pressure and its capacity",
                setting + ", and whether everything was firing");
    }

    private static Span atAppliance(Pressures pressures, int index, Plan.Reading r) {
        OutletPressure outlet = pressures.outlet(index);
        if (outlet.regulator() < 0) {
            return Span.UNKNOWN;
        }
        RegulatorPressure regulator = pressures.regulator(outlet.regulator());
        String id = regulator.regulator().id();
        if (idle(r)) {
            return new Span(
                    outlet.pressureIdleInWc(),
                    regulator.settingInWc(),
                    "the setting of " + id,
                    "the setting of " + id + " and whether its seat closes");
        }
        boolean all = r.what().is(ReadingKind.FLOWING_ALL);
        OptionalDouble pipe = all ? outlet.pressureInWc() : outlet.pressureAloneInWc();
        return new Span(
                all ? outlet.pressureAtInletInWc() : aloneAtInlet(outlet, regulator),
                pipe,
                "the shutoff, the connector, the pipe sizes on the way and the setting of " + id,
                "the setting of " + id + ", and whether "
                        + (all ? "everything was firing" : "the appliance was at full fire"));
    }

    /** With one appliance firing the regulator falls no more than with all of them. */
    private static OptionalDouble aloneAtInlet(OutletPressure outlet, RegulatorPressure regulator) {
        if (outlet.pressureAloneInWc().isEmpty()
                || regulator
                        .droop()
                        .flatMap(d -> d.atLoadInWc().stream().boxed().findFirst())
                        .isEmpty()) {
            return OptionalDouble.empty();
        }
        double droop = regulator.droop().orElseThrow().atLoadInWc().orElseThrow();
        return OptionalDouble.of(Math.max(
                0,
                outlet.pressureAloneInWc().getAsDouble()
                        - droop
                        - outlet.connector().inWc()));
    }

    private static boolean idle(Plan.Reading r) {
        return r.what().is(ReadingKind.LOCK_UP) || r.what().is(ReadingKind.STATIC);
    }

    private static GaugeCheck judge(int index, double read, Span span) {
        if (span.predicted().isEmpty() || span.other().isEmpty()) {
            return new GaugeCheck(
                    index, read, OptionalDouble.empty(), Verdict.NOT_PREDICTED, "not predicted: an entry is missing");
        }
        double predicted = span.predicted().getAsDouble();
        double lowest = Math.min(predicted, span.other().getAsDouble());
        double highest = Math.max(predicted, span.other().getAsDouble());
        boolean under = read < lowest - gauge(lowest);
        boolean over = read > highest + gauge(highest);
        Verdict verdict = under || over ? Verdict.DIFFERS : Verdict.AGREES;
        String words =
                under ? "differs: look at " + span.below() : over ? "differs: look at " + span.above() : "agrees";
        return new GaugeCheck(index, read, span.predicted(), verdict, words);
    }

    private static double gauge(double inWc) {
        return Math.max(GAUGE_IN_WC, Pressure.ofInWc(inWc).psi() >= 1.5 ? GAUGE_SHARE * inWc : 0);
    }
}
