package longrun.checked.working;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longrun.checked.published.Given;
import longrun.hotwater.ColdWater;
import longrun.hotwater.WaterHeat;
import longrun.quantity.HeatRate;

/** Water: the mains through the year, and the heat that warms it. */
final class WaterWork {

    private WaterWork() {}

    static void into(Map<String, Working> all) {
        all.put("mains", WaterWork::mains);
        all.put(
                "water-heat-watts",
                given -> Answer.number(1000
                        * HeatRate.ofBtuh(WaterHeat.btu(
                                        60 * given.number("gal-per-min"),
                                        given.number("from"),
                                        given.number("from") + given.number("rise")))
                                .kilowatts()));
    }

    /** The mains on day 30 m - 15 of each month m. */
    private static Answer mains(Given given) {
        List<Double> months = given.numbers("months");
        double swing = Collections.max(months) - Collections.min(months);
        return Answer.numbers(IntStream.rangeClosed(1, 12)
                .mapToObj(m -> ColdWater.mains(30 * m - 15, given.number("mean"), swing, false))
                .toList());
    }
}
