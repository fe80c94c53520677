package longrun.pressure;

import java.util.Optional;
import longrun.capacity.FlowEquation;
import longrun.piping.Load;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.choice.ReadingKind;
import longrun.plan.choice.RegulatorKind;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;

/**
 * How far a regulator's outlet falls under its setting at its load.
 *
 * @param atLoad empty where the load is not known and decides it
 * @param atCapacity at full capacity
 * @param source where the figure comes from
 */
public record Droop(Optional<Pressure> atLoad, Pressure atCapacity, Source source) {

    /** Where a droop comes from. */
    public enum Source {
        /** The maker's figure, entered. */
        ENTERED,
        /** Read at the regulator with everything firing. */
        MEASURED,
        /** 2 in. w.c., or a fifth of the setting at 1.5 psi and more; memory. */
        DEFAULT
    }

    /** Default for a regulator set near 11 in. w.c., line regulators too (memory). */
    static final double DEFAULT_IN_WC = 2;

    /** Default share of the setting for first-stage and 2 psi regulators (memory). */
    static final double DEFAULT_SHARE = 0.20;

    /** The maker's figure where entered, else what was read, else the default. */
    static Droop of(Plan plan, Regulator regulator, Pressure setting, Load load) {
        Optional<Pressure> read = measured(plan, regulator.id());
        if (regulator.droopAtCapacity().isKnown() || read.isEmpty()) {
            return predicted(regulator, setting, load);
        }
        Pressure droop = setting.minus(read.get()).orNone();
        return new Droop(Optional.of(droop), droop, Source.MEASURED);
    }

    /** As it is before anyone has held a gauge to it. */
    static Droop predicted(Regulator regulator, Pressure setting, Load load) {
        Optional<Pressure> entered = regulator.droopAtCapacity().findValue();
        Pressure full = entered.orElseGet(() -> Pressure.ofInWc(defaultInWc(regulator, setting)));
        return new Droop(scaled(regulator, full, load), full, entered.isPresent() ? Source.ENTERED : Source.DEFAULT);
    }

    /** Of a kind that is not known, the larger of the two. */
    static double defaultInWc(Regulator regulator, Pressure setting) {
        double share = DEFAULT_SHARE * setting.inWc();
        if (!regulator.kind().isKnown()) {
            return Math.max(share, DEFAULT_IN_WC);
        }
        boolean high = regulator.kind().is(RegulatorKind.FIRST_STAGE)
                || regulator.kind().is(RegulatorKind.TWO_PSI)
                || setting.compareTo(FlowEquation.HIGH_FROM) >= 0;
        return high ? share : DEFAULT_IN_WC;
    }

    /** In proportion to the load; the whole of it where the capacity is not known. */
    private static Optional<Pressure> scaled(Regulator regulator, Pressure full, Load load) {
        Optional<HeatRate> capacity = regulator.capacity().findValue().filter(c -> c.btuh() > 0);
        if (capacity.isEmpty()) {
            return Optional.of(full);
        }
        return load.whole()
                .map(l ->
                        Pressure.ofInWc(full.inWc() * l.btuh() / capacity.get().btuh()));
    }

    /** The last pressure read at the regulator with everything firing. */
    static Optional<Pressure> measured(Plan plan, String regulator) {
        Optional<Pressure> found = Optional.empty();
        for (Plan.Reading r : plan.readings()) {
            if (r.at().is(regulator)
                    && r.what().is(ReadingKind.FLOWING_ALL)
                    && r.pressure().isKnown()) {
                found = r.pressure().findValue();
            }
        }
        return found;
    }
}
