package longrun.hotwater;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import longrun.hotwater.draw.DrawEvent;
import longrun.hotwater.heater.OnDemandHeater;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import org.jspecify.annotations.Nullable;

/**
 * Hot water of a house: three arrangements through the year, its draws minute by minute in January, the largest flows.
 *
 * @param chosen the arrangement the house has, where it can be told
 * @param cold water of each month, degF
 * @param arrangements each through the year
 * @param events each draw in each arrangement that can be run, in January (July south of the equator)
 * @param maxFlowGpm largest flow through the on-demand heater at its set point, by the month
 * @param maxFixtureGpm largest flow at the use temperature, by the month
 * @param evening two showers for an hour, in each arrangement
 * @param pattern name of the test pattern that stands in for draws
 * @param standIns starting values that stand in for entries
 * @param unfinishedDraws places of draws that lack flow or length
 */
public record HotWaterStudy(
        Optional<Arrangement> chosen,
        Months cold,
        Map<Arrangement, ArrangementYear> arrangements,
        List<DrawEvent> events,
        Months maxFlowGpm,
        Months maxFixtureGpm,
        Optional<Shower.Evening> evening,
        Optional<String> pattern,
        List<StandIn> standIns,
        List<Integer> unfinishedDraws) {

    private static final double STEP_MIN = 1;
    private static final AtomicReference<@Nullable Kept> LAST = new AtomicReference<>();

    public HotWaterStudy {
        arrangements = Collections.unmodifiableMap(new LinkedHashMap<>(arrangements));
        events = List.copyOf(events);
        standIns = List.copyOf(standIns);
        unfinishedDraws = List.copyOf(unfinishedDraws);
    }

    /** Of a plan; empty where it says nothing of hot water. The last study is kept: a key elsewhere changes none. */
    public static Optional<HotWaterStudy> of(Plan plan) {
        return plan.use().flatMap(Use::hotWater).map(entry -> {
            StudyKey key = StudyKey.of(plan, entry);
            Kept kept = LAST.get();
            if (kept == null || !kept.key().equals(key)) {
                kept = new Kept(key, of(plan, entry));
                LAST.set(kept);
            }
            return kept.study();
        });
    }

    private record Kept(StudyKey key, HotWaterStudy study) {}

    /** Of a plan that has a hot water entry, worked out anew. */
    public static HotWaterStudy of(Plan plan, Use.HotWater entry) {
        DailyNeed need = DailyNeed.of(plan, entry);
        Optional<HotWaterHouse> house = HotWaterHouse.of(plan, entry, need);
        Map<Arrangement, ArrangementYear> years = new EnumMap<>(Arrangement.class);
        List<DrawEvent> events = new ArrayList<>();
        for (Arrangement a : Arrangement.values()) {
            List<Missing> missing = new ArrayList<>(need.heat().missing());
            house.ifPresent(h -> missing.addAll(h.missing(a)));
            if (house.isPresent() && missing.isEmpty()) {
                years.put(a, ArrangementYear.of(house.get(), YearRun.of(house.get(), a, STEP_MIN)));
                if (a == Arrangement.STORAGE_ONLY
                        || house.get().onDemand().output().isKnown()) {
                    events.addAll(EventRun.of(
                            house.get(), a, coldMonth(plan), house.get().draws().asEntered()));
                }
            } else {
                Months gas = a == Arrangement.STORAGE_ONLY
                        ? DailyNeed.electric(entry)
                        : Months.unknown(a.written(), DailyNeed.UNIT, missing);
                years.put(a, ArrangementYear.unknown(a, missing, gas));
            }
        }
        return new HotWaterStudy(
                DailyNeed.chosen(entry),
                need.cold(),
                years,
                events,
                largest("largest flow through the heater", need, house, false),
                largest("largest flow at the use temperature", need, house, true),
                Shower.TWO_FOR_AN_HOUR.run(plan),
                house.flatMap(h -> h.draws().pattern()),
                house.map(HotWaterHouse::standIns).orElse(List.of()),
                house.map(h -> h.draws().unfinished()).orElse(List.of()));
    }

    /** January, or July where the house stands in the south. */
    public static int coldMonth(Plan plan) {
        return ColdWater.airMeans(plan).filter(ColdWater::south).isPresent() ? 6 : 0;
    }

    private static Months largest(String name, DailyNeed need, Optional<HotWaterHouse> house, boolean atUse) {
        List<Missing> missing = new ArrayList<>(need.cold().missing());
        missing.addAll(need.useTemp().missing());
        house.ifPresent(h -> {
            missing.addAll(h.onDemand().missing());
            missing.addAll(h.onDemand().output().missing());
        });
        Optional<OnDemandHeater> heater = house.flatMap(h -> h.onDemand().heater());
        if (heater.isEmpty() || !missing.isEmpty()) {
            return Months.unknown(name, "gal/min", missing);
        }
        Figure output = house.get().onDemand().output();
        double toF = atUse ? need.useTemp().number() : heater.get().setF();
        List<Double> values = new ArrayList<>();
        for (double cold : need.cold().values()) {
            if (toF <= cold) {
                return Months.unknown(
                        name,
                        "gal/min",
                        List.of(new Missing("", name + ": the cold water is as warm as what is wanted")));
            }
            values.add(WaterHeat.gallonsPerHour(output.number(), cold, toF) / 60);
        }
        return Months.known(
                name,
                values,
                "gal/min",
                "full fire / k(T) / (" + (atUse ? "use" : "set point") + " - cold)",
                Confidence.COMPUTED,
                List.of(output));
    }

    /** Gas and room heat as the year of the house counts them. */
    public HotWaterUse use() {
        Map<Arrangement, Months> gas = new EnumMap<>(Arrangement.class);
        arrangements.forEach((a, y) -> gas.put(a, y.gasBtu()));
        List<Missing> missing = chosen.isPresent() ? List.of() : DailyNeed.arrangementMissing();
        Months room = chosen.map(a -> year(a).roomBtu())
                .orElseGet(() -> year(Arrangement.SERIES).roomBtu());
        return new HotWaterUse(chosen, gas, room, missing);
    }

    /** The year of one arrangement. */
    public ArrangementYear year(Arrangement a) {
        return Optional.ofNullable(arrangements.get(a)).orElseThrow();
    }
}
