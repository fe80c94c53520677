package longrun.draft.fill;

import java.util.Locale;

/**
 * One line in the list of what burns, as typed.
 *
 * @param id the id of its appliance in the plan
 * @param name the name of the appliance, as typed
 * @param input the input from the rating plate, Btu/h, as stored
 * @param basis on what its use is entered
 * @param amount the heat loss of the house, hours a day or gallons a year, by its basis, as stored
 * @param months the months in which it burns, as typed; blank for all
 * @param efficiency the efficiency of a heater, as stored; blank for other appliances
 */
public record FuelUse(
        String id, String name, String input, Basis basis, String amount, String months, String efficiency) {

    /** The entry in one of its columns, as stored. */
    public String stored(Column column) {
        return switch (column) {
            case NAME -> name;
            case INPUT -> input;
            case AMOUNT -> amount;
            case MONTHS -> months;
            case EFFICIENCY -> efficiency;
        };
    }

    /** The letter of a line by its index in the list: a to z, then a2 to z2. */
    public static String letter(int index) {
        return (char) ('a' + index % 26) + (index < 26 ? "" : String.valueOf(index / 26 + 1));
    }

    /** On what the use of a line is entered. */
    public enum Basis {
        HEATS("heats the house, loses", "designLoad"),
        HOURS("hours a day, full fire", "hoursPerDay"),
        GALLONS("gallons a year", "volumePerYear");

        private final String title;
        private final String entry;

        Basis(String title, String entry) {
            this.title = title;
            this.entry = entry;
        }

        /** The words of the choice. */
        public String title() {
            return title;
        }

        /** The name of the entry in the plan. */
        public String entry() {
            return entry;
        }
    }

    /** The columns of a line. */
    public enum Column {
        NAME,
        INPUT,
        AMOUNT,
        MONTHS,
        EFFICIENCY;

        /** Its name within a sentence. */
        public String written() {
            return this == NAME ? "what it is" : name().toLowerCase(Locale.ROOT);
        }
    }
}
