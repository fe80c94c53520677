package longrun.hotwater;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import longrun.quantity.Ratio;
import longrun.quantity.Temperature;

/**
 * What hot water a day asks for, and the gas it takes without a storage heater.
 *
 * @param cold water of each month, degF
 * @param daily gallons a day at the fixtures, mixed to the use temperature
 * @param useTemp temperature it is used at, degF
 * @param heat into the water on one day of each month, Btu
 * @param efficiency of the on-demand heater, percent
 */
public record DailyNeed(Months cold, Figure daily, Figure useTemp, Months heat, Figure efficiency) {

    static final String AT = "/use/hotWater";
    static final String UNIT = "Btu/day";

    /** Of a plan that has a hot water entry. */
    public static DailyNeed of(Plan plan, Use.HotWater entry) {
        Months cold = ColdWater.of(plan);
        Figure daily = dailyVolume(plan, entry);
        Figure useTemp = Figure.entered(
                "use temperature",
                entry.useTemp(),
                Temperature::degF,
                "degF",
                AT + "/useTemp",
                "temperature hot water is used at");
        Fact<Ratio> share = entry.onDemand().map(Use.OnDemand::efficiency).orElse(Fact.unknown());
        Figure efficiency = Figure.entered(
                "efficiency of the on-demand heater",
                share,
                r -> r.percent(),
                "%",
                AT + "/onDemand/efficiency",
                "efficiency of the on-demand heater, from its label");
        return new DailyNeed(cold, daily, useTemp, heat(cold, daily, useTemp), efficiency);
    }

    /** The arrangement the house has, where it can be told. */
    public static Optional<Arrangement> chosen(Use.HotWater entry) {
        if (entry.arrangement().isKnown()) {
            return entry.arrangement().findValue();
        }
        if (entry.storage().isPresent() == entry.onDemand().isPresent()) {
            return Optional.empty();
        }
        return Optional.of(entry.storage().isPresent() ? Arrangement.STORAGE_ONLY : Arrangement.ON_DEMAND_ONLY);
    }

    /** What is lacking where the arrangement cannot be told. */
    static List<Missing> arrangementMissing() {
        return List.of(new Missing(
                AT + "/arrangement",
                "where hot water comes from: a storage heater, an on-demand heater, or both in series"));
    }

    /**
     * Gas on one day of each month with whatever storage gives out of use, as if every draw had its use temperature: what the
     * tank must be able to feed.
     */
    public static Months withoutStorageBtu(Plan plan, Use.HotWater entry) {
        Optional<Arrangement> chosen = chosen(entry);
        if (chosen.isEmpty()) {
            return Months.unknown("hot water", UNIT, arrangementMissing());
        }
        return chosen.get() == Arrangement.STORAGE_ONLY
                ? electric(entry)
                : of(plan, entry).onDemandGas("heat into the water / efficiency");
    }

    /** Gas where the on-demand heater alone makes all of it. */
    Months onDemandGas(String how) {
        List<Missing> missing = new ArrayList<>(heat.missing());
        missing.addAll(efficiencyMissing());
        if (!missing.isEmpty()) {
            return Months.unknown("on-demand alone", UNIT, missing);
        }
        List<Figure> from = new ArrayList<>(heat.from());
        from.add(efficiency);
        return Months.known(
                "on-demand alone",
                heat.values().stream().map(b -> b / (efficiency.number() / 100)).toList(),
                UNIT,
                how,
                Confidence.COMPUTED,
                from);
    }

    /** What is lacking to know the efficiency. */
    List<Missing> efficiencyMissing() {
        return efficiency.isKnown() && efficiency.number() <= 0
                ? List.of(new Missing(AT + "/onDemand/efficiency", "an efficiency above 0 %"))
                : efficiency.missing();
    }

    /** Gas of a storage heater alone: none, where it is electric. */
    static Months electric(Use.HotWater entry) {
        boolean electric = entry.storage()
                .map(s -> s.heatPumpOutput().isKnown() || s.element().isKnown())
                .orElse(false);
        if (!electric) {
            return Months.unknown(
                    "storage alone",
                    UNIT,
                    List.of(new Missing(AT + "/storage", "the storage heater's heat pump output or element")));
        }
        return Months.known(
                "storage alone",
                Collections.nCopies(12, 0.0),
                UNIT,
                "heat pump and element burn no propane",
                Confidence.COMPUTED,
                List.of());
    }

    /** As entered; else the draws' sum; else by the people in the house. */
    private static Figure dailyVolume(Plan plan, Use.HotWater entry) {
        if (!entry.dailyVolume().isKnown() && drawsTell(entry)) {
            double sum = entry.draws().stream()
                    .mapToDouble(d -> d.flow().findValue().orElseThrow().gpm()
                            * d.lasts().findValue().orElseThrow().minutes())
                    .sum();
            return Figure.given("hot water a day", sum, "gal", "sum of the draws entered", Confidence.COMPUTED);
        }
        Optional<Double> people = plan.site().flatMap(s -> s.people().findValue());
        if (entry.dailyVolume().isUnknown() && people.isPresent()) {
            return Figure.given(
                    "hot water a day",
                    byPeople(people.get()),
                    "gal",
                    "none entered; by the people in the house, -4.84 + 18.6 each, mixed water (FSEC-PF-464-15 eq. 14)",
                    Confidence.SECONDARY);
        }
        return Figure.entered(
                "hot water a day",
                entry.dailyVolume(),
                v -> v.gallons(),
                "gal",
                AT + "/dailyVolume",
                "gallons of hot water a day at the temperature of use, or the people in the house");
    }

    /** Mixed water people use, gal/day (FSEC-PF-464-15 eq. 14). */
    static double byPeople(double people) {
        return Math.max(0, -4.84 + 18.6 * people);
    }

    static boolean drawsTell(Use.HotWater entry) {
        return !entry.draws().isEmpty()
                && entry.draws().stream()
                        .allMatch(d -> d.flow().isKnown() && d.lasts().isKnown());
    }

    private static Months heat(Months cold, Figure daily, Figure useTemp) {
        List<Missing> missing = new ArrayList<>(cold.missing());
        missing.addAll(daily.missing());
        missing.addAll(useTemp.missing());
        if (!missing.isEmpty()) {
            return Months.unknown("heat into the water", UNIT, missing);
        }
        List<Double> values = cold.values().stream()
                .map(c -> Math.max(0, WaterHeat.btu(daily.number(), c, useTemp.number())))
                .toList();
        return Months.known(
                "heat into the water",
                values,
                UNIT,
                "gallons x k(T) / 60 x (use - cold)",
                Confidence.COMPUTED,
                List.of(daily, useTemp));
    }
}
