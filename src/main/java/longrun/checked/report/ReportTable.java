package longrun.checked.report;

import java.util.List;

/**
 * A table of the report; the first cell of a row names it.
 *
 * @param caption its caption
 * @param sum its result, in a few words
 * @param headings the headings of its columns
 */
public record ReportTable(String caption, String sum, List<String> headings, List<List<Cell>> rows) {}
