package longrun.checked.working;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longrun.checked.published.CaseInput;
import longrun.fuel.Calibration;
import longrun.fuel.Calibration.Ticket;
import longrun.fuel.DegreeDays;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.plan.Plan;
import longrun.tank.SpaceHeating;

/** The year: degree days, fuel for heating, degree days for each gallon from delivery tickets. */
final class YearComputations {

    private static final LocalDate FIRST_FILL = LocalDate.of(2026, 12, 1);
    private static final int DAYS = 60;

    private YearComputations() {}

    static void addTo(Map<String, Computation> all) {
        all.put("day-degree-days", YearComputations::days);
        all.put(
                "month-degree-days",
                given -> Answer.numbers(new DegreeDays(given.numbers("months"), given.number("base")).months()));
        all.put(
                "year-degree-days",
                given -> Answer.number(new DegreeDays(given.numbers("months"), given.number("base")).year()));
        all.put("heating-year", YearComputations::heating);
        all.put("degree-days-a-gallon", YearComputations::tickets);
    }

    private static Answer days(CaseInput given) {
        List<Double> highs = given.numbers("high");
        List<Double> lows = given.numbers("low");
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < highs.size(); i++) {
            out.add(DegreeDays.ofDay(highs.get(i), lows.get(i), DegreeDays.PUBLISHED_BASE_F));
        }
        return Answer.numbers(out);
    }

    /** Million Btu a year: the heat the house needs, and the fuel burnt for it. */
    private static Answer heating(CaseInput given) {
        Plan plan = PipeTree.read(
                given,
                "{\"format\":\"longrun-plan/1\",\"site\":{\"winterDesignTemp\":\"" + given.text("outdoors")
                        + " degF\"},\"use\":{\"indoorTemp\":\"" + given.text("indoors")
                        + " degF\",\"heating\":[{\"designLoad\":\"" + given.text("btuh") + " Btu/h\",\"efficiency\":\""
                        + given.text("efficiency") + " %\"}]}}");
        SpaceHeating heating = SpaceHeating.of(plan).get(0);
        double degreeDays = given.number("degree-days");
        double fuel = heating.gasBtu(
                        Figure.given("degree days", degreeDays, "degF-days", "as given", Confidence.PRINT), "heating")
                .number();
        return Answer.numbers(List.of(24 * degreeDays * heating.lossPerDegF().number() / 1e6, fuel / 1e6));
    }

    /** K factor of each pair of fills, degree days for each gallon. */
    private static Answer tickets(CaseInput given) {
        List<Double> degreeDays = given.numbers("degree-days");
        List<Double> gallons = given.numbers("gallons");
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < gallons.size(); i++) {
            double between = degreeDays.get(i);
            List<Ticket> fills =
                    List.of(new Ticket(FIRST_FILL, 100), new Ticket(FIRST_FILL.plusDays(DAYS), gallons.get(i)));
            out.add(Calibration.of(fills, (from, to) -> between, (from, to) -> Double.NaN)
                    .kFactor()
                    .orElse(Double.NaN));
        }
        return Answer.numbers(out);
    }
}
