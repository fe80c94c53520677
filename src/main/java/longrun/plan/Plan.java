package longrun.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.plan.choice.Material;
import longrun.plan.choice.ReadingKind;
import longrun.plan.choice.Says;
import longrun.quantity.Pressure;
import longrun.quantity.Ratio;
import longrun.quantity.Temperature;
import longrun.quantity.Volume;

/**
 * Everything a person has entered about one house. Lists keep the order they were entered in.
 *
 * @param availableSizes by material, the sizes the person can get
 * @param useMemoryTables whether tables held from memory throughout (CSST at 5 psi) are turned on
 * @param prices by "material size", money a foot
 */
public record Plan(
        String format,
        Fact<String> name,
        Optional<Code> code,
        Optional<Site> site,
        Fact<FittingAllowance> fittingAllowance,
        Map<Material, List<String>> availableSizes,
        Fact<Boolean> useMemoryTables,
        Map<String, Double> prices,
        Optional<Diversity> diversity,
        List<TubingTable> tubingTables,
        List<Regulator> regulators,
        List<Section> sections,
        List<Room> rooms,
        List<Appliance> appliances,
        List<Tank> tank,
        List<Tank> tanks,
        Optional<Use> use,
        List<Delivery> deliveries,
        List<Reading> readings,
        List<HoldPoint> holdPoints,
        List<Answer> answers) {

    /** The format this program reads and writes. */
    public static final String FORMAT = "longrun-plan/1";

    /** Every tank, whichever of the two entries holds it. */
    public List<Tank> allTanks() {
        return tank.isEmpty() ? tanks : tank;
    }

    /** A share of the connected load, with the reason that is printed. */
    public record Diversity(Fact<Ratio> share, Fact<String> reason) {}

    /** A maker's CSST table the person has loaded. */
    public record TubingTable(
            Fact<String> name, Fact<Material> material, Fact<Pressure> inlet, Fact<Pressure> drop, Fact<String> csv) {}

    /** A delivery ticket. */
    public record Delivery(Fact<LocalDate> date, Fact<Volume> volume) {}

    /**
     * A pressure read off a gauge.
     *
     * @param minutes since a test began, or how long a check held
     * @param temp of the gas in the pipe, as a thermometer on it shows; for a test
     */
    public record Reading(
            Fact<String> at,
            Fact<ReadingKind> what,
            Fact<Pressure> pressure,
            Fact<Double> minutes,
            Fact<Temperature> temp,
            Fact<LocalDate> date) {}

    /**
     * A point at which work stops until someone has looked.
     *
     * @param point its public name, such as {@code gas-type}
     * @param measured what was found or measured, in words
     * @param reason why it was marked done although a must-fix finding was open at this point or an earlier one
     */
    public record HoldPoint(
            Fact<String> point,
            Fact<Boolean> done,
            Fact<String> who,
            Fact<LocalDate> date,
            Fact<String> measured,
            Fact<String> reason) {}

    /** What whoever decides has said of a finding. */
    public record Answer(Fact<String> rule, Fact<String> at, Fact<Says> says, Fact<String> who, Fact<LocalDate> date) {}
}
