package longrun.tank;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.Use;
import longrun.quantity.Temperature;

/**
 * Space heating by one appliance: loss for each degF from the design load, the balance point and the efficiency. Degree days
 * are counted to the balance point, with no further correction: a lowered base and a correction factor would count the gains
 * twice.
 *
 * @param gasPerDegF Btu/h of gas for each degF the air is under the balance point
 * @param balanceF the balance point
 * @param lossPerDegF heat the house loses through this appliance's share of it, Btu/h for each degF
 * @param gainsBtuh what people, lamps and sun give where the balance point lies under the indoor air
 * @param index its place in the list
 */
public record SpaceHeating(Figure gasPerDegF, Figure balanceF, Figure lossPerDegF, Figure gainsBtuh, int index) {

    /** Indoor air where none is entered, degF (common practice). */
    public static final double INDOOR_F = 68;

    private static final double BASE_F = 65;

    /** Every heating entry, in the plan's order. */
    public static List<SpaceHeating> of(Plan plan) {
        List<SpaceHeating> out = new ArrayList<>();
        List<Use.Heating> entries = plan.use().map(Use::heating).orElse(List.of());
        for (int i = 0; i < entries.size(); i++) {
            out.add(of(entries.get(i), i, plan));
        }
        return List.copyOf(out);
    }

    private static SpaceHeating of(Use.Heating entry, int index, Plan plan) {
        String at = "/use/heating/" + index;
        Figure load = Figure.entered(
                "design load",
                entry.designLoad(),
                h -> h.btuh(),
                "Btu/h",
                at + "/designLoad",
                "heat the house loses on the design day");
        Figure efficiency = Figure.entered(
                "efficiency",
                entry.efficiency(),
                r -> r.percent(),
                "%",
                at + "/efficiency",
                "efficiency of the heater, from its label");
        Figure design = design(plan);
        Fact<Temperature> indoorEntry = plan.use().map(Use::indoorTemp).orElse(Fact.unknown());
        Figure indoor = indoorEntry.isKnown()
                ? Figure.entered("indoor air", indoorEntry, Temperature::degF, "degF", "/use/indoorTemp", "")
                : Figure.given("indoor air", INDOOR_F, "degF", "none entered: common practice", Confidence.MEMORY);
        Figure balance = entry.balanceTemp().isKnown()
                ? Figure.entered(
                        "balance point", entry.balanceTemp(), Temperature::degF, "degF", at + "/balanceTemp", "")
                : Figure.given(
                        "balance point",
                        BASE_F,
                        "degF",
                        "none entered: the base of published degree days",
                        Confidence.MEMORY);
        Figure gas = Figure.of(
                "gas for each degF",
                "Btu/(h.degF)",
                "design load / (indoor - design) / efficiency (degree-day method)",
                Confidence.MEMORY,
                List.of(load, indoor, design, efficiency),
                v -> v[1] > v[2] && v[3] > 0 ? v[0] / (v[1] - v[2]) / (v[3] / 100) : Double.NaN);
        Figure loss = Figure.of(
                "loss for each degF",
                "Btu/(h.degF)",
                "design load / (indoor - design)",
                Confidence.MEMORY,
                List.of(load, indoor, design),
                v -> v[1] > v[2] ? v[0] / (v[1] - v[2]) : Double.NaN);
        Figure gains = Figure.of(
                "gains of the house",
                "Btu/h",
                "loss for each degF x (indoor - balance point)",
                Confidence.MEMORY,
                List.of(loss, indoor, balance),
                v -> v[0] * Math.max(0, v[1] - v[2]));
        return new SpaceHeating(pointed(gas, at), balance, loss, gains, index);
    }

    /** A figure outside its formula names the design temperature, the entry that is most often slipped. */
    private static Figure pointed(Figure figure, String at) {
        boolean nowhere = figure.missing().stream().anyMatch(m -> m.field().isEmpty());
        return nowhere
                ? Figure.unknown(
                        figure.name(),
                        figure.unit(),
                        List.of(new Missing(
                                at + "/efficiency",
                                "an efficiency above 0 % and a winter design temperature below the indoor air")))
                : figure;
    }

    /** Gas for a number of degree days to the balance point, Btu. */
    public Figure gasBtu(Figure degreeDays, String name) {
        return Figure.of(
                name,
                "Btu",
                "24 x gas for each degF x degree days",
                Confidence.COMPUTED,
                List.of(gasPerDegF, degreeDays),
                v -> 24 * v[0] * v[1]);
    }

    /** Mean gas on the design day, Btu/h. */
    public Figure designDay(Plan plan) {
        return Figure.of(
                "heating on the design day",
                "Btu/h",
                "gas for each degF x (balance point - design temperature): the gains the balance point stands for are"
                        + " taken off",
                Confidence.COMPUTED,
                List.of(gasPerDegF, balanceF, design(plan)),
                v -> v[0] * Math.max(0, v[1] - v[2]));
    }

    static Figure design(Plan plan) {
        return Figure.entered(
                "winter design temperature",
                plan.site().map(Site::winterDesignTemp).orElse(Fact.unknown()),
                Temperature::degF,
                "degF",
                "/site/winterDesignTemp",
                "winter design temperature of the place");
    }
}
