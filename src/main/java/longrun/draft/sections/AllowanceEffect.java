package longrun.draft.sections;

import java.util.Optional;
import longrun.quantity.Length;

/**
 * What a fitting allowance does to the longest run of a section.
 *
 * @param added length added to the measured one
 * @param row the table row it leads to; empty where no row is as long
 */
public record AllowanceEffect(Length added, Optional<Length> row) {}
