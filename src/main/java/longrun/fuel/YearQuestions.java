package longrun.fuel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.ListWords;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.hotwater.ColdWater;
import longrun.origin.Missing;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.tank.SpaceHeating;

/** What the year asks for, and which starting values stand in for entries, once anything of the year is entered. */
public final class YearQuestions {

    private YearQuestions() {}

    /**
     * A question for each entry that the gallons of the year wait for, all that would be entered there in one; and a note at
     * each field a starting value stands in for. None for a plan that says nothing of its use.
     *
     * @param asked entries that something else asks for already
     */
    public static List<Finding> of(Plan plan, FuelReport report, Set<String> asked) {
        if (plan.use().isEmpty()) {
            return List.of();
        }
        List<Finding> out = new ArrayList<>();
        Map<String, Set<String>> words = new TreeMap<>();
        report.annualGal().missing().stream()
                .filter(m -> !m.field().isEmpty() && !asked.contains(m.field()))
                .forEach(m ->
                        words.computeIfAbsent(m.field(), f -> new TreeSet<>()).add(m.words()));
        words.forEach((field, all) -> out.add(question(new Missing(field, ListWords.all(List.copyOf(all))))));
        startingValues(plan, out);
        return List.copyOf(out);
    }

    private static Finding question(Missing m) {
        return FindingBuilder.finding(
                        RuleName.ENTRY_MISSING,
                        Severity.NOTE,
                        m.field().startsWith("/site") ? "site" : "plan",
                        Citation.commonPractice())
                .found("the gallons of the year are not known. Still to be entered: " + m.called())
                .required(m.words())
                .remedy("Enter " + m.called() + ".")
                .ask(AskWhom.OWNER, m.question())
                .atEntry(m.field());
    }

    private static void startingValues(Plan plan, List<Finding> out) {
        Use use = plan.use().orElseThrow();
        if (!use.heating().isEmpty() && !use.indoorTemp().isKnown()) {
            out.add(standsIn(
                    "plan",
                    "/use/indoorTemp",
                    "68 degF stands in for the indoor air",
                    "the temperature the house is kept at",
                    "How warm is the house kept in winter, in degF?"));
        }
        List<SpaceHeating> heaters = SpaceHeating.of(plan);
        for (int i = 0; i < heaters.size(); i++) {
            if (!use.heating().get(i).balanceTemp().isKnown()) {
                out.add(standsIn(
                        "plan",
                        "/use/heating/" + i + "/balanceTemp",
                        "65 degF, the base of published degree days, stands in for the balance point; the year reads"
                                + " high",
                        "the outdoor temperature under which the house is heated",
                        "Below which outdoor temperature does the heating start, in degF?"));
            }
        }
        if (use.hotWater().isPresent()
                && ColdWater.mainsAssumed(plan)
                && ColdWater.of(plan).isKnown()) {
            out.add(standsIn(
                    "site",
                    "/site/coldWater/source",
                    "cold water is taken as town mains have it, and a well is another thing",
                    "where the cold water is from, mains or well, and its temperature",
                    "Does the cold water come from the town's mains or from a well?"));
        }
    }

    private static Finding standsIn(String at, String field, String found, String required, String question) {
        return FindingBuilder.finding(RuleName.ENTRY_MISSING, Severity.NOTE, at, Citation.commonPractice())
                .found(found + ", since none is entered")
                .required(required)
                .remedy("Enter " + required + ".")
                .ask(AskWhom.OWNER, question)
                .atEntry(field);
    }
}
