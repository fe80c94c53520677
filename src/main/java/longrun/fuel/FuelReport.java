package longrun.fuel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.origin.Origin;
import longrun.plan.choice.Arrangement;

/**
 * Fuel through the year.
 *
 * @param degreeDays65 of each month, base 65 degF
 * @param byUse gallons a year: heating, hot-water, then appliances by id
 * @param dailyGal 365 days, January first; empty where a use is unknown
 * @param arrangements gallons a year for hot water, by arrangement
 * @param nextRefill the day the refill gauge is reached from the gauge's reading
 * @param callBy that less the lead days
 * @param level the tank's level through a year from the gauge's date
 * @param coldSpell the same with a run of days at the design temperature
 * @param roomHeatGal the part of heating that makes up for what the storage heater takes out of the heated house
 * @param notCounted appliances no use is entered for: they are in no sum, and the year is not known
 * @param assumptions what was taken where nothing was entered
 */
public record FuelReport(
        Months degreeDays65,
        Figure annualGal,
        Map<String, Figure> byUse,
        Months monthlyGal,
        Map<String, Months> monthlyByUse,
        List<Double> dailyGal,
        DaysPerFill daysPerFill,
        Figure deliveriesPerYear,
        Optional<LocalDate> nextRefill,
        Optional<LocalDate> callBy,
        Map<Arrangement, Figure> arrangements,
        Optional<LevelYear> level,
        Optional<ColdSpell> coldSpell,
        List<GeneratorHours> generators,
        Figure cost,
        Figure co2Lb,
        Figure roomHeatGal,
        List<Doubt> doubts,
        Optional<Calibration> calibration,
        List<String> notCounted,
        List<String> assumptions,
        List<Missing> dateMissing) {

    /** Days a fill lasts, from 80 % to the refill gauge. */
    public record DaysPerFill(Figure coldestMonth, Figure warmestMonth, Figure mean) {}

    /**
     * A run of days at the design temperature about the coldest of the year.
     *
     * @param galPerDay burnt on each of them
     * @param daysPerFill a fill would last were it to go on
     * @param daysFromNow until the refill gauge were it to begin at the gauge's date
     */
    public record ColdSpell(
            int days, Figure galPerDay, Figure daysPerFill, Figure daysFromNow, Optional<LevelYear> level) {}

    /**
     * Hours a generator runs at full load; at half load it burns about 0.6 of that (held from memory).
     *
     * @param fromRefill on what is left at the refill gauge
     */
    public record GeneratorHours(
            String appliance,
            Figure galPerHour,
            Figure galPerHourHalf,
            Figure fromFull,
            Figure fromNow,
            Figure fromRefill) {}

    /** A doubt that is shown beside a figure. */
    public record Doubt(String words, Figure figure) {}

    public FuelReport {
        byUse = Collections.unmodifiableMap(new LinkedHashMap<>(byUse));
        monthlyByUse = Collections.unmodifiableMap(new LinkedHashMap<>(monthlyByUse));
        arrangements = Collections.unmodifiableMap(new LinkedHashMap<>(arrangements));
        dailyGal = List.copyOf(dailyGal);
        generators = List.copyOf(generators);
        doubts = List.copyOf(doubts);
        notCounted = List.copyOf(notCounted);
        assumptions = List.copyOf(assumptions);
        dateMissing = List.copyOf(dateMissing);
    }

    /** Every entry that is lacking, once. */
    public List<Missing> missing() {
        Set<Missing> out = new LinkedHashSet<>(degreeDays65.missing());
        figures().forEach(f -> out.addAll(f.missing()));
        out.addAll(dateMissing);
        return List.copyOf(out);
    }

    /** The answer to "where from?" for every figure. */
    public List<Origin> origins() {
        List<Origin> out = new ArrayList<>(List.of(degreeDays65.origin(), monthlyGal.origin()));
        monthlyByUse.values().forEach(m -> out.add(m.origin()));
        figures().forEach(f -> out.add(f.origin()));
        arrangements.values().forEach(f -> out.add(f.origin()));
        return List.copyOf(out);
    }

    /** Without the arrangements the house does not have: what they lack is no open question. */
    private List<Figure> figures() {
        List<Figure> out = new ArrayList<>(List.of(annualGal));
        out.addAll(byUse.values());
        out.addAll(
                List.of(daysPerFill.coldestMonth(), daysPerFill.warmestMonth(), daysPerFill.mean(), deliveriesPerYear));
        out.add(cost);
        out.add(co2Lb);
        if (roomHeatGal.isKnown()) {
            out.add(roomHeatGal);
        }
        generators.forEach(g -> out.addAll(List.of(g.galPerHour(), g.fromFull(), g.fromNow(), g.fromRefill())));
        coldSpell.ifPresent(c -> out.addAll(List.of(c.galPerDay(), c.daysPerFill(), c.daysFromNow())));
        return out;
    }
}
