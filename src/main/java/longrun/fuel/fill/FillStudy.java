package longrun.fuel.fill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longrun.fuel.FuelReport;
import longrun.fuel.FuelYear;
import longrun.fuel.OtherYear;
import longrun.hotwater.ColdWater;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.tank.TankReport;

/** Works out how long a fill lasts from a plan and its review. Never throws on a plan that can be read. */
public final class FillStudy {

    private FillStudy() {}

    /**
     * The study of a plan.
     *
     * @param tank the review's
     * @param plain the review's year, by the entries alone
     */
    public static FillReport of(Plan plan, TankReport tank, FuelReport plain) {
        Optional<TicketFit> fit = plain.calibration()
                .flatMap(c -> TicketFit.of(
                        c, tank.waterGal().isKnown() ? tank.waterGal().number() : 0));
        double scale = fit.map(TicketFit::scale).orElse(1.0);
        FuelReport fuel = fit.isPresent() ? FuelYear.of(plan, tank, OtherYear.times(scale)) : plain;
        int coldest = month(plan, true);
        int warmest = month(plan, false);
        List<Doubt> doubts = Doubts.of(plan, tank, fit);
        Corners corners = new Corners(plan, tank, scale, coldest, warmest);
        boolean burns = fuel.annualGal().isKnown() && fuel.annualGal().number() > 0;
        Optional<FillRanges> ranges = burns ? corners.ranges(doubts) : Optional.empty();
        Figure coldestPerDay = perDay("gallons on a day of the coldest month", plan, fuel, coldest);
        return new FillReport(
                tank,
                fuel,
                FuelYear.gallons(plan, OtherYear.PLAIN),
                fit,
                ranges,
                ranges.map(r -> narrowing(corners, doubts, r)).orElse(List.of()),
                coldest,
                warmest,
                coldestPerDay,
                perDay("gallons on a day of the warmest month", plan, fuel, warmest),
                TankLadder.of(plan, coldestPerDay));
    }

    /** The coldest or the warmest month of the climate entered, January 0; January and July where there is none. */
    private static int month(Plan plan, boolean coldest) {
        List<Double> means = ColdWater.airMeans(plan).orElse(List.of());
        int chosen = means.isEmpty() && !coldest ? 6 : 0;
        for (int m = 1; m < means.size(); m++) {
            boolean further = coldest ? means.get(m) < means.get(chosen) : means.get(m) > means.get(chosen);
            chosen = further ? m : chosen;
        }
        return chosen;
    }

    private static Figure perDay(String name, Plan plan, FuelReport fuel, int month) {
        if (!fuel.monthlyGal().isKnown()) {
            return Figure.unknown(name, "gal", fuel.monthlyGal().missing());
        }
        if (ColdWater.airMeans(plan).isEmpty()) {
            return Figure.unknown(
                    name,
                    "gal",
                    List.of(new Missing("/site/monthlyMeanTemp", "mean air temperature of the twelve months")));
        }
        return Figure.of(
                name,
                "gal",
                "gallons of the month / its days",
                Confidence.COMPUTED,
                fuel.monthlyGal().from(),
                v -> fuel.monthlyGal().get(month) / Months.days(month));
    }

    /** The days until the refill gauge, or where they are not known or have no end those of a fill in the coldest month. */
    private static Range asked(FillRanges r) {
        return r.days().filter(d -> !Double.isInfinite(d.high())).orElse(r.coldest());
    }

    private static List<Narrowing> narrowing(Corners corners, List<Doubt> doubts, FillRanges all) {
        List<Narrowing> out = new ArrayList<>();
        for (Doubt d : doubts) {
            List<Doubt> rest = doubts.stream().filter(o -> !o.equals(d)).toList();
            boolean days = all.days().filter(r -> !Double.isInfinite(r.high())).isPresent();
            corners.ranges(rest).ifPresent(then -> {
                Range left = days ? then.days().orElseThrow() : then.coldest();
                out.add(new Narrowing(d, saved(asked(all).width(), left.width()), left));
            });
        }
        out.sort(Comparator.comparingDouble(Narrowing::saved).reversed());
        return out;
    }

    private static double saved(double before, double after) {
        return Double.isInfinite(before) ? Double.isInfinite(after) ? 0 : before : Math.max(0, before - after);
    }
}
