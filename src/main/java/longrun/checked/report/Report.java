package longrun.checked.report;

import java.util.List;
import java.util.Map;

/**
 * The report on what the program was checked against, how closely, and what was not checked. The page, the HTML file and the
 * PDF of a build are made from it.
 *
 * @param lead the summary, a paragraph each
 */
public record Report(List<String> lead, List<Part> parts) {

    /** The title of the report. */
    public static final String TITLE = "What it was checked against";

    private static final class Holder {
        static final Report LIVE = of(Map.of());
    }

    /** The report as the running program makes it; for random houses it says what each build compares. */
    public static Report live() {
        return Holder.LIVE;
    }

    /**
     * The report of a build.
     *
     * @param found what the tests of the build found, by the id of each {@link longrun.checked.SecondWay}; one that is not
     *     among them is reported as not run
     */
    public static Report of(Map<String, BuildResult> found) {
        return new Report(
                Summary.words(),
                List.of(
                        PublishedCaseParts.cases(),
                        PublishedCaseParts.notHeld(),
                        TableParts.equation(),
                        TableParts.second(),
                        SecondWayPart.of(found),
                        MutantParts.mutants(),
                        DoubtParts.held(),
                        DoubtParts.memory(),
                        DoubtParts.oneSource(),
                        DoubtParts.notChecked()));
    }
}
