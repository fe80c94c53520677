package longrun.draft.sections;

import java.util.Optional;
import longrun.quantity.Length;

/**
 * What a position of the fitting switch does to the longest run of a line.
 *
 * @param added to its measured length
 * @param row of the table it leads to; empty where no row is as long
 */
public record AllowanceEffect(Length added, Optional<Length> row) {}
