package longrun.plan;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import longrun.plan.choice.Arrangement;
import longrun.plan.choice.StorageRoom;
import longrun.quantity.Flow;
import longrun.quantity.HeatLoss;
import longrun.quantity.HeatRate;
import longrun.quantity.HeatingValue;
import longrun.quantity.Ratio;
import longrun.quantity.Temperature;
import longrun.quantity.TimeSpan;
import longrun.quantity.Volume;

/** How propane is used through the year. */
public record Use(
        Optional<HotWater> hotWater,
        List<Heating> heating,
        List<Other> others,
        List<Occasion> occasions,
        Fact<HeatingValue> heatingValue,
        Fact<Double> pricePerGal,
        Fact<Temperature> indoorTemp,
        Fact<Double> pricePerKwh) {

    /** Space heating by one appliance. */
    public record Heating(
            Fact<String> appliance, Fact<HeatRate> designLoad, Fact<Ratio> efficiency, Fact<Temperature> balanceTemp) {}

    /** Any other use: gallons a year, or hours a day in some months. */
    public record Other(
            Fact<String> appliance,
            Fact<Volume> volumePerYear,
            Fact<Double> hoursPerDay,
            Fact<List<Double>> months,
            Fact<Ratio> load) {}

    /** Appliances that fire together. */
    public record Occasion(Fact<String> name, Fact<List<String>> firing) {}

    /** Hot water: storage, on-demand, mixing valve, draws. */
    public record HotWater(
            Fact<Arrangement> arrangement,
            Fact<Temperature> useTemp,
            Fact<Temperature> mixingValve,
            Fact<Temperature> mixingValveApproach,
            Fact<Temperature> comfortTemp,
            Fact<Volume> dailyVolume,
            Optional<Storage> storage,
            Optional<OnDemand> onDemand,
            List<Draw> draws,
            Fact<List<Valve>> valves) {}

    /** The storage heater. */
    public record Storage(
            Fact<Volume> volume,
            Fact<Temperature> setTemp,
            Fact<HeatRate> heatPumpOutput,
            Fact<Double> cop,
            Fact<HeatRate> element,
            Fact<Boolean> elementOn,
            Fact<HeatLoss> standbyLoss,
            Fact<StorageRoom> room,
            Fact<List<Temperature>> roomTemp,
            Fact<Temperature> lockoutTemp,
            Fact<Temperature> heatPumpMaxTemp) {}

    /** The on-demand heater. */
    public record OnDemand(
            Fact<String> appliance,
            Fact<Temperature> setTemp,
            Fact<Ratio> efficiency,
            Fact<HeatRate> leastFire,
            Fact<Flow> activation,
            Fact<Temperature> maxInletTemp) {}

    /** Hot water drawn at one time of day. */
    public record Draw(
            Fact<String> name,
            Fact<LocalTime> start,
            Fact<TimeSpan> lasts,
            Fact<Flow> flow,
            Fact<Temperature> useTemp) {}

    /** A valve in the hot water piping. */
    public record Valve(Fact<String> what, Fact<String> after, Fact<String> around) {}
}
