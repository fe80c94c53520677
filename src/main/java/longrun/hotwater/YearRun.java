package longrun.hotwater;

import java.util.ArrayList;
import java.util.List;
import longrun.hotwater.draw.DrawDay;
import longrun.hotwater.heater.Chain;
import longrun.hotwater.heater.ChainDay;
import longrun.hotwater.heater.DayTally;
import longrun.hotwater.heater.StorageHeater;
import longrun.hotwater.heater.StorageTank;
import longrun.origin.Months;
import longrun.plan.choice.Arrangement;

/**
 * A year of one arrangement, day by day with the month's cold water and room, minute by minute where a draw flows. A day that
 * begins exactly as the day before it did in the same month is that day again.
 *
 * @param months of each month the sums of its days
 */
record YearRun(Arrangement arrangement, List<Month> months) {

    /** Days run before the year to be free of how full the tank began. */
    private static final int BEFORE = 5;

    /**
     * One month.
     *
     * @param gasBtu burnt for the water
     * @param electricBtu current drawn
     * @param roomBtu heat taken from the room, its standing loss given back
     * @param fixtureBtu heat at the fixtures over the cold water
     * @param hottestF at a fixture, by the reading that decides scald
     * @param coldestF at a fixture
     * @param lukewarmMinutes longest the tank's mean stood between 68 and 122 degF without a break, so far in the year
     */
    record Month(
            double gasBtu,
            double electricBtu,
            double roomBtu,
            double fixtureBtu,
            double drawMinutes,
            double comfortMinutes,
            double hottestF,
            double coldestF,
            double lukewarmMinutes) {}

    YearRun {
        months = List.copyOf(months);
    }

    /**
     * Runs the year.
     *
     * @param stepMin minutes of a step while water is drawn
     */
    static YearRun of(HotWaterHouse house, Arrangement arrangement, double stepMin) {
        StorageTank tank = house.storage(arrangement)
                .map(h -> new StorageTank(h, StorageHeater.NODES, house.k() / 60))
                .orElse(null);
        Chain chain = new Chain(tank, house.onDemand(arrangement).orElse(null), house.mixF(), house.k());
        ChainDay days = new ChainDay(chain, tank, stepMin);
        DrawDay draws = DrawDay.of(house.draws().ofTheYear());
        List<Month> months = new ArrayList<>();
        for (int m = -1; m < 12; m++) {
            int month = Math.floorMod(m, 12);
            double cold = house.cold().get(month);
            double room = tank == null ? 0 : house.storage().room().get(month);
            MonthSum sum = new MonthSum(house);
            int count = m < 0 ? BEFORE : Months.days(month);
            for (int d = 0; d < count; d++) {
                double[] before = tank == null ? new double[0] : tank.nodesF();
                boolean pump = tank != null && tank.pumpIsOn();
                boolean element = tank != null && tank.elementIsOn();
                DayTally tally = new DayTally(house.k(), house.comfortF());
                tally.begin(tank, cold);
                days.run(draws, cold, room, tally);
                tally.end(tank);
                boolean again = tank == null || tank.standsLike(before, pump, element);
                int like = again ? count - d : 1;
                sum.add(tally, like);
                d += like - 1;
                if (tank != null) {
                    tank.goesOnLike(like - 1);
                }
            }
            if (m >= 0) {
                months.add(sum.month(tank == null ? 0 : tank.longestLukewarm()));
            }
        }
        return new YearRun(arrangement, months);
    }

    /** Gas of the year, Btu. */
    double gasBtu() {
        return months.stream().mapToDouble(Month::gasBtu).sum();
    }

    private static final class MonthSum {
        private final double[] sum = new double[6];
        private double hottestF = Double.NEGATIVE_INFINITY;
        private double coldestF = Double.POSITIVE_INFINITY;

        MonthSum(HotWaterHouse house) {
            if (house.draws().ofTheYear().isEmpty()) {
                hottestF = Double.NaN;
                coldestF = Double.NaN;
            }
        }

        void add(DayTally day, int days) {
            double[] of = {
                day.gasBtu(),
                day.electricBtu(),
                day.roomBtu(),
                day.fixtureBtu(),
                day.drawMinutes(),
                day.comfortMinutes()
            };
            for (int i = 0; i < of.length; i++) {
                sum[i] += of[i] * days;
            }
            hottestF = Math.max(hottestF, day.hottestF());
            coldestF = Math.min(coldestF, day.coldestF());
        }

        Month month(double lukewarm) {
            return new Month(sum[0], sum[1], sum[2], sum[3], sum[4], sum[5], hottestF, coldestF, lukewarm);
        }
    }
}
