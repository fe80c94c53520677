package longrun.rules.surroundings;

import java.util.ArrayList;
import java.util.List;
import longrun.plan.Appliance;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.choice.ApplianceVent;
import longrun.quantity.Length;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** The end of a vent through the wall stays clear of the ground and of the snow to be expected (VT-02). */
final class TerminalHeight implements Rule {

    private static final String GRADE = "grade";

    @Override
    public String name() {
        return "vent-terminal";
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), GRADE);
        Fact<Length> snow = Snow.at(house);
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < house.plan().appliances().size(); i++) {
            Appliance a = house.plan().appliances().get(i);
            Place place = house.appliance(i).inside("terminalAboveGrade");
            verdicts.add(judge(own, a, place, snow));
        }
        return verdicts;
    }

    private static Verdict judge(Threshold own, Appliance a, Place place, Fact<Length> snow) {
        if (!a.vent().is(v -> v == ApplianceVent.DIRECT || v == ApplianceVent.FAN)) {
            return a.vent().isUnknown() ? Verdict.of(own.rule(), place, State.ASKS) : Judge.notFor(own, place);
        }
        if (!a.terminalAboveGrade().isKnown()) {
            return Judge.asks(
                    own,
                    place,
                    "how high above the ground the {vent|vents} of {who} {ends|end} is not entered",
                    Question.fitter("How high above the ground {does|do} the {vent|vents} of {who} end?"),
                    place.pointer());
        }
        Distance height = a.terminalAboveGrade().findValue().orElseThrow();
        String entered = a.terminalAboveGrade().findText().orElse("");
        if (own.test(height) == State.BROKEN) {
            return broken(own, place, "the {vent|vents} of {who} {ends|end} " + entered + " above the ground");
        }
        if (snow.isUnknown()) {
            return Snow.ask(own, place);
        }
        double deep = snow.findValue().map(Length::feet).orElse(0.0);
        double above = height.length().feet() - deep;
        if (above < 0 && !height.orMore()) {
            return broken(own, place, under(entered, snow));
        }
        return switch (own.test(new Distance(Length.ofFeet(Math.max(0, above)), height.orMore()))) {
            case HOLDS -> Judge.holds(own, place);
            case ASKS ->
                Judge.asks(
                        own,
                        place,
                        under(entered, snow),
                        Question.fitter("How high above the ground {does|do} the {vent|vents} of {who} end?"),
                        place.pointer());
            default -> broken(own, place, under(entered, snow));
        };
    }

    private static String under(String entered, Fact<Length> snow) {
        return "the {vent|vents} of {who} {ends|end} " + entered + " above the ground, where snow lies "
                + snow.findText().orElse("") + " deep";
    }

    private static Verdict broken(Threshold own, Place place, String found) {
        return Judge.broken(
                own,
                place,
                found,
                "End the {vent|vents} of {who} {limit} or more above the ground and above the snow to be expected.",
                place.pointer());
    }
}
