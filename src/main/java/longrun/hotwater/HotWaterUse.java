package longrun.hotwater;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Arrangement;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.StorageRoom;
import longrun.plan.Use;
import longrun.quantity.Ratio;
import longrun.quantity.Temperature;

/**
 * Propane heat for hot water, Btu of gas on one day of each month, for each arrangement, as a balance over the day: on-demand
 * heats what storage does not. What a storage tank lacks within one long draw is not seen by a day's balance; the series
 * figure is therefore the least.
 *
 * @param chosen the arrangement the house has, where it can be told
 * @param dailyBtu gas a day by arrangement, Btu
 * @param roomHeatBtu heat the storage heater takes out of the heated house on one day of each month, Btu, its standing loss
 *     given back; known to be nothing where there is none or it stands elsewhere
 * @param missing what is lacking to tell the arrangement
 */
public record HotWaterUse(
        Optional<Arrangement> chosen, Map<Arrangement, Months> dailyBtu, Months roomHeatBtu, List<Missing> missing) {

    private static final String AT = "/use/hotWater";
    private static final String UNIT = "Btu/day";
    /** Indoor air where none is entered: common practice. */
    private static final double INDOOR_F = 68;

    public HotWaterUse {
        dailyBtu = Collections.unmodifiableMap(new EnumMap<>(dailyBtu));
        missing = List.copyOf(missing);
    }

    /** Gas for hot water in the arrangement the house has. */
    public Months chosenBtu() {
        return chosen.flatMap(a -> Optional.ofNullable(dailyBtu.get(a)))
                .orElseGet(() -> Months.unknown("hot water", UNIT, missing));
    }

    /** Gas for hot water with whatever storage gives out of use: what the tank must be able to feed. */
    public Months withoutStorageBtu() {
        return chosen.filter(a -> a == Arrangement.SERIES)
                .flatMap(a -> Optional.ofNullable(dailyBtu.get(Arrangement.ON_DEMAND_ONLY)))
                .orElseGet(this::chosenBtu);
    }

    /** Of a plan that has a hot water entry. */
    public static HotWaterUse of(Plan plan, Use.HotWater entry) {
        Months cold = ColdWater.of(plan);
        Figure daily = dailyVolume(plan, entry);
        Figure useTemp = Figure.entered(
                "use temperature",
                entry.useTemp(),
                Temperature::degF,
                "degF",
                AT + "/useTemp",
                "temperature hot water is used at");
        Months need = need(cold, daily, useTemp);
        Map<Arrangement, Months> all = new EnumMap<>(Arrangement.class);
        all.put(Arrangement.ON_DEMAND_ONLY, onDemand(need, entry));
        all.put(Arrangement.STORAGE_ONLY, storageOnly(entry));
        all.put(Arrangement.SERIES, series(plan, entry, need, cold, useTemp));
        Optional<Arrangement> chosen = chosen(entry);
        List<Missing> missing = chosen.isPresent()
                ? List.of()
                : List.of(new Missing(AT + "/arrangement", "series, on-demand-only or storage-only"));
        return new HotWaterUse(chosen, all, RoomHeat.of(plan, entry, chosen, need), missing);
    }

    private static Optional<Arrangement> chosen(Use.HotWater entry) {
        if (entry.arrangement().isKnown()) {
            return entry.arrangement().findValue();
        }
        if (entry.storage().isPresent() == entry.onDemand().isPresent()) {
            return Optional.empty();
        }
        return Optional.of(entry.storage().isPresent() ? Arrangement.STORAGE_ONLY : Arrangement.ON_DEMAND_ONLY);
    }

    private static Figure dailyVolume(Plan plan, Use.HotWater entry) {
        boolean drawsTell = !entry.dailyVolume().isKnown()
                && !entry.draws().isEmpty()
                && entry.draws().stream()
                        .allMatch(d -> d.flow().isKnown() && d.lasts().isKnown());
        if (drawsTell) {
            double sum = entry.draws().stream()
                    .mapToDouble(d -> d.flow().findValue().orElseThrow().gpm()
                            * d.lasts().findValue().orElseThrow().minutes())
                    .sum();
            return Figure.given("hot water a day", sum, "gal", "sum of the draws entered", Confidence.COMPUTED);
        }
        String hint = plan.site()
                .flatMap(s -> s.people().findValue())
                .map(p -> String.format(
                        Locale.ROOT,
                        " (%.0f people use about %.0f gal)",
                        p,
                        Math.max(0, -4.84 + 18.6 * p))) // FSEC-PF-464-15 eq. 14
                .orElse("");
        return Figure.entered(
                "hot water a day",
                entry.dailyVolume(),
                v -> v.gallons(),
                "gal",
                AT + "/dailyVolume",
                "gallons of hot water a day at the temperature of use" + hint);
    }

    private static Months need(Months cold, Figure daily, Figure useTemp) {
        List<Missing> missing = new ArrayList<>(cold.missing());
        missing.addAll(daily.missing());
        missing.addAll(useTemp.missing());
        if (!missing.isEmpty()) {
            return Months.unknown("heat into the water", UNIT, missing);
        }
        List<Double> values = cold.values().stream()
                .map(c -> Math.max(0, WaterHeat.btu(daily.number(), c, useTemp.number())))
                .toList();
        return Months.known(
                "heat into the water",
                values,
                UNIT,
                "gallons x k(T) / 60 x (use - cold)",
                Confidence.COMPUTED,
                List.of(daily, useTemp));
    }

    private static Months onDemand(Months need, Use.HotWater entry) {
        Fact<Ratio> share = entry.onDemand().map(Use.OnDemand::efficiency).orElse(Fact.unknown());
        Figure efficiency = Figure.entered(
                "efficiency of the on-demand heater",
                share,
                r -> r.percent(),
                "%",
                AT + "/onDemand/efficiency",
                "efficiency of the on-demand heater, from its label");
        return burnt("on-demand alone", need, efficiency, "heat into the water / efficiency");
    }

    private static Months burnt(String name, Months need, Figure efficiency, String how) {
        List<Missing> missing = new ArrayList<>(need.missing());
        missing.addAll(efficiency.missing());
        if (missing.isEmpty() && efficiency.number() <= 0) {
            missing.add(new Missing(AT + "/onDemand/efficiency", "an efficiency above 0 %"));
        }
        if (!missing.isEmpty()) {
            return Months.unknown(name, UNIT, missing);
        }
        List<Figure> from = new ArrayList<>(need.from());
        from.add(efficiency);
        return Months.known(
                name,
                need.values().stream().map(b -> b / (efficiency.number() / 100)).toList(),
                UNIT,
                how,
                Confidence.COMPUTED,
                from);
    }

    private static Months storageOnly(Use.HotWater entry) {
        boolean electric = entry.storage()
                .map(s -> s.heatPumpOutput().isKnown() || s.element().isKnown())
                .orElse(false);
        if (!electric) {
            return Months.unknown(
                    "storage alone",
                    UNIT,
                    List.of(new Missing(AT + "/storage", "the storage heater's heat pump output or element")));
        }
        return Months.known(
                "storage alone",
                Collections.nCopies(12, 0.0),
                UNIT,
                "heat pump and element burn no propane",
                Confidence.COMPUTED,
                List.of());
    }

    private static Months series(Plan plan, Use.HotWater entry, Months need, Months cold, Figure useTemp) {
        if (entry.storage().isEmpty()) {
            return Months.unknown("series", UNIT, List.of(new Missing(AT + "/storage", "the storage heater")));
        }
        Use.Storage s = entry.storage().get();
        Figure set = Figure.entered(
                "storage set point",
                s.setTemp(),
                Temperature::degF,
                "degF",
                AT + "/storage/setTemp",
                "set point of the storage heater");
        Figure output = Figure.entered(
                "heat pump output",
                s.heatPumpOutput(),
                h -> h.btuh(),
                "Btu/h",
                AT + "/storage/heatPumpOutput",
                "output of the heat pump");
        Figure loss = Figure.entered(
                "standing loss",
                s.standbyLoss(),
                h -> h.btuhPerDegF(),
                "Btu/(h.degF)",
                AT + "/storage/standbyLoss",
                "standing loss of the storage tank");
        Months room = room(plan, s);
        List<Missing> missing = new ArrayList<>(need.missing());
        List.of(set, output, loss).forEach(f -> missing.addAll(f.missing()));
        missing.addAll(room.missing());
        if (!missing.isEmpty()) {
            return Months.unknown("series", UNIT, missing);
        }
        double element = s.elementOn().is(true)
                ? s.element().findValue().map(e -> e.btuh()).orElse(0.0)
                : 0;
        Optional<Double> lockout = s.lockoutTemp().findValue().map(Temperature::degF);
        List<Double> rest = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            double air = room.get(m);
            double pump = lockout.filter(l -> air < l).isPresent() ? 0 : output.number();
            double given = 24 * (pump + element - loss.number() * Math.max(0, set.number() - air));
            double lift = useTemp.number() - cold.get(m);
            // Storage set under the temperature of use can only bring the water part of the way.
            double share = lift <= 0 ? 0 : Math.max(0, Math.min(1, (set.number() - cold.get(m)) / lift));
            rest.add(need.get(m) - Math.min(need.get(m) * share, Math.max(0, given)));
        }
        List<Figure> from = new ArrayList<>(need.from());
        from.addAll(List.of(set, output, loss));
        Months left = Months.known(
                "heat left to the on-demand heater",
                rest,
                UNIT,
                "heat into the water less what storage gives over the day",
                Confidence.COMPUTED,
                from);
        Months burnt = onDemand(left, entry);
        return new Months(
                "series",
                burnt.values(),
                UNIT,
                "balance over the day, the least: long draws want more",
                burnt.confidence(),
                burnt.from(),
                burnt.missing());
    }

    /** The air about the storage heater, degF. */
    static Months room(Plan plan, Use.Storage s) {
        Optional<List<Temperature>> entered = s.roomTemp().findValue().filter(t -> t.size() == 1 || t.size() == 12);
        if (entered.isPresent()) {
            List<Temperature> t = entered.get();
            List<Double> values = new ArrayList<>();
            for (int m = 0; m < 12; m++) {
                values.add(t.get(t.size() == 1 ? 0 : m).degF());
            }
            return Months.known(
                    "air about the storage heater", values, "degF", "entered", Confidence.COMPUTED, List.of());
        }
        if (s.room().is(StorageRoom.HEATED)) {
            double indoor = plan.use()
                    .flatMap(u -> u.indoorTemp().findValue())
                    .map(Temperature::degF)
                    .orElse(INDOOR_F);
            return Months.known(
                    "air about the storage heater",
                    Collections.nCopies(12, indoor),
                    "degF",
                    "heated room",
                    Confidence.MEMORY,
                    List.of());
        }
        return Months.unknown(
                "air about the storage heater",
                "degF",
                List.of(new Missing(AT + "/storage/roomTemp", "air about the storage heater, one value or twelve")));
    }
}
