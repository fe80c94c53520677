package longrun.draft.fill;

/** A line of what burns, and a column of it. */
public record FuelUseCell(int line, FuelUse.Column column) {}
