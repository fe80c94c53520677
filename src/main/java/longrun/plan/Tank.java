package longrun.plan;

import java.time.LocalDate;
import longrun.plan.choice.Orientation;
import longrun.plan.choice.Placement;
import longrun.plan.choice.TankKind;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Mass;
import longrun.quantity.Pressure;
import longrun.quantity.Volume;

/**
 * A tank or a group of like cylinders.
 *
 * @param leastTankPressure the tank pressure below which the first regulator cannot work
 * @param vapourCapacity the supplier's own figure, which overrules ours
 * @param axisDepth how deep a buried tank's axis lies
 */
public record Tank(
        Fact<TankKind> kind,
        Fact<Volume> waterCapacity,
        Fact<Mass> propaneWeight,
        Fact<Orientation> orientation,
        Fact<Placement> placement,
        Fact<Length> diameter,
        Fact<Length> length,
        Fact<Double> count,
        Fact<GaugeReading> gauge,
        Fact<LocalDate> gaugeDate,
        Fact<GaugeReading> refillAt,
        Fact<Distance> toBuilding,
        Fact<Distance> toPropertyLine,
        Fact<Distance> toOpeningBelow,
        Fact<Distance> toIntake,
        Fact<Distance> toIgnition,
        Fact<Distance> betweenTanks,
        Fact<Pressure> leastTankPressure,
        Fact<HeatRate> vapourCapacity,
        Fact<Length> axisDepth) {}
