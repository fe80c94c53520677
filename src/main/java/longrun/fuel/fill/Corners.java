package longrun.fuel.fill;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import longrun.fuel.FuelYear;
import longrun.fuel.OtherYear;
import longrun.fuel.TankLevel;
import longrun.fuel.YearGallons;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.tank.TankReport;

/**
 * The figures of a fill with doubts taken to their ends. The more a use burns and the lower the gauge stands, the shorter
 * the time, whatever the rest; only the climate moves gallons within a month, so both its ends stand with either end of
 * the rest. The year as worked out is always within it.
 *
 * @param scale of all uses by the tickets, 1 without
 * @param coldest month, January 0
 */
record Corners(Plan plan, TankReport tank, double scale, int coldest, int warmest) {

    /** Where each figure lies; empty where the year or the tank is not known. */
    Optional<FillRanges> ranges(List<Doubt> doubts) {
        OtherYear cold = OtherYear.PLAIN;
        OtherYear warm = OtherYear.PLAIN;
        OtherYear more = OtherYear.times(scale);
        OtherYear less = OtherYear.times(scale);
        double gauge = 0;
        for (Doubt d : doubts) {
            gauge += d.gaugeGal();
            if (d.shorter().warmerF() == 0) {
                more = more.and(d.shorter());
                less = less.and(d.longer());
            } else {
                cold = cold.and(d.shorter());
                warm = warm.and(d.longer());
            }
        }
        Optional<FillRanges> out = corner(OtherYear.times(scale), 0);
        for (OtherYear climate : cold.equals(warm) ? List.of(cold) : List.of(cold, warm)) {
            for (Optional<FillRanges> end :
                    List.of(corner(more.and(climate), -gauge), corner(less.and(climate), gauge))) {
                out = out.flatMap(all -> end.map(all::with));
            }
        }
        return out;
    }

    /** The figures of one year, with the gauge so many gallons off. */
    private Optional<FillRanges> corner(OtherYear other, double gaugeGal) {
        Optional<YearGallons> year = FuelYear.gallons(plan, other);
        if (year.isEmpty() || !tank.usableGal().isKnown()) {
            return Optional.empty();
        }
        YearGallons y = year.get();
        double usable = Math.max(0, tank.usableGal().number() + gaugeGal);
        double gallons = y.year();
        return Optional.of(new FillRanges(
                days(y, gaugeGal),
                point(usable / perDay(y, coldest)),
                point(usable / perDay(y, warmest)),
                point(usable / (gallons / 365)),
                point(gallons / usable),
                point(gallons)));
    }

    private Optional<Range> days(YearGallons y, double gaugeGal) {
        Optional<LocalDate> start = TankLevel.gaugeDate(plan);
        if (start.isEmpty() || !tank.nowGal().isKnown() || !tank.refillGal().isKnown()) {
            return Optional.empty();
        }
        double most = tank.waterGal().number();
        double now = Math.max(0, Math.min(most, tank.nowGal().number() + gaugeGal));
        return Optional.of(point(y.refillDay(start.get(), now, tank.refillGal().number())
                .map(d -> (double) ChronoUnit.DAYS.between(start.get(), d))
                .orElse(Double.POSITIVE_INFINITY)));
    }

    private static double perDay(YearGallons y, int month) {
        return y.monthly().get(month) / Months.days(month);
    }

    private static Range point(double figure) {
        double end = Double.isNaN(figure) ? Double.POSITIVE_INFINITY : figure;
        return new Range(end, end);
    }
}
