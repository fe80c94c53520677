package longrun.draft.fill;

/** A line of what burns, and a column of it. */
public record BurnsCell(int line, Burns.Column column) {}
