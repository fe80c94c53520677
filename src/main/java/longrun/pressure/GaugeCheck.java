package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import longrun.plan.Plan;
import longrun.plan.choice.ReadingKind;
import longrun.quantity.Pressure;

/**
 * A gauge reading beside what was predicted. A regulator may do better than its whole droop and lock-up, so a reading
 * agrees anywhere between the setting and the predicted figure, give or take what a gauge shows.
 *
 * @param reading index in the plan's readings
 * @param read what the gauge showed
 * @param predicted the figure the house was judged by; empty where it is not known
 * @param verdict what comes of the two
 * @param words "agrees", or "differs: look at ..."
 */
public record GaugeCheck(int reading, Pressure read, Optional<Pressure> predicted, Verdict verdict, String words) {

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
                out.add(judge(i, r.pressure().findValue().orElseThrow(), span));
            }
        }
        return List.copyOf(out);
    }

    /** The prediction, and how far a reading may lie from it towards the setting. */
    private record Span(Optional<Pressure> predicted, Optional<Pressure> other, String below, String above) {
        static final Span UNKNOWN = new Span(Optional.empty(), Optional.empty(), "", "");
    }

    private static Span atRegulator(Pressures pressures, int index, Plan.Reading r) {
        RegulatorPressure regulator = pressures.regulator(index);
        String id = regulator.regulator().id();
        String setting = "the setting of " + id;
        if (regulator.setting().isEmpty()) {
            return Span.UNKNOWN;
        }
        if (idle(r)) {
            return new Span(regulator.lockUp(), regulator.setting(), setting, setting + " and whether its seat closes");
        }
        Droop droop = Droop.predicted(regulator.regulator(), regulator.setting().get(), regulator.load());
        Optional<Pressure> drooped =
                droop.atLoad().map(fall -> regulator.setting().get().minus(fall).orNone());
        return new Span(
                drooped,
                regulator.setting(),
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
                    outlet.pressureIdle(),
                    regulator.setting(),
                    "the setting of " + id,
                    "the setting of " + id + " and whether its seat closes");
        }
        boolean all = r.what().is(ReadingKind.FLOWING_ALL);
        Optional<Pressure> pipe = all ? outlet.pressure() : outlet.pressureAlone();
        return new Span(
                all ? outlet.pressureAtInlet() : aloneAtInlet(outlet, regulator),
                pipe,
                "the shutoff, the connector, the pipe sizes on the way and the setting of " + id,
                "the setting of " + id + ", and whether "
                        + (all ? "everything was firing" : "the appliance was at full fire"));
    }

    /** With one appliance firing the regulator falls no more than with all of them. */
    private static Optional<Pressure> aloneAtInlet(OutletPressure outlet, RegulatorPressure regulator) {
        return outlet.pressureAlone()
                .flatMap(alone -> regulator.droop().flatMap(Droop::atLoad).map(alone::minus))
                .map(fallen -> fallen.minus(outlet.connector().drop()).orNone());
    }

    private static boolean idle(Plan.Reading r) {
        return r.what().is(ReadingKind.LOCK_UP) || r.what().is(ReadingKind.STATIC);
    }

    private static GaugeCheck judge(int index, Pressure measured, Span span) {
        if (span.predicted().isEmpty() || span.other().isEmpty()) {
            return new GaugeCheck(
                    index, measured, Optional.empty(), Verdict.NOT_PREDICTED, "not predicted: an entry is missing");
        }
        double read = measured.inWc();
        double predicted = span.predicted().get().inWc();
        double lowest = Math.min(predicted, span.other().get().inWc());
        double highest = Math.max(predicted, span.other().get().inWc());
        boolean under = read < lowest - gauge(lowest);
        boolean over = read > highest + gauge(highest);
        Verdict verdict = under || over ? Verdict.DIFFERS : Verdict.AGREES;
        String words =
                under ? "differs: look at " + span.below() : over ? "differs: look at " + span.above() : "agrees";
        return new GaugeCheck(index, measured, span.predicted(), verdict, words);
    }

    private static double gauge(double inWc) {
        return Math.max(GAUGE_IN_WC, Pressure.ofInWc(inWc).psi() >= 1.5 ? GAUGE_SHARE * inWc : 0);
    }
}
