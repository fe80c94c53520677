package longrun.plan;

import java.util.Optional;
import longrun.plan.choice.Direction;
import longrun.quantity.Length;

/**
 * One straight length of a section, as a fitter paces it.
 *
 * @param direction where it goes, if said
 * @param length its measured length
 * @param text as typed
 */
public record Leg(Optional<Direction> direction, Length length, String text) {}
