package longrun.fuel;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/**
 * The tank's level through a year from the gauge's date, gallons at the start of each day, with a delivery at the end of the
 * day on which the refill gauge is reached, or of the first day after it on which the truck can come.
 *
 * @param from the gauge's date
 * @param gallons 366 levels: each day's start, and the last day's end
 * @param deliveries in order
 * @param noTruck the spells without truck that begin within the year
 * @param dry the day the tank runs empty, if it does
 */
public record LevelYear(
        LocalDate from, List<Double> gallons, List<Drop> deliveries, List<NoTruck> noTruck, Optional<LocalDate> dry) {

    /** A delivery at the end of a day. */
    public record Drop(LocalDate date, double gallons) {}

    /** A spell of days of the year, both included, on which the truck cannot come. */
    public record Spell(MonthDay from, MonthDay to) {
        boolean covers(LocalDate date) {
            MonthDay day = MonthDay.from(date);
            boolean wraps = from.isAfter(to);
            boolean afterFrom = !day.isBefore(from);
            boolean beforeTo = !day.isAfter(to);
            return wraps ? afterFrom || beforeTo : afterFrom && beforeTo;
        }
    }

    /**
     * A spell without truck and what it does to the level.
     *
     * @param startGal at its first day
     * @param endGal at the end of its last day, before any delivery
     * @param belowRefill whether the refill gauge is reached within it
     */
    public record NoTruck(LocalDate from, LocalDate to, double startGal, double endGal, boolean belowRefill) {}

    public LevelYear {
        gallons = List.copyOf(gallons);
        deliveries = List.copyOf(deliveries);
        noTruck = List.copyOf(noTruck);
    }

    /**
     * Runs a year.
     *
     * @param startGal at the gauge's date
     * @param refillGal at the refill gauge
     * @param fillTo gallons a delivery fills to, by the air's temperature
     * @param use gallons on a day of the year, 0 to 364
     * @param air mean air on a day of the year
     */
    static LevelYear run(
            LocalDate from,
            double startGal,
            double refillGal,
            DoubleUnaryOperator fillTo,
            IntToDoubleFunction use,
            IntToDoubleFunction air,
            List<Spell> spells) {
        List<Double> levels = new ArrayList<>(List.of(startGal));
        List<Drop> drops = new ArrayList<>();
        List<NoTruck> gaps = new ArrayList<>();
        Optional<LocalDate> dry = Optional.empty();
        double level = startGal;
        double gapStart = startGal;
        Optional<LocalDate> gap = Optional.empty();
        LocalDate next = from;
        boolean closedNext = isClosed(spells, from);
        for (int i = 0; i < 365; i++) {
            LocalDate date = next;
            boolean closed = closedNext;
            next = date.plusDays(1);
            closedNext = isClosed(spells, next);
            int day = Calendar.day(date);
            if (closed && gap.isEmpty()) {
                gap = Optional.of(date);
                gapStart = level;
            }
            level -= use.applyAsDouble(day);
            if (level <= 0) {
                level = 0;
                dry = dry.or(() -> Optional.of(date));
            }
            boolean ends = gap.isPresent() && (i == 364 || !closedNext);
            if (ends) {
                gaps.add(new NoTruck(gap.get(), date, gapStart, level, level <= refillGal));
                gap = Optional.empty();
            }
            if (!closed && level <= refillGal) {
                double full = fillTo.applyAsDouble(air.applyAsDouble(day));
                if (full > level) {
                    drops.add(new Drop(date, full - level));
                    level = full;
                }
            }
            levels.add(level);
        }
        return new LevelYear(from, levels, drops, gaps, dry);
    }

    private static boolean isClosed(List<Spell> spells, LocalDate date) {
        for (Spell spell : spells) {
            if (spell.covers(date)) {
                return true;
            }
        }
        return false;
    }

    /** The day on which a level falls to the refill gauge without a delivery, within ten years. */
    static Optional<LocalDate> refillDay(LocalDate from, double startGal, double refillGal, IntToDoubleFunction use) {
        double level = startGal;
        LocalDate date = from;
        for (int i = 0; i < 3650; i++) {
            if (level <= refillGal) {
                return Optional.of(date);
            }
            level -= use.applyAsDouble(Calendar.day(date));
            if (level <= refillGal) {
                return Optional.of(date);
            }
            date = date.plusDays(1);
        }
        return Optional.empty();
    }
}
