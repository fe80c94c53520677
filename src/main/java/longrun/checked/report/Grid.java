package longrun.checked.report;

import java.util.List;

/**
 * A table of the report; the first cell of a row names it.
 *
 * @param caption what it is
 * @param headings of its columns
 */
public record Grid(String caption, List<String> headings, List<List<Cell>> rows) {}
