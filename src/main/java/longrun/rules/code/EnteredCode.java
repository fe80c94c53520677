package longrun.rules.code;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.plan.Code;
import longrun.plan.Code.Amendment;
import longrun.plan.Plan;
import longrun.rules.limit.Limits;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.limit.Thresholds;
import longrun.rules.shape.House;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** Topic code: which code decides, and what local amendments change. */
public final class EnteredCode implements Rule {

    private static final Place PLAN = new Place("plan", "", "the plan");

    @Override
    public String name() {
        return RuleName.ENTRY_MISSING.value();
    }

    @Override
    public Precedence precedence() {
        return Precedence.MISSING;
    }

    @Override
    public List<Verdict> judge(House house) {
        List<Verdict> verdicts = new ArrayList<>();
        verdicts.add(profile(house.plan()));
        List<Amendment> amendments = house.plan().code().map(Code::amendments).orElse(List.of());
        for (int i = 0; i < amendments.size(); i++) {
            verdicts.add(amendment(house, amendments.get(i), i + 1, "/code/amendments/" + i));
        }
        return verdicts;
    }

    private Verdict profile(Plan plan) {
        Place place = new Place(PLAN.at(), "/code/profile", PLAN.label());
        if (plan.code().filter(c -> c.profile().isKnown()).isPresent()) {
            return Verdict.of(name(), place, State.HOLDS);
        }
        return Verdict.of(
                name(),
                place,
                State.ASKS,
                note(
                        RuleName.ENTRY_MISSING,
                        "No code is entered; the plan is checked by the 2018 fuel gas code.",
                        "the code the inspector goes by: the 2018 fuel gas code, NFPA 54 and 58, or the plumbing code",
                        "Choose the code that is adopted where the house stands.",
                        Optional.of("Which fuel gas code is adopted here, and with which local amendments?"),
                        "/code/profile"));
    }

    private Verdict amendment(House house, Amendment a, int number, String pointer) {
        Place place = new Place(PLAN.at(), pointer, PLAN.label());
        Optional<String> rule = a.rule().findValue();
        List<Threshold> limits = rule.map(r -> Thresholds.builtIn().listOf(r)).orElse(List.of()).stream()
                .filter(Limits::isAmendable)
                .filter(t -> t.code().map(house.profile()::equals).orElse(true))
                .toList();
        if (limits.isEmpty()) {
            return asks(
                    place,
                    "Amendment " + number + " names no rule with a limit"
                            + rule.map(r -> " (rule: " + r + ")").orElse("") + ", so it changes nothing.",
                    "the public name of a rule with a distance or length",
                    pointer + "/rule");
        }
        if (!a.limit().isKnown()) {
            return asks(
                    place,
                    "The amendment of " + rule.orElseThrow() + " has no limit entered, so it changes nothing.",
                    "the amended distance or length with its unit",
                    pointer + "/limit");
        }
        return known(place, a, limits, pointer);
    }

    private Verdict known(Place place, Amendment a, List<Threshold> limits, String pointer) {
        String text = a.limit().findText().orElse("");
        String source = a.source().findText().orElse("source not entered");
        Optional<Threshold> looserThan = limits.stream()
                .filter(t -> t.amended(a.limit().findValue().orElseThrow().length(), text, source)
                        .isLooserThan(t))
                .findFirst();
        if (looserThan.isPresent()) {
            Threshold printed = looserThan.get();
            return Verdict.of(
                    name(),
                    place,
                    State.HOLDS,
                    note(
                            printed.name(),
                            "The local amendment (" + source + ") sets " + text + " where the code has "
                                    + printed.limitText() + ": it asks less than the code.",
                            "the amendment decides; the code's own text: " + printed.required() + ", "
                                    + printed.source(),
                            "Show the inspector the amendment.",
                            Optional.of("Is the amendment " + source + " in force here?"),
                            pointer + "/limit"));
        }
        return Verdict.of(name(), place, State.HOLDS);
    }

    private Verdict asks(Place place, String found, String required, String field) {
        return Verdict.of(
                name(),
                place,
                State.ASKS,
                note(
                        RuleName.ENTRY_MISSING,
                        found,
                        required,
                        "Enter it.",
                        Optional.of("What does the local amendment change, and to what?"),
                        field));
    }

    private static Finding note(
            RuleName rule, String found, String required, String remedy, Optional<String> ask, String field) {
        return FindingBuilder.finding(rule, Severity.NOTE, PLAN.at(), Citation.commonPractice())
                .found(found)
                .required(required)
                .remedy(remedy)
                .ask(AskWhom.INSPECTOR, ask)
                .atEntry(field);
    }
}
