package longrun.checked.report;

import java.util.List;

/**
 * A part of the report, under one heading.
 *
 * @param id the id by which it is linked
 * @param says the paragraphs before its tables
 */
public record Part(String id, String heading, List<String> says, List<ReportTable> tables) {}
