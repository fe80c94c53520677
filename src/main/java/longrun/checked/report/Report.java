package longrun.checked.report;

import java.util.List;
import java.util.Map;

/**
 * What the program was checked against, how closely, and what was not: the page, the file and the print of a build are made
 * from it.
 *
 * @param lead answers in plain words
 */
public record Report(List<String> lead, List<Part> parts) {

    public static final String TITLE = "What it was checked against";

    private static final class Holder {
        static final Report LIVE = of(Map.of());
    }

    /** As the running program works it out; of random houses it says what each build compares. */
    public static Report live() {
        return Holder.LIVE;
    }

    /**
     * The report.
     *
     * @param found what a build's tests found, by the id of each {@link longrun.checked.SecondWay}; what found nothing
     *     says so
     */
    public static Report of(Map<String, Found> found) {
        return new Report(
                Lead.words(),
                List.of(
                        CaseParts.cases(),
                        CaseParts.notHeld(),
                        TableParts.equation(),
                        TableParts.second(),
                        WayPart.of(found),
                        MutantParts.mutants(),
                        DoubtParts.held(),
                        DoubtParts.memory(),
                        DoubtParts.oneSource(),
                        DoubtParts.notChecked()));
    }
}
