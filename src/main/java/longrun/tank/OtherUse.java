package longrun.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.quantity.HeatRate;

/**
 * Any other use: gallons a year, or hours a day in some months.
 *
 * @param key the appliance's id, or its place in the list
 * @param gallonsPerDay in each month
 */
public record OtherUse(String key, Months gallonsPerDay) {

    /** Every other use, in the plan's order. */
    public static List<OtherUse> of(Plan plan, double btuPerGal) {
        List<OtherUse> out = new ArrayList<>();
        List<Use.Other> entries = plan.use().map(Use::others).orElse(List.of());
        for (int i = 0; i < entries.size(); i++) {
            Use.Other entry = entries.get(i);
            String at = "/use/others/" + i;
            String key = entry.appliance().findValue().orElse("other-" + (i + 1));
            out.add(new OtherUse(key, perDay(plan, entry, key, at, btuPerGal)));
        }
        return List.copyOf(out);
    }

    private static Months perDay(Plan plan, Use.Other entry, String key, String at, double btuPerGal) {
        Optional<List<Double>> months = entry.months().findValue();
        if (months.isPresent()
                && (months.get().isEmpty()
                        || months.get().stream().anyMatch(m -> m < 1 || m > 12 || m != Math.rint(m)))) {
            return Months.unknown(
                    key, "gal/day", List.of(new Missing(at + "/months", "months as numbers from 1 to 12")));
        }
        List<Double> in = months.orElse(List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0));
        if (entry.volumePerYear().isKnown()) {
            Figure year = Figure.entered(
                    "gallons a year", entry.volumePerYear(), v -> v.gallons(), "gal", at + "/volumePerYear", "");
            int days = 0;
            for (int m = 0; m < 12; m++) {
                days += in.contains((double) (m + 1)) ? Months.days(m) : 0;
            }
            return spread(key, in, year.number() / days, "gallons a year over the days of its months", List.of(year));
        }
        if (!entry.hoursPerDay().isKnown()) {
            return Months.unknown(
                    key, "gal/day", List.of(new Missing(at + "/volumePerYear", "gallons a year, or hours a day")));
        }
        Figure hours = Figure.entered("hours a day", entry.hoursPerDay(), h -> h, "h", at + "/hoursPerDay", "");
        Figure input = input(plan, key, at);
        Figure load = entry.load().isKnown()
                ? Figure.entered("share of full fire", entry.load(), r -> r.percent(), "%", at + "/load", "")
                : Figure.given("share of full fire", 100, "%", "none entered: full fire", Confidence.COMPUTED);
        Figure perDay = Figure.of(
                key,
                "gal/day",
                "hours x input x share / heating value",
                Confidence.COMPUTED,
                List.of(hours, input, load),
                v -> v[0] >= 0 && v[0] <= 24 ? v[0] * v[1] * v[2] / 100 / btuPerGal : Double.NaN);
        if (!perDay.isKnown()) {
            List<Missing> missing = input.isKnown()
                    ? List.of(new Missing(at + "/hoursPerDay", "hours a day from 0 to 24"))
                    : perDay.missing();
            return Months.unknown(key, "gal/day", missing);
        }
        return spread(key, in, perDay.number(), perDay.how(), perDay.from());
    }

    private static Months spread(String key, List<Double> months, double perDay, String how, List<Figure> from) {
        List<Double> values = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            values.add(months.contains((double) (m + 1)) ? perDay : 0.0);
        }
        return Months.known(key, values, "gal/day", how, Confidence.COMPUTED, from);
    }

    private static Figure input(Plan plan, String id, String at) {
        for (int i = 0; i < plan.appliances().size(); i++) {
            Appliance a = plan.appliances().get(i);
            if (a.id().equals(id)) {
                return Figure.entered(
                        "input of " + id,
                        a.input(),
                        HeatRate::btuh,
                        "Btu/h",
                        "/appliances/" + i + "/input",
                        "INPUT on the rating plate, propane line");
            }
        }
        return Figure.unknown("input", "Btu/h", List.of(new Missing(at + "/appliance", "which appliance burns it")));
    }

    /** The most it burns on a day of any month, as a mean over 24 h, Btu/h. */
    public Figure greatestMean(double btuPerGal) {
        if (!gallonsPerDay.isKnown()) {
            return Figure.unknown(key, "Btu/h", gallonsPerDay.missing());
        }
        double most = gallonsPerDay.values().stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
        return Figure.of(
                key,
                "Btu/h",
                "gallons a day x heating value / 24",
                Confidence.COMPUTED,
                gallonsPerDay.from(),
                v -> most * btuPerGal / 24);
    }
}
