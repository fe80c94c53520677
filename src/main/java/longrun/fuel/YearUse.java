package longrun.fuel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longrun.hotwater.ColdWater;
import longrun.hotwater.HotWaterUse;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.tank.OtherUse;
import longrun.tank.SpaceHeating;
import longrun.tank.UnusedAppliances;

/**
 * Gallons of each use by day and by month, at one heating value.
 *
 * @param monthly by use: heating, hot-water, appliance ids; unknown where an entry is lacking
 * @param daily 365 days of each known use
 * @param total of all uses, unknown where one is
 * @param roomHeat gallons of each month's heating that make up for what the storage heater takes out of the house
 */
record YearUse(Map<String, Months> monthly, Map<String, double[]> daily, Months total, Months roomHeat) {

    static final String HEATING = "heating";
    static final String HOT_WATER = "hot-water";
    static final String ROOM_HEAT = "heating for what the storage heater takes from the house";
    private static final String UNIT = "gal";

    /**
     * The year of a plan.
     *
     * @param air the year's temperatures, where the climate is entered
     * @param hotWater gas for hot water, where the plan has any
     */
    static YearUse of(Plan plan, double btuPerGal, Optional<AirYear> air, Optional<HotWaterUse> hotWater) {
        return of(plan, btuPerGal, ColdWater.airMeans(plan), air, hotWater);
    }

    /** The same with other monthly means than the plan's. */
    static YearUse of(
            Plan plan,
            double btuPerGal,
            Optional<List<Double>> means,
            Optional<AirYear> air,
            Optional<HotWaterUse> hotWater) {
        Builder b = new Builder();
        List<SpaceHeating> heaters = SpaceHeating.of(plan);
        Months taken = hotWater.map(HotWaterUse::roomHeatBtu)
                .orElseGet(() -> Months.known(
                        ROOM_HEAT,
                        Collections.nCopies(12, 0.0),
                        "Btu/day",
                        "no storage heater",
                        Confidence.COMPUTED,
                        List.of()));
        double loss = heaters.stream()
                .mapToDouble(h -> h.lossPerDegF().value().orElse(0))
                .sum();
        for (SpaceHeating h : heaters) {
            heating(b, h, btuPerGal, means, air, taken, loss);
        }
        hotWater.ifPresent(h -> {
            Months btu = h.chosenBtu();
            b.add(HOT_WATER, perDay(btu, 1 / btuPerGal, "gas a day / heating value; " + btu.how()));
        });
        OtherUse.of(plan, btuPerGal)
                .forEach(o -> b.add(
                        o.key(), perDay(o.gallonsPerDay(), 1, o.gallonsPerDay().how())));
        return b.build(plan, !heaters.isEmpty());
    }

    /**
     * Heating by one appliance.
     *
     * @param taken heat the storage heater takes out of the house, Btu on a day of each month
     * @param loss of the whole house, Btu/h for each degF: the appliance makes up its share of what is taken
     */
    private static void heating(
            Builder b,
            SpaceHeating h,
            double btuPerGal,
            Optional<List<Double>> means,
            Optional<AirYear> air,
            Months taken,
            double loss) {
        List<Missing> missing = new ArrayList<>(h.gasPerDegF().missing());
        missing.addAll(taken.missing());
        if (means.isEmpty() || air.isEmpty()) {
            missing.add(new Missing("/site/monthlyMeanTemp", "mean air temperature of the twelve months"));
        }
        if (!missing.isEmpty()) {
            b.unknown(HEATING, missing);
            return;
        }
        DegreeDays days = new DegreeDays(means.orElseThrow(), h.balanceF().number(), air.orElseThrow());
        double galPerDegreeDay = 24 * h.gasPerDegF().number() / btuPerGal;
        double[] daily = new double[365];
        double galPerBtu = loss > 0 ? h.gasPerDegF().number() / loss / btuPerGal : 0;
        List<Double> months = new ArrayList<>();
        List<Double> room = new ArrayList<>();
        int day = 0;
        for (int m = 0; m < 12; m++) {
            double extra = 0;
            for (int d = 0; d < Months.days(m); d++) {
                boolean heats = air.get().degF(day) < h.balanceF().number();
                double now = heats ? taken.get(m) * galPerBtu : 0;
                extra += now;
                daily[day] = galPerDegreeDay * days.day(day) + now;
                day++;
            }
            room.add(extra);
            months.add(days.month(m) * galPerDegreeDay + extra);
        }
        b.roomHeat(Months.known(
                ROOM_HEAT,
                room,
                UNIT,
                taken.how() + ", on days colder than the balance point, / efficiency / heating value",
                Confidence.COMPUTED,
                taken.from()));
        List<Figure> from = new ArrayList<>(List.of(h.gasPerDegF(), h.balanceF()));
        boolean takes = room.stream().anyMatch(g -> g > 0);
        if (takes) {
            from.add(b.roomHeat.sum(ROOM_HEAT));
        }
        b.add(
                HEATING,
                new Part(
                        Months.known(
                                HEATING,
                                months,
                                UNIT,
                                "24 x gas for each degF x degree days to the balance point (Erbs and others 1983) /"
                                        + " heating value"
                                        + (takes ? ", and what the storage heater takes from the house" : ""),
                                Confidence.MEMORY,
                                from),
                        daily));
    }

