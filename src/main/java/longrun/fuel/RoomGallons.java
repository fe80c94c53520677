package longrun.fuel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.hotwater.ColdWater;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.tank.DesignDay;
import longrun.tank.SpaceHeating;

/** Gallons a year that heating burns to make up for heat taken out of the house, on days colder than the balance point. */
final class RoomGallons {

    private static final String NAME = "gallons the room takes back";

    private RoomGallons() {}

    /**
     * Of a plan.
     *
     * @param taken heat on one day of each month, Btu
     */
    static Figure of(Plan plan, Months taken) {
        if (taken.isKnown() && taken.values().stream().allMatch(v -> v == 0)) {
            return Figure.given(NAME, 0, "gal", taken.how(), Confidence.COMPUTED);
        }
        List<SpaceHeating> heaters = SpaceHeating.of(plan);
        Optional<List<Double>> means = ColdWater.airMeans(plan);
        List<Missing> missing = new ArrayList<>(taken.missing());
        if (heaters.isEmpty()) {
            missing.add(new Missing("/use/heating", "what heats the house, its design load and efficiency"));
        }
        if (means.isEmpty()) {
            missing.add(new Missing("/site/monthlyMeanTemp", "mean air temperature of the twelve months"));
        }
        heaters.forEach(h -> missing.addAll(h.gasPerDegF().missing()));
        if (!missing.isEmpty()) {
            return Figure.unknown(NAME, "gal", missing);
        }
        AirYear air = new AirYear(means.orElseThrow());
        double loss = heaters.stream()
                .mapToDouble(h -> h.lossPerDegF().value().orElse(0))
                .sum();
        double btu = 0;
        for (SpaceHeating h : heaters) {
            double gasPerBtu = loss > 0 ? h.gasPerDegF().number() / loss : 0;
            for (int day = 0; day < 365; day++) {
                boolean heats = air.degF(day) < h.balanceF().number();
                btu += heats ? taken.get(Calendar.month(day)) * gasPerBtu : 0;
            }
        }
        double sum = btu;
        List<Figure> from = new ArrayList<>(taken.from());
        from.add(DesignDay.heatingValue(plan));
        return Figure.of(
                NAME,
                "gal",
                taken.how() + "; on days colder than the balance point, / efficiency / heating value",
                Confidence.COMPUTED,
                from,
                v -> sum / v[v.length - 1]);
    }
}
