package longrun.rules.shutoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Appliance.Part;
import longrun.plan.Fact;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Case;
import longrun.rules.shape.FlagRule;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** The valve has access; away from the appliance it has ready access and a lasting label. */
final class ShutoffAccess implements Rule {

    private static final FlagRule.Words ACCESS = new FlagRule.Words(
            "the shutoff of {who} cannot be reached",
            "whether the shutoff of {who} can be reached is not entered",
            "Move the shutoff of {who} to where a hand reaches it, or give it a removable panel.",
            Question.fitter("Can the shutoff of {who} be reached, at most by moving the appliance or a panel?"));
    private static final FlagRule.Words READY = new FlagRule.Words(
            "the shutoff of {who}, away from the appliance, has no ready access",
            "whether the shutoff of {who}, away from the appliance, has ready access is not entered",
            "Move the shutoff of {who} to where it is reached with nothing to move and nothing to climb.",
            Question.fitter("Is the shutoff of {who} reached with nothing to move and nothing to climb?"));
    private static final FlagRule.Words LABEL = new FlagRule.Words(
            "the shutoff of {who}, away from the appliance, has no label",
            "whether the shutoff of {who}, away from the appliance, is labelled is not entered",
            "Fix a lasting label at the shutoff that names {who}.",
            Question.fitter("Does a lasting label at the shutoff name {who}?"));

    @Override
    public String name() {
        return "shutoff-access";
    }

    @Override
    public List<Verdict> judge(House house) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Hookup hookup : Hookup.listIn(house)) {
            Optional<Hookup.Fitted> valve = hookup.findShutoff();
            if (valve.isEmpty()) {
                Threshold own = house.limits().get(name(), "");
                verdicts.add(hookup.<Part>findUnseen("the shutoff")
                        .flatMap(c -> c.findSettled(own))
                        .orElseGet(() -> Judge.notFor(own, hookup.place())));
            } else if (Shutoff.isAway(hookup)) {
                Part part = valve.get().part();
                Place place = valve.get().place();
                boolean shut =
                        part.readyAccess().isUnknown() && part.accessible().is(false);
                verdicts.add(shut ? access(house, place, part) : ready(house, place, part));
                verdicts.add(flag(house, place, "labelled", part.labelled(), "labelled", LABEL));
            } else {
                verdicts.add(access(house, valve.get().place(), valve.get().part()));
            }
        }
        return verdicts;
    }

    private Verdict ready(House house, Place place, Part part) {
        return flag(house, place, "ready", part.readyAccess(), "readyAccess", READY);
    }

    /** Ready access is more than access. */
    private Verdict access(House house, Place place, Part part) {
        Fact<Boolean> entered =
                part.accessible().isUnknown() && part.readyAccess().is(true) ? part.readyAccess() : part.accessible();
        return flag(house, place, "", entered, "accessible", ACCESS);
    }

    private Verdict flag(
            House house, Place place, String variant, Fact<Boolean> entered, String field, FlagRule.Words words) {
        return new FlagRule<Fact<Boolean>>(
                        name(),
                        precedence(),
                        h -> List.of(Case.of(place, entered, variant)),
                        e -> e,
                        true,
                        field,
                        words)
                .judge(house)
                .get(0);
    }
}
