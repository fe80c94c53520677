package longrun.fuel;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a house burns through a year.
 *
 * @param monthly gallons of each month, January first
 * @param daily gallons of each of 365 days
 */
public record YearGallons(List<Double> monthly, List<Double> daily) {

    public YearGallons {
        monthly = List.copyOf(monthly);
        daily = List.copyOf(daily);
    }

    YearGallons(List<Double> monthly, double[] daily) {
        this(monthly, java.util.Arrays.stream(daily).boxed().toList());
    }

    /** Gallons of the year. */
    public double year() {
        return monthly.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Gallons from one date up to the day before another. */
    public double between(LocalDate from, LocalDate to) {
        return Calendar.sum(from, to, daily::get);
    }

    /** The day on which a level falls to the refill gauge without a delivery; empty where it does not within ten years. */
    public Optional<LocalDate> refillDay(LocalDate from, double startGal, double refillGal) {
        return LevelYear.refillDay(from, startGal, refillGal, daily::get);
    }
}
