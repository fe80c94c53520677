package longrun.fuel.fill;

import longrun.fuel.OtherYear;

/**
 * What one entry leaves open.
 *
 * @param entry what is in doubt, and how far: "the gauge, 5 in 100"
 * @param field JSON pointer of the entry
 * @param counting what would settle it
 * @param gaugeGal gallons the gauge may be off, either way; 0 for any other doubt
 * @param shorter the year in which a fill lasts less long
 * @param longer the year in which it lasts longer
 */
public record Doubt(
        String entry, String field, String counting, double gaugeGal, OtherYear shorter, OtherYear longer) {}
