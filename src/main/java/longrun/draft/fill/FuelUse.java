package longrun.draft.fill;

import java.util.Locale;

/**
 * One line of what burns, as typed.
 *
 * @param id of its appliance in the plan
 * @param input Btu/h from the plate, as stored
 * @param how its use is told
 * @param amount heat the house loses, hours a day or gallons a year, as stored
 * @param months in which it burns, as typed; blank for all
 * @param efficiency of a heater, as stored
 */
public record FuelUse(String id, String name, String input, How how, String amount, String months, String efficiency) {

    /** What stands in one of its columns, as stored. */
    public String stored(Column column) {
        return switch (column) {
            case NAME -> name;
            case INPUT -> input;
            case AMOUNT -> amount;
            case MONTHS -> months;
            case EFFICIENCY -> efficiency;
        };
    }

    /** What a line is called by its place in the list: a to z, then a2 to z2. */
    public static String letter(int index) {
        return (char) ('a' + index % 26) + (index < 26 ? "" : String.valueOf(index / 26 + 1));
    }

    /** How the use of a line is told. */
    public enum How {
        HEATS("heats the house, loses", "designLoad"),
        HOURS("hours a day, full fire", "hoursPerDay"),
        GALLONS("gallons a year", "volumePerYear");

        private final String title;
        private final String entry;

        How(String title, String entry) {
            this.title = title;
            this.entry = entry;
        }

        public String title() {
            return title;
        }

        public String entry() {
            return entry;
        }
    }

    /** What of it is typed in. */
    public enum Column {
        NAME,
        INPUT,
        AMOUNT,
        MONTHS,
        EFFICIENCY;

        public String written() {
            return this == NAME ? "what it is" : name().toLowerCase(Locale.ROOT);
        }
    }
}
