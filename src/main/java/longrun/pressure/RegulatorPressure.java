package longrun.pressure;

import java.util.Optional;
import java.util.OptionalDouble;
import longrun.piping.Load;
import longrun.plan.Regulator;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;
import longrun.quantity.Same;

/**
 * One line of the regulator schedule.
 *
 * @param regulator as entered
 * @param inletInWc the pressure it will see with everything firing, the regulator before it drooped; empty at the tank
 *     or where unknown
 * @param reached whether that is enough for it
 * @param settingInWc its outlet as set
 * @param lockUpInWc its outlet at no flow
 * @param lockUpEntered whether the lock-up share is entered; else 120 %
 * @param droop how far its outlet falls
 * @param load what it must pass
 */
public record RegulatorPressure(
        Regulator regulator,
        OptionalDouble inletInWc,
        Reached reached,
        OptionalDouble settingInWc,
        OptionalDouble lockUpInWc,
        boolean lockUpEntered,
        Optional<Droop> droop,
        Load load) {

    /** Whether a regulator gets the inlet pressure it needs. */
    public enum Reached {
        /** It does, or what it needs is not entered and it is judged as if it did. */
        YES,
        /** It, or one before it, does not. */
        NO,
        /** What it gets is not known. */
        UNKNOWN
    }

    /** Whether the entered capacity holds at the inlet it will see: rated at no more; empty where either is unknown. */
    public Optional<Boolean> ratingHolds() {
        Optional<Pressure> rated = regulator.capacityAtInlet().findValue();
        return rated.isEmpty() || inletInWc.isEmpty()
                ? Optional.empty()
                : Optional.of(Same.atMost(rated.get().inWc(), inletInWc.getAsDouble()));
    }

    /** The inlet pressure it will see, in words: "45.1 in. w.c.", psi before it from 1.5 psi. */
    public Optional<String> inletText() {
        return inletInWc.isPresent() ? Optional.of(Words.inWc(inletInWc.getAsDouble())) : Optional.empty();
    }

    /** The entered capacity, Btu/h. */
    public OptionalDouble capacityBtuh() {
        return regulator
                .capacity()
                .findValue()
                .map(HeatRate::btuh)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** Capacity less load, Btu/h; negative where it is overloaded. */
    public OptionalDouble spareBtuh() {
        return capacityBtuh().isPresent() && load.complete()
                ? OptionalDouble.of(capacityBtuh().getAsDouble() - load.knownBtuh())
                : OptionalDouble.empty();
    }
}
