package longrun.checked.report;

import java.util.List;

/**
 * A table of the report; the first cell of a row names it.
 *
 * @param caption what it is
 * @param sum what it comes to, in a few words
 * @param headings of its columns
 */
public record Grid(String caption, String sum, List<String> headings, List<List<Cell>> rows) {}
