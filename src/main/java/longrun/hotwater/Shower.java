package longrun.hotwater;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.hotwater.draw.Draw;
import longrun.hotwater.draw.DrawEvent;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;

/**
 * One long shower on a January evening (July in the south), to play with: how long it stays comfortable in each arrangement.
 *
 * @param minutes it lasts
 * @param gpm flow at the fixtures, mixed
 * @param storageSetF set point of the storage heater instead of the entered one
 * @param coldF cold water instead of the month's
 */
public record Shower(double minutes, double gpm, OptionalDouble storageSetF, OptionalDouble coldF) {

    /** Two shower heads of the largest flow the United States allow (10 CFR 430.32, memory), for an hour: own reading. */
    public static final Shower TWO_FOR_AN_HOUR = new Shower(60, 5, OptionalDouble.empty(), OptionalDouble.empty());

    private static final double EVENING_MIN = 19 * 60;

    /** What an evening came to. */
    public record Evening(
            Map<Arrangement, DrawEvent> events, double coldF, double useF, double comfortF, OptionalDouble mixF) {

        public Evening {
            events = Map.copyOf(events);
        }

        /** The shower in one arrangement; empty where it cannot be run. */
        public Optional<DrawEvent> find(Arrangement a) {
            return Optional.ofNullable(events.get(a));
        }
    }

    /** Runs the evening; empty where what a day asks for is not known. */
    public Optional<Evening> run(Plan plan) {
        Optional<Use.HotWater> entry = plan.use().flatMap(Use::hotWater);
        if (entry.isEmpty()) {
            return Optional.empty();
        }
        return HotWaterHouse.of(plan, entry.get(), DailyNeed.of(plan, entry.get()))
                .map(house -> run(house.played(storageSetF, coldF), HotWaterStudy.coldMonth(plan)));
    }

    private Evening run(HotWaterHouse house, int month) {
        double useF = house.need().useTemp().number();
        List<Draw> draws = List.of(new Draw("shower", EVENING_MIN, minutes, gpm, useF));
        Map<Arrangement, DrawEvent> events = new EnumMap<>(Arrangement.class);
        for (Arrangement a : Arrangement.values()) {
            boolean burns =
                    a == Arrangement.STORAGE_ONLY || house.onDemand().output().isKnown();
            if (house.missing(a).isEmpty() && burns) {
                events.put(a, EventRun.of(house, a, month, draws).get(0));
            }
        }
        return new Evening(
                events,
                house.cold().get(month),
                useF,
                house.comfortF(),
                Double.isInfinite(house.mixF()) ? OptionalDouble.empty() : OptionalDouble.of(house.mixF()));
    }
}
