package longrun.fuel;

import java.time.LocalDate;
import longrun.origin.Months;

/** Days of a year of 365; the 29th of February is reckoned as the 28th. */
final class Calendar {

    private Calendar() {}

    /** Place of a date in the year, 0 to 364. */
    static int day(LocalDate date) {
        int day = 0;
        for (int m = 0; m < date.getMonthValue() - 1; m++) {
            day += Months.days(m);
        }
        return day + Math.min(date.getDayOfMonth(), Months.days(date.getMonthValue() - 1)) - 1;
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
}
