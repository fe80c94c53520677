package longrun.finding;

import longrun.origin.Confidence;

/**
 * Where a requirement comes from.
 *
 * @param reference publication and section, or "common practice"
 * @param edition of that publication; empty where it has none or it is not known
 * @param confidence how sure the requirement is
 */
public record Citation(String reference, String edition, Confidence confidence) {

    private static final String FUEL_GAS_CODE = "2018 International Fuel Gas Code, ";

    /** Common practice without a printed source, so its confidence is memory. */
    public static Citation commonPractice() {
        return new Citation("common practice", "", Confidence.MEMORY);
    }

    /** A section of the fuel gas code, read in print. */
    public static Citation fuelGasCode(String section) {
        return new Citation(FUEL_GAS_CODE + section, "2018", Confidence.PRINT);
    }
}
