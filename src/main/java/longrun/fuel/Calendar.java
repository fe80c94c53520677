package longrun.fuel;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.function.IntToDoubleFunction;
import longrun.origin.Months;

/** Days of a year of 365; the 29th of February counts as the 28th. */
final class Calendar {

    private static final int[] FIRSTS = firsts();

    private Calendar() {}

    private static int[] firsts() {
        int[] firsts = new int[12];
        for (int m = 1; m < 12; m++) {
            firsts[m] = firsts[m - 1] + Months.days(m - 1);
        }
        return firsts;
    }

    /** Place of a date in the year, 0 to 364. */
    static int day(LocalDate date) {
        int month = date.getMonthValue() - 1;
        return FIRSTS[month] + Math.min(date.getDayOfMonth(), Months.days(month)) - 1;
    }

    /** Month of a day of the year, January 0. */
    static int month(int day) {
        int rest = day;
        int m = 0;
        while (rest >= Months.days(m)) {
            rest -= Months.days(m++);
        }
        return m;
    }

    /** Sum of something over the days from one date up to the day before another. */
    static double sum(LocalDate from, LocalDate to, IntToDoubleFunction day) {
        long count = ChronoUnit.DAYS.between(from, to);
        double year = 0;
        for (int d = 0; d < 365; d++) {
            year += day.applyAsDouble(d);
        }
        long years = count / 365; // tickets centuries apart are summed by the year
        double sum = years * year;
        LocalDate rest = from.plusDays(years * 365);
        for (long i = 0; i < count - years * 365; i++) {
            sum += day.applyAsDouble(day(rest.plusDays(i)));
        }
        return sum;
    }
}