    private static Part perDay(Months rate, double factor, String how) {
        if (!rate.isKnown()) {
            return new Part(Months.unknown(rate.name(), UNIT, rate.missing()), new double[0]);
        }
        double[] daily = new double[365];
        List<Double> months = new ArrayList<>();
        int day = 0;
        for (int m = 0; m < 12; m++) {
            double gallons = rate.get(m) * factor;
            months.add(gallons * Months.days(m));
            for (int d = 0; d < Months.days(m); d++) {
                daily[day++] = gallons;
            }
        }
        return new Part(
                Months.known(
                        rate.name(), months, UNIT, how, rate.confidence().orElse(Confidence.COMPUTED), rate.from()),
                daily);
    }

    /** Gallons of all uses on each day; only where the total is known. */
    double[] days() {
        double[] sum = new double[365];
        daily.values().forEach(use -> {
            for (int d = 0; d < 365; d++) {
                sum[d] += use[d];
            }
        });
        return sum;
    }

    private record Part(Months monthly, double[] daily) {}

    private static final class Builder {
        private final Map<String, Months> monthly = new LinkedHashMap<>();
        private final Map<String, double[]> daily = new LinkedHashMap<>();
        private Months roomHeat =
                Months.known(ROOM_HEAT, Collections.nCopies(12, 0.0), UNIT, "none", Confidence.COMPUTED, List.of());

        void roomHeat(Months part) {
            roomHeat = Months.known(
                    ROOM_HEAT,
                    added(roomHeat.values(), part.values()),
                    UNIT,
                    part.how(),
                    Confidence.COMPUTED,
                    part.from());
        }

        void unknown(String key, List<Missing> missing) {
            add(key, new Part(Months.unknown(key, UNIT, missing), new double[0]));
        }

        /** A key that stands twice is one use: its parts are summed, unknown where one is. */
        void add(String key, Part part) {
            Months before = monthly.get(key);
            Months now = part.monthly();
            if (before == null) {
                monthly.put(key, now);
                if (now.isKnown()) {
                    daily.put(key, part.daily());
                }
                return;
            }
            if (!before.isKnown() || !now.isKnown()) {
                Set<Missing> missing = new LinkedHashSet<>(before.missing());
                missing.addAll(now.missing());
                monthly.put(key, Months.unknown(key, UNIT, List.copyOf(missing)));
                daily.remove(key);
                return;
            }
            double[] sum = daily.getOrDefault(key, new double[365]).clone();
            for (int d = 0; d < 365; d++) {
                sum[d] += part.daily()[d];
            }
            List<Figure> from = new ArrayList<>(before.from());
            from.addAll(now.from());
            monthly.put(
                    key,
                    Months.known(
                            key,
                            added(before.values(), now.values()),
                            UNIT,
                            now.how(),
                            now.confidence().orElse(Confidence.COMPUTED),
                            from));
            daily.put(key, sum);
        }

        YearUse build(Plan plan, boolean heats) {
            Set<Missing> missing = new LinkedHashSet<>(UnusedAppliances.ofTheYear(plan));
            List<Double> sum = Collections.nCopies(12, 0.0);
            List<Figure> from = new ArrayList<>();
            for (Map.Entry<String, Months> e : monthly.entrySet()) {
                Months m = e.getValue();
                missing.addAll(m.missing());
                if (m.isKnown()) {
                    sum = added(sum, m.values());
                    from.add(m.sum(e.getKey()));
                }
            }
            if (monthly.isEmpty()) {
                missing.add(new Missing("/use", "what propane is used for: heating, hot water, the rest"));
            }
            Months total = missing.isEmpty()
                    ? Months.known("all uses", sum, UNIT, "sum of the uses", Confidence.COMPUTED, from)
                    : Months.unknown("all uses", UNIT, List.copyOf(missing));
            Months heating = monthly.get(HEATING);
            Months room = heats && heating != null && !heating.isKnown()
                    ? Months.unknown(ROOM_HEAT, UNIT, heating.missing())
                    : roomHeat;
            return new YearUse(Collections.unmodifiableMap(monthly), Collections.unmodifiableMap(daily), total, room);
        }

        private static List<Double> added(List<Double> a, List<Double> b) {
            List<Double> out = new ArrayList<>();
            for (int m = 0; m < 12; m++) {
                out.add(a.get(m) + b.get(m));
            }
            return out;
        }
    }
}
