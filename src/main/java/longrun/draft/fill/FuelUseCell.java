package longrun.draft.fill;

/** A column in a line of what burns; the line counts from 0. */
public record FuelUseCell(int line, FuelUse.Column column) {}
