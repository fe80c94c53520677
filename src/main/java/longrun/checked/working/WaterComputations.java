package longrun.checked.working;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longrun.checked.published.CaseInput;
import longrun.hotwater.ColdWater;
import longrun.hotwater.WaterHeat;
import longrun.quantity.HeatRate;

/** Water: temperature of the mains through the year, and the heat to warm a flow. */
final class WaterComputations {

    private WaterComputations() {}

    static void addTo(Map<String, Computation> all) {
        all.put("mains", WaterComputations::mains);
        all.put(
                "water-heat-watts",
                given -> Answer.number(1000
                        * HeatRate.ofBtuh(WaterHeat.btu(
                                        60 * given.number("gal-per-min"),
                                        given.number("from"),
                                        given.number("from") + given.number("rise")))
                                .kilowatts()));
    }

    /** Temperature of the mains on day 30 m - 15 of each month m, degrees F. */
    private static Answer mains(CaseInput given) {
        List<Double> months = given.numbers("months");
        double swing = Collections.max(months) - Collections.min(months);
        return Answer.numbers(IntStream.rangeClosed(1, 12)
                .mapToObj(m -> ColdWater.mains(30 * m - 15, given.number("mean"), swing, false))
                .toList());
    }
}
