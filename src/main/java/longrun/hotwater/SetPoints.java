package longrun.hotwater;

import java.util.OptionalDouble;
import longrun.plan.Fact;
import longrun.plan.choice.Arrangement;
import longrun.quantity.Temperature;

/**
 * What to turn the heaters to in an arrangement: a mixing valve needs some 10 degF more than it delivers (memory), storage at
 * least 140 degF against Legionella (public health guidance, memory).
 *
 * @param storageF empty where no storage heater is at work
 * @param onDemandF empty where no on-demand heater is at work
 */
public record SetPoints(OptionalDouble storageF, OptionalDouble onDemandF) {

    /** What a mixing valve needs over what it delivers where no entry says: memory. */
    public static final double APPROACH_F = 10;

    /** Least set point of a storage heater: public health guidance, memory. */
    public static final double STORAGE_F = 140;

    static final SetPoints NONE = new SetPoints(OptionalDouble.empty(), OptionalDouble.empty());

    static SetPoints of(HotWaterHouse house, Arrangement a) {
        double approach = approachF(house.entry().mixingValveApproach());
        double useF = house.need().useTemp().number();
        double wanted = Double.isInfinite(house.mixF()) ? useF : house.mixF() + approach;
        return new SetPoints(
                a == Arrangement.ON_DEMAND_ONLY
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Math.max(STORAGE_F, wanted)),
                a == Arrangement.STORAGE_ONLY ? OptionalDouble.empty() : OptionalDouble.of(wanted));
    }

    /** A difference: what is written in degC is none of the scale's 32 degF. */
    static double approachF(Fact<Temperature> entered) {
        boolean celsius = entered.findText()
                .filter(t -> t.strip().endsWith("C") || t.strip().endsWith("c"))
                .isPresent();
        return entered.fold(t -> celsius ? t.degF() - 32 : t.degF(), () -> 0.0, () -> APPROACH_F);
    }
}
