package longrun.fuel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.Tank;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;

/** The tank's level from the gauge's date on: the day the refill gauge is reached, the day to call, the spells without truck. */
public final class TankLevel {

    private final Plan plan;
    private final TankReport tank;
    private final Optional<AirYear> air;
    private final Months total;
    private final double[] days;

    /**
     * The level of a plan's tank.
     *
     * @param total gallons of each month
     * @param days gallons of each day of the year, January first
     */
    TankLevel(Plan plan, TankReport tank, Optional<AirYear> air, Months total, double[] days) {
        this.plan = plan;
        this.tank = tank;
        this.air = air;
        this.total = total;
        this.days = days;
    }

    /** The days a level passes, and what is lacking to tell them. */
    record Dates(
            Optional<LocalDate> start, Optional<LocalDate> refill, Optional<LocalDate> call, List<Missing> missing) {}

    /** The days the level passes from the gauge's date. */
    Dates dates() {
        List<Missing> missing = new ArrayList<>();
        Optional<LocalDate> start = gaugeDate(plan);
        if (start.isEmpty()) {
            missing.addAll(undated());
        }
        missing.addAll(total.missing());
        missing.addAll(tank.nowGal().missing());
        missing.addAll(tank.refillGal().missing());
        if (!missing.isEmpty()) {
            return new Dates(Optional.empty(), Optional.empty(), Optional.empty(), missing);
        }
        Optional<LocalDate> refill = LevelYear.refillDay(
                start.get(), tank.nowGal().number(), tank.refillGal().number(), d -> days[d]);
        Optional<Double> lead = plan.site().flatMap(s -> s.leadDays().findValue());
        if (lead.isEmpty()) {
            missing.add(new Missing("/site/leadDays", "days from calling the supplier to the truck"));
        }
        missing.addAll(openSpells());
        Optional<LocalDate> call = refill.flatMap(r -> lead.map(l -> r.minusDays((long) Math.ceil(l))));
        return new Dates(start, refill, call, missing);
    }

    /** The day the gauges were read, of several tanks the earliest; empty where one of them has no date. */
    public static Optional<LocalDate> gaugeDate(Plan plan) {
        return plan.allTanks().stream().allMatch(t -> t.gaugeDate().isKnown())
                ? plan.allTanks().stream()
                        .flatMap(t -> t.gaugeDate().findValue().stream())
                        .min(Comparator.naturalOrder())
                : Optional.empty();
    }

    private List<Missing> undated() {
        List<Tank> tanks = plan.allTanks();
        if (tanks.size() < 2) {
            return List.of(new Missing("/tank/gaugeDate", "the date the gauge was read"));
        }
        List<Missing> out = new ArrayList<>();
        String list = plan.tank().isEmpty() ? "/tanks/" : "/tank/";
        for (int i = 0; i < tanks.size(); i++) {
            if (!tanks.get(i).gaugeDate().isKnown()) {
                out.add(new Missing(list + i + "/gaugeDate", "the date the gauge of tank " + (i + 1) + " was read"));
            }
        }
        return out;
    }

    /** The level through a year from a date; empty where the tank is not known. */
    Optional<LevelYear> level(LocalDate start, IntToDoubleFunction gallons) {
        Optional<DoubleUnaryOperator> fillTo = TankStudy.fillTo(plan);
        if (fillTo.isEmpty() || !tank.nowGal().isKnown() || !tank.refillGal().isKnown()) {
            return Optional.empty();
        }
        double[] use365 = new double[365];
        for (int d = 0; d < 365; d++) {
            use365[d] = gallons.applyAsDouble(d);
        }
        // Where no climate is entered the usual 80 % stands for the limit by weight.
        IntToDoubleFunction airOf = d -> air.map(a -> a.degF(d)).orElse(60.0);
        return Optional.of(LevelYear.run(
                start,
                tank.nowGal().number(),
                tank.refillGal().number(),
                fillTo.get(),
                d -> use365[d],
                airOf,
                spells()));
    }

    /** Spells without truck that lack a day: they are not in the level. */
    private List<Missing> openSpells() {
        List<Missing> out = new ArrayList<>();
        List<Site.Unreachable> all = plan.site().map(Site::unreachable).orElse(List.of());
        for (int i = 0; i < all.size(); i++) {
            if (!all.get(i).from().isKnown() || !all.get(i).to().isKnown()) {
                out.add(new Missing("/site/unreachable/" + i, "first and last day on which the truck cannot come"));
            }
        }
        return out;
    }

    private List<LevelYear.Spell> spells() {
        List<LevelYear.Spell> out = new ArrayList<>();
        for (Site.Unreachable u : plan.site().map(Site::unreachable).orElse(List.of())) {
            if (u.from().isKnown() && u.to().isKnown()) {
                out.add(new LevelYear.Spell(
                        u.from().findValue().orElseThrow(), u.to().findValue().orElseThrow()));
            }
        }
        return out;
    }
}
