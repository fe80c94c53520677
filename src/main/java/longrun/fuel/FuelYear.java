package longrun.fuel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import longrun.hotwater.ColdWater;
import longrun.hotwater.HotWaterStudy;
import longrun.hotwater.HotWaterUse;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.Use;
import longrun.tank.DesignDay;
import longrun.tank.SpaceHeating;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;

/** Works out the year's fuel, deliveries and dates. Never throws on a plan that can be read; counts days from the gauge's date. */
public final class FuelYear {

    /** Pounds of carbon dioxide from a gallon (US energy statistics, 2016 release). */
    static final double CO2_LB_PER_GAL = 12.70;

    private static final int SPELL_DAYS = 7;

    private final Plan plan;
    private final TankReport tank;
    private final Figure heatingValue;
    private final Optional<List<Double>> means;
    private final Optional<AirYear> air;
    private final YearUse use;
    private final FuelSide side;
    private final double[] days;
    private final TankLevel level;
    private final OtherYear other;

    private FuelYear(Plan plan, TankReport tank, Optional<HotWaterUse> hotWater, OtherYear other) {
        this.plan = plan;
        this.tank = tank;
        this.other = other;
        this.heatingValue = DesignDay.heatingValue(plan);
        this.means = ColdWater.airMeans(plan);
        this.air = means.map(AirYear::new);
        this.use = other.scaled(YearUse.of(plan, heatingValue.number(), air, hotWater));
        this.side = new FuelSide(plan, tank, heatingValue, air, use, hotWater);
        this.days = use.days();
        this.level = new TankLevel(plan, tank, air, use.total(), days);
    }

    /** The year of a plan. */
    public static FuelReport of(Plan plan) {
        return of(plan, TankStudy.of(plan));
    }

    /** The same where the tank has been studied already. */
    public static FuelReport of(Plan plan, TankReport tank) {
        return of(plan, tank, hotWater(plan));
    }

    /** The same where hot water has been studied already. */
    public static FuelReport of(Plan plan, TankReport tank, Optional<HotWaterUse> hotWater) {
        return new FuelYear(plan, tank, hotWater, OtherYear.PLAIN).report();
    }

    /** The year with its uses multiplied by a factor; its air stays the plan's. */
    public static FuelReport of(Plan plan, TankReport tank, OtherYear other) {
        return new FuelYear(plan, tank, hotWater(plan), other).report();
    }

    /** Gallons of each day in a year that differs; empty where the year is not known. */
    public static Optional<YearGallons> gallons(Plan plan, OtherYear other) {
        Optional<List<Double>> means = ColdWater.airMeans(plan)
                .map(all -> all.stream().map(t -> t + other.warmerF()).toList());
        YearUse use = other.scaled(YearUse.of(
                plan, DesignDay.heatingValue(plan).number(), means, means.map(AirYear::new), hotWater(plan)));
        return use.total().isKnown()
                ? Optional.of(new YearGallons(use.total().values(), use.days()))
                : Optional.empty();
    }

    private static Optional<HotWaterUse> hotWater(Plan plan) {
        return HotWaterStudy.of(plan).map(HotWaterStudy::use);
    }

    private FuelReport report() {
        Figure annual = use.total().sum("gallons a year");
        Map<String, Figure> byUse = new LinkedHashMap<>();
        use.monthly().forEach((key, months) -> byUse.put(key, months.sum(key)));
        Figure price = Figure.entered(
                "price",
                plan.use().map(Use::pricePerGal).orElse(Fact.unknown()),
                p -> p,
                "a gal",
                "/use/pricePerGal",
                "price of a gallon");
        Figure carbon = Figure.given(
                "carbon dioxide", CO2_LB_PER_GAL, "lb/gal", "US energy statistics, 2016 release", Confidence.SECONDARY);
        TankLevel.Dates dates = level.dates();
        List<Double> daily = new ArrayList<>();
        if (use.total().isKnown()) {
            for (double d : days) {
                daily.add(d);
            }
        }
        return new FuelReport(
                degreeDays65(),
                annual,
                byUse,
                use.total(),
                use.monthly(),
                daily,
                new FuelReport.DaysPerFill(
                        lasts("a fill in the coldest month", true),
                        lasts("a fill in the warmest month", false),
                        lastsOnMean(annual)),
                Figure.of(
                        "deliveries a year",
                        "",
                        "gallons a year / usable",
                        Confidence.COMPUTED,
                        List.of(annual, tank.usableGal()),
                        v -> v[0] / v[1]),
                dates.refill(),
                dates.call(),
                side.arrangements(),
                dates.start().flatMap(start -> level.level(start, day -> days[day])),
                coldSpell(dates),
                side.generators(),
                Figure.of(
                        "cost a year",
                        "",
                        "gallons x price",
                        Confidence.COMPUTED,
                        List.of(annual, price),
                        v -> v[0] * v[1]),
                Figure.of(
                        "carbon dioxide a year",
                        "lb",
                        "gallons x lb/gal",
                        Confidence.SECONDARY,
                        List.of(annual, carbon),
                        v -> v[0] * v[1]),
                use.roomHeat().sum(YearUse.ROOM_HEAT),
                side.doubts(annual),
                new Tickets(plan, means, air, use, days).calibration(),
                side.notCounted(),
                side.assumptions(),
                dates.missing());
    }

