package longrun.pressure;

import java.util.Optional;
import longrun.piping.Load;
import longrun.plan.Regulator;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;
import longrun.quantity.Same;

/**
 * One line of the regulator schedule.
 *
 * @param regulator as entered
 * @param inlet the pressure it will see with everything firing, the regulator before it drooped; empty at the tank
 *     or where unknown
 * @param reached whether that is enough for it
 * @param setting its outlet as set
 * @param lockUp its outlet at no flow
 * @param lockUpEntered whether the lock-up share is entered; else 120 %
 * @param droop how far its outlet falls
 * @param load what it must pass
 */
public record RegulatorPressure(
        Regulator regulator,
        Optional<Pressure> inlet,
        Reached reached,
        Optional<Pressure> setting,
        Optional<Pressure> lockUp,
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
        return rated.isEmpty() || inlet.isEmpty()
                ? Optional.empty()
                : Optional.of(Same.atMost(rated.get().inWc(), inlet.get().inWc()));
    }

    /** The inlet pressure it will see, in words: "45.1 in. w.c.", psi before it from 1.5 psi. */
    public Optional<String> inletText() {
        return inlet.map(Words::inWc);
    }

    /** The entered capacity. */
    public Optional<HeatRate> capacity() {
        return regulator.capacity().findValue();
    }

    /** Capacity less load; negative where it is overloaded. */
    public Optional<HeatRate> spare() {
        return capacity().flatMap(c -> load.whole().map(c::minus));
    }

    /** Its outlet at its load: the setting less the fall; empty where either is not known. */
    public Optional<Pressure> drooped() {
        return setting.flatMap(set -> droop.flatMap(Droop::atLoad).map(set::minus));
    }
}
