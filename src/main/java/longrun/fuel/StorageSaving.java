package longrun.fuel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import longrun.hotwater.ArrangementYear;
import longrun.hotwater.HotWaterStudy;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Months;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import longrun.tank.DesignDay;

/**
 * What an arrangement uses in a year and what it saves against on-demand alone, before and after the gallons the room takes
 * back where the storage heater stands in a heated one.
 *
 * @param gal propane burnt for the water
 * @param kwh current drawn
 * @param cost of both
 * @param savedGal propane saved before the room's heat
 * @param savedMoney saved before the room's heat
 * @param savedCo2Lb carbon dioxide saved before the room's heat
 * @param roomGal propane the room takes back
 * @param savedGalAfter propane saved after it
 * @param savedMoneyAfter saved after it
 * @param savedCo2LbAfter carbon dioxide saved after it
 */
public record StorageSaving(
        Arrangement arrangement,
        Figure gal,
        Figure kwh,
        Figure cost,
        Figure savedGal,
        Figure savedMoney,
        Figure savedCo2Lb,
        Figure roomGal,
        Figure savedGalAfter,
        Figure savedMoneyAfter,
        Figure savedCo2LbAfter) {

    /** Pounds of carbon dioxide from a kilowatt-hour, mean of the United States' power plants: memory. */
    static final double CO2_LB_PER_KWH = 0.86;

    /** Every arrangement, in the order of the plan format. */
    public static List<StorageSaving> of(Plan plan, HotWaterStudy study) {
        Figure base = gallons(plan, study.year(Arrangement.ON_DEMAND_ONLY));
        List<StorageSaving> out = new ArrayList<>();
        for (Arrangement a : Arrangement.values()) {
            out.add(of(plan, study.year(a), base));
        }
        return List.copyOf(out);
    }

    /** Whether money is saved after the room's heat; empty where that is not known. */
    public Optional<Boolean> pays() {
        return savedMoneyAfter.isKnown() ? Optional.of(savedMoneyAfter.number() > 0) : Optional.empty();
    }

    private static StorageSaving of(Plan plan, ArrangementYear year, Figure base) {
        Figure gal = gallons(plan, year);
        Figure kwh = year.kwh();
        Figure room = RoomGallons.of(plan, year.roomBtu());
        Figure perGal = Figure.entered(
                "price of a gallon",
                plan.use().map(Use::pricePerGal).orElse(Fact.unknown()),
                p -> p,
                "a gal",
                "/use/pricePerGal",
                "price of a gallon");
        Figure perKwh = Figure.entered(
                "price of a kilowatt-hour",
                plan.use().map(Use::pricePerKwh).orElse(Fact.unknown()),
                p -> p,
                "a kWh",
                "/use/pricePerKwh",
                "price of a kilowatt-hour");
        boolean current = !kwh.isKnown() || kwh.number() > 0;
        Figure power = current
                ? Figure.of(
                        "price of the current",
                        "",
                        "kWh x price",
                        Confidence.COMPUTED,
                        List.of(kwh, perKwh),
                        v -> v[0] * v[1])
                : Figure.given("price of the current", 0, "", "no current drawn", Confidence.COMPUTED);
        Figure carbon = Figure.given(
                "carbon dioxide of a gallon",
                FuelYear.CO2_LB_PER_GAL,
                "lb/gal",
                "US energy statistics, 2016 release",
                Confidence.SECONDARY);
        Figure powerCarbon = Figure.given(
                "carbon dioxide of a kilowatt-hour",
                CO2_LB_PER_KWH,
                "lb/kWh",
                "mean of the United States' power plants; the local grid may be far from it",
                Confidence.MEMORY);
        Figure saved = minus("propane saved", "gal", base, gal);
        Figure after = minus("propane saved after the room's heat", "gal", saved, room);
        return new StorageSaving(
                year.arrangement(),
                gal,
                kwh,
                of(
                        "cost of hot water a year",
                        "",
                        "gal x price + current",
                        List.of(gal, perGal, power),
                        v -> v[0] * v[1] + v[2]),
                saved,
                of("money saved", "", "gal x price - current", List.of(saved, perGal, power), v -> v[0] * v[1] - v[2]),
                co2("carbon dioxide saved", saved, carbon, kwh, powerCarbon),
                room,
                after,
                of(
                        "money saved after the room's heat",
                        "",
                        "gal x price - current",
                        List.of(after, perGal, power),
                        v -> v[0] * v[1] - v[2]),
                co2("carbon dioxide saved after the room's heat", after, carbon, kwh, powerCarbon));
    }

    private static Figure of(
            String name, String unit, String how, List<Figure> from, ToDoubleFunction<double[]> formula) {
        return Figure.of(name, unit, how, Confidence.COMPUTED, from, formula);
    }

    private static Figure minus(String name, String unit, Figure a, Figure b) {
        return of(name, unit, a.name() + " - " + b.name(), List.of(a, b), v -> v[0] - v[1]);
    }

    private static Figure co2(String name, Figure gal, Figure perGal, Figure kwh, Figure perKwh) {
        return Figure.of(
                name,
                "lb",
                "gal x lb/gal - kWh x lb/kWh",
                Confidence.MEMORY,
                List.of(gal, perGal, kwh, perKwh),
                v -> v[0] * v[1] - v[2] * v[3]);
    }

    private static Figure gallons(Plan plan, ArrangementYear year) {
        Months btu = year.gasBtu();
        String name = "propane for hot water, " + year.arrangement().written();
        if (!btu.isKnown()) {
            return Figure.unknown(name, "gal", btu.missing());
        }
        double sum = 0;
        for (int m = 0; m < 12; m++) {
            sum += btu.get(m) * Months.days(m);
        }
        double all = sum;
        List<Figure> from =
                new ArrayList<>(btu.from().stream().filter(Figure::isKnown).toList());
        from.add(DesignDay.heatingValue(plan));
        return Figure.of(
                name, "gal", btu.how() + ", / heating value", Confidence.COMPUTED, from, v -> all / v[v.length - 1]);
    }
}