    private Months degreeDays65() {
        if (means.isEmpty()) {
            return Months.unknown(
                    "degree days, base 65",
                    "degF-days",
                    List.of(new Missing("/site/monthlyMeanTemp", "mean air temperature of the twelve months")));
        }
        return Months.known(
                "degree days, base 65",
                new DegreeDays(means.get(), DegreeDays.PUBLISHED_BASE_F, air.orElseThrow()).months(),
                "degF-days",
                "from the monthly means, Erbs and others 1983",
                Confidence.MEMORY,
                List.of());
    }

    private Figure lasts(String name, boolean coldest) {
        if (means.isEmpty()) {
            return Figure.unknown(
                    name,
                    "days",
                    List.of(new Missing("/site/monthlyMeanTemp", "mean air temperature of the twelve months")));
        }
        int month = 0;
        for (int m = 1; m < 12; m++) {
            boolean colder = means.get().get(m) < means.get().get(month);
            boolean warmer = means.get().get(m) > means.get().get(month);
            month = (coldest ? colder : warmer) ? m : month;
        }
        int chosen = month;
        if (!use.total().isKnown()) {
            return Figure.unknown(name, "days", use.total().missing());
        }
        Figure perDay = Figure.of(
                "gallons a day",
                "gal",
                "month " + (month + 1) + " / its days",
                Confidence.COMPUTED,
                use.total().from(),
                v -> use.total().get(chosen) / Months.days(chosen));
        return Figure.of(
                name,
                "days",
                "usable / gallons a day",
                Confidence.COMPUTED,
                List.of(tank.usableGal(), perDay),
                v -> v[0] / v[1]);
    }

    private Figure lastsOnMean(Figure annual) {
        return Figure.of(
                "a fill on the year's mean",
                "days",
                "usable / gallons a day",
                Confidence.COMPUTED,
                List.of(tank.usableGal(), annual),
                v -> v[0] / (v[1] / 365));
    }

    private Optional<FuelReport.ColdSpell> coldSpell(TankLevel.Dates dates) {
        Figure design = Figure.entered(
                "winter design temperature",
                plan.site().map(Site::winterDesignTemp).orElse(Fact.unknown()),
                t -> t.degF(),
                "degF",
                "/site/winterDesignTemp",
                "winter design temperature of the place");
        if (!use.total().isKnown() || air.isEmpty() || !design.isKnown()) {
            return Optional.empty();
        }
        double heating = 0;
        for (SpaceHeating h : SpaceHeating.of(plan)) {
            heating += other.factor(YearUse.HEATING)
                    * 24
                    * h.gasPerDegF().number()
                    * Math.max(0, h.balanceF().number() - design.number())
                    / heatingValue.number();
        }
        double[] heatingDays = use.daily().getOrDefault(YearUse.HEATING, new double[365]);
        int middle = air.get().coldest();
        int month = Calendar.month(middle);
        double spellHeating = heating + use.roomHeat().get(month) / Months.days(month);
        Figure perDay = Figure.of(
                "gallons on a day at the design temperature",
                "gal",
                "heating at the design temperature and the other uses of the coldest day",
                Confidence.COMPUTED,
                List.of(design, heatingValue),
                v -> days[middle] - heatingDays[middle] + spellHeating);
        IntToDoubleFunction spell = d -> {
            int away = Math.abs(d - middle);
            return Math.min(away, 365 - away) <= SPELL_DAYS / 2 ? days[d] - heatingDays[d] + spellHeating : days[d];
        };
        return Optional.of(new FuelReport.ColdSpell(
                SPELL_DAYS,
                perDay,
                Figure.of(
                        "a fill at the design temperature",
                        "days",
                        "usable / gallons a day",
                        Confidence.COMPUTED,
                        List.of(tank.usableGal(), perDay),
                        v -> v[0] / v[1]),
                Figure.of(
                        "days from now at the design temperature",
                        "days",
                        "(now - refill gauge) / gallons a day",
                        Confidence.COMPUTED,
                        List.of(tank.nowGal(), tank.refillGal(), perDay),
                        v -> Math.max(0, v[0] - v[1]) / v[2]),
                dates.start().flatMap(start -> level.level(start, spell))));
    }
}
