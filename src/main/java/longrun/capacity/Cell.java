package longrun.capacity;

import java.util.Optional;
import longrun.origin.Confidence;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;

/**
 * One cell of a capacity table.
 *
 * @param run the length of run its row is for
 * @param size the size its column is for, as the table writes it
 * @param capacity what that size carries at that length; empty where the print is blank, which is no capacity at all
 * @param confidence how sure that is
 */
public record Cell(Length run, String size, Optional<HeatRate> capacity, Confidence confidence) {}
