package longrun.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longrun.finding.Answer;
import longrun.finding.Finding;
import longrun.plan.Plan;
import longrun.plan.choice.Says;

/** Puts what whoever decides has said beside the findings it is about. The severity stays; four rules take no yes. */
public final class Answers {

    /** Rules nobody can accept a breach of. */
    public static final Set<String> NEVER_ACCEPTED =
            Set.of("gas-type", "outlet-uncapped", "pipe-plastic-indoors", "relief-valve-cut-off");

    private static final String LEFT_OUT = " Nobody can accept this one; the answer entered is left out.";

    private Answers() {}

    /** The findings with their answers; the last answer to a finding counts. Doing it twice changes nothing. */
    public static List<Finding> apply(Plan plan, List<Finding> findings) {
        Map<String, Answer> given = new HashMap<>();
        for (Plan.Answer a : plan.answers()) {
            if (a.rule().isKnown() && a.at().isKnown() && a.says().isKnown()) {
                given.put(
                        key(
                                a.rule().findValue().orElseThrow(),
                                a.at().findValue().orElseThrow()),
                        new Answer(
                                a.says().findValue().orElseThrow(),
                                a.who().findText().orElse(""),
                                a.date().findText().orElse("")));
            }
        }
        return findings.stream().map(f -> answered(f, given)).toList();
    }

    private static Finding answered(Finding finding, Map<String, Answer> given) {
        Answer answer = given.get(key(finding.rule(), finding.at()));
        if (answer == null) {
            return finding;
        }
        if (answer.says() == Says.ACCEPTED && NEVER_ACCEPTED.contains(finding.rule())) {
            return finding.withAnswerLeftOut(LEFT_OUT);
        }
        return finding.withAnswer(answer);
    }

    private static String key(String rule, String at) {
        return rule + " " + at;
    }
}
