package longrun.hotwater;

import java.util.ArrayList;
import java.util.List;
import longrun.hotwater.draw.Draw;
import longrun.hotwater.draw.DrawDay;
import longrun.hotwater.draw.DrawEvent;
import longrun.hotwater.heater.Chain;
import longrun.hotwater.heater.ChainDay;
import longrun.hotwater.heater.EventTally;
import longrun.hotwater.heater.StorageHeater;
import longrun.hotwater.heater.StorageTank;
import longrun.plan.choice.Arrangement;

/** The draws of a day as they were entered, second by second, after days as the year has them. */
final class EventRun {

    private static final int BEFORE = 20;
    private static final double SECOND_MIN = 1.0 / 60;
    /** Draws that go on for hours are stepped by more than a second. */
    private static final double MOST_STEPS = 7200;

    private EventRun() {}

    /**
     * Runs a day.
     *
     * @param month of the year, January 0
     * @param draws of that day
     */
    static List<DrawEvent> of(HotWaterHouse house, Arrangement arrangement, int month, List<Draw> draws) {
        StorageTank tank = house.storage(arrangement)
                .map(h -> new StorageTank(h, StorageHeater.NODES, house.k() / 60))
                .orElse(null);
        Chain chain = new Chain(tank, house.onDemand(arrangement).orElse(null), house.mixF(), house.k());
        double cold = house.cold().get(month);
        double room = tank == null ? 0 : house.storage().room().get(month);
        if (tank != null) {
            DrawDay usual = DrawDay.of(house.draws().ofTheYear());
            ChainDay days = new ChainDay(chain, tank, 1);
            boolean again = false;
            for (int d = 0; d < BEFORE && !again; d++) {
                double[] before = tank.nodesF();
                boolean pump = tank.pumpIsOn();
                boolean element = tank.elementIsOn();
                days.run(usual, cold, room, (c, s, m, t) -> {});
                again = tank.standsLike(before, pump, element);
            }
        }
        List<EventTally> tallies = new ArrayList<>();
        for (int i = 0; i < draws.size(); i++) {
            tallies.add(new EventTally(i, draws.get(i), house.comfortF()));
        }
        double all = draws.stream().mapToDouble(Draw::minutes).sum();
        new ChainDay(chain, tank, Math.max(SECOND_MIN, all / MOST_STEPS))
                .run(
                        DrawDay.of(draws),
                        cold,
                        room,
                        (c, slice, minute, step) ->
                                slice.draws().forEach(i -> tallies.get(i).drawn(c, slice, minute, step)));
        return tallies.stream().map(t -> t.event(arrangement)).toList();
    }
}
