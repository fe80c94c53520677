package longrun.fuel;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.origin.Missing;
import longrun.plan.Plan;

/** What the year still asks for, once anything of the year is entered. */
public final class YearQuestions {

    private YearQuestions() {}

    /**
     * A question for each entry that the gallons of the year wait for; none for a plan that says nothing of its use.
     *
     * @param asked entries that something else asks for already
     */
    public static List<Finding> of(Plan plan, FuelReport report, Set<String> asked) {
        if (plan.use().isEmpty() || report.annualGal().isKnown()) {
            return List.of();
        }
        Set<String> said = new LinkedHashSet<>(asked);
        return report.annualGal().missing().stream()
                .filter(m -> !m.field().isEmpty() && said.add(m.field()))
                .map(YearQuestions::question)
                .toList();
    }

    private static Finding question(Missing m) {
        return FindingBuilder.finding("entry-missing", Severity.NOTE, m.field().startsWith("/site") ? "site" : "plan")
                .found("the gallons of the year are unknown: no entry for " + m.words())
                .required(m.words())
                .reference("common practice", "", Confidence.MEMORY)
                .remedy("Enter " + m.words() + ".")
                .ask(AskWhom.OWNER, m.words() + "?")
                .at(m.field());
    }
}
