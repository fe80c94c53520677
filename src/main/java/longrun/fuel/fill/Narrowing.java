package longrun.fuel.fill;

/**
 * What knowing one entry for certain would do for the days of a fill.
 *
 * @param doubt the entry
 * @param saved days by which the range would be narrower
 * @param then the range that would be left
 */
public record Narrowing(Doubt doubt, double saved, Range then) {}
