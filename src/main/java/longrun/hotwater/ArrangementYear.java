package longrun.hotwater;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.choice.Arrangement;

/**
 * One arrangement through the year; what cannot be told is unknown and names what it lacks.
 *
 * @param gasBtu on one day of each month, Btu
 * @param electricBtu current on one day of each month, Btu
 * @param roomBtu heat taken out of the heated house on one day of each month, Btu, the standing loss given back
 * @param drawMinutes of the year
 * @param comfortMinutes of them with the fixture comfortable
 * @param hottestF at a fixture, by the reading that decides scald
 * @param coldestF at a fixture
 * @param lukewarmHours longest the tank's mean stood between 68 and 122 degF without a break
 * @param setPoints what to turn to
 */
public record ArrangementYear(
        Arrangement arrangement,
        Months gasBtu,
        Months electricBtu,
        Months roomBtu,
        OptionalDouble drawMinutes,
        OptionalDouble comfortMinutes,
        OptionalDouble hottestF,
        OptionalDouble coldestF,
        double lukewarmHours,
        SetPoints setPoints) {

    static final String BY_THE_MINUTE = "run day by day, minute by minute where water is drawn";

    /** Heat that a kilowatt-hour carries, Btu. */
    public static final double BTU_PER_KWH = 3412.14163;

    /** Of a year that was run. */
    static ArrangementYear of(HotWaterHouse house, YearRun run) {
        Arrangement a = run.arrangement();
        List<Figure> from =
                new ArrayList<>(List.of(house.need().daily(), house.need().useTemp()));
        List<Missing> electric = new ArrayList<>();
        boolean stores = a != Arrangement.ON_DEMAND_ONLY;
        if (stores) {
            from.addAll(house.storage().from());
            electric.addAll(house.storage().electricMissing());
        }
        if (a != Arrangement.STORAGE_ONLY) {
            from.add(house.need().efficiency());
            from.add(house.onDemand().output());
        }
        from.removeIf(f -> !f.isKnown());
        double minutes = sum(run, YearRun.Month::drawMinutes);
        boolean tells = minutes > 0
                && (a == Arrangement.STORAGE_ONLY || house.onDemand().output().isKnown());
        return new ArrangementYear(
                a,
                months(
                        a.written(),
                        run,
                        YearRun.Month::gasBtu,
                        a == Arrangement.STORAGE_ONLY
                                ? "heat pump and element burn no propane"
                                : BY_THE_MINUTE + "; needed heat / efficiency",
                        from),
                electric.isEmpty()
                        ? months("current, " + a.written(), run, YearRun.Month::electricBtu, BY_THE_MINUTE, from)
                        : Months.unknown("current, " + a.written(), DailyNeed.UNIT, electric),
                RoomHeat.of(house, run, from),
                OptionalDouble.of(minutes),
                tells ? OptionalDouble.of(sum(run, YearRun.Month::comfortMinutes)) : OptionalDouble.empty(),
                tells
                        ? run.months().stream()
                                .mapToDouble(YearRun.Month::hottestF)
                                .max()
                        : OptionalDouble.empty(),
                tells
                        ? run.months().stream()
                                .mapToDouble(YearRun.Month::coldestF)
                                .min()
                        : OptionalDouble.empty(),
                run.months().stream()
                                .mapToDouble(YearRun.Month::lukewarmMinutes)
                                .max()
                                .orElse(0)
                        / 60,
                SetPoints.of(house, a));
    }

    /** Of an arrangement that lacks entries. */
    static ArrangementYear unknown(Arrangement a, List<Missing> missing, Months gas) {
        return new ArrangementYear(
                a,
                gas,
                Months.unknown("current, " + a.written(), DailyNeed.UNIT, missing),
                a == Arrangement.ON_DEMAND_ONLY
                        ? RoomHeat.nothing("no storage heater at work")
                        : Months.unknown(RoomHeat.NAME, DailyNeed.UNIT, missing),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                SetPoints.NONE);
    }

    static Months months(
            String name, YearRun run, ToDoubleFunction<YearRun.Month> what, String how, List<Figure> from) {
        List<Double> values = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            values.add(what.applyAsDouble(run.months().get(m)) / Months.days(m));
        }
        return Months.known(name, values, DailyNeed.UNIT, how, Confidence.COMPUTED, from);
    }

    private static double sum(YearRun run, ToDoubleFunction<YearRun.Month> what) {
        return run.months().stream().mapToDouble(what).sum();
    }

    /** Current of the year, kWh. */
    public Figure kwh() {
        if (!electricBtu.isKnown()) {
            return Figure.unknown("kilowatt-hours a year", "kWh", electricBtu.missing());
        }
        double btu = 0;
        for (int m = 0; m < 12; m++) {
            btu += electricBtu.get(m) * Months.days(m);
        }
        double year = btu / BTU_PER_KWH;
        return Figure.of(
                "kilowatt-hours a year",
                "kWh",
                electricBtu.how() + ", / 3,412 Btu",
                Confidence.COMPUTED,
                electricBtu.from(),
                v -> year);
    }
}
