package longrun.checked.working;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import longrun.checked.published.CaseInput;
import longrun.hotwater.Altitude;
import longrun.plan.Plan;
import longrun.pressuretest.TestReading;
import longrun.quantity.Elevation;
import longrun.quantity.Pressure;
import longrun.quantity.Temperature;
import longrun.rules.surroundings.AirWay;
import longrun.rules.surroundings.RoomAir;

/** Air: derating of burners with altitude, room volume for combustion, and test pressure at another temperature. */
final class AirComputations {

    private static final int HALVINGS = 60;
    private static final double LARGE_FT3 = 100_000;

    private AirComputations() {}

    static void addTo(Map<String, Computation> all) {
        all.put(
                "height-from-sea",
                given -> Answer.number(given.number("input") * Altitude.shareFromSea(height(given))));
        all.put(
                "height-above-2000",
                given -> Answer.number(given.number("input") * Altitude.shareAboveFree(height(given))));
        all.put("room-for-air", AirComputations::rooms);
        all.put("test-gauge", AirComputations::gauge);
    }

    private static Elevation height(CaseInput given) {
        return Elevation.ofFeet(given.number("feet"));
    }

    private static Answer gauge(CaseInput given) {
        return Answer.number(TestReading.expected(
                        Pressure.ofPsi(given.number("psi")),
                        Temperature.ofDegF(given.number("from")),
                        Temperature.ofDegF(given.number("to")))
                .psi());
    }

    /** The smallest room whose own air is enough for a burner of each input, by the rule that judges a plan; ft3. */
    private static Answer rooms(CaseInput given) {
        return Answer.numbers(given.numbers("inputs").stream()
                .map(input -> smallest(given, input))
                .toList());
    }

    private static double smallest(CaseInput given, double kBtuh) {
        double low = 0;
        double high = LARGE_FT3;
        if (!enough(given, kBtuh, high)) {
            return Double.NaN;
        }
        for (int i = 0; i < HALVINGS && high - low > 1e-3; i++) {
            double middle = (low + high) / 2;
            if (enough(given, kBtuh, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static boolean enough(CaseInput given, double kBtuh, double ft3) {
        Plan plan = PipeTree.read(
                given,
                "{\"format\":\"longrun-plan/1\",\"rooms\":[{\"id\":\"r\",\"volume\":\"" + decimal(ft3)
                        + " ft3\",\"infiltration\":\"" + given.text("changes")
                        + " ach\",\"openings\":[]}],\"appliances\":[{\"id\":\"a\",\"room\":\"r\",\"input\":\""
                        + decimal(kBtuh)
                        + " kBtu/h\",\"vent\":\"" + given.text("vent") + "\"}]}");
        // the first takes whichever of the code's two methods requires less, the second the known air change alone
        int way = given.find("method").filter("air-change"::equals).isPresent() ? 1 : 0;
        List<AirWay> ways = RoomAir.waysOf(plan, 0);
        return ways.size() > way && ways.get(way).outcome() == AirWay.Outcome.ENOUGH;
    }

    private static String decimal(double value) {
        return BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).toPlainString();
    }
}
