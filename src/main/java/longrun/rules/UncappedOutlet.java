package longrun.rules;

import java.util.ArrayList;
import java.util.List;
import longrun.plan.Section;

/** Topic caps: a section that feeds nothing is closed gastight. */
final class UncappedOutlet implements Rule {

    @Override
    public String name() {
        return "outlet-uncapped";
    }

    @Override
    public Precedence precedence() {
        return Precedence.MISSING;
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        List<Verdict> verdicts = new ArrayList<>();
        List<Section> sections = house.plan().sections();
        for (int i = 0; i < sections.size(); i++) {
            verdicts.add(judge(house, own, sections.get(i), i));
        }
        return verdicts;
    }

    private static Verdict judge(House house, Threshold own, Section section, int index) {
        Place place = new Place(section.id(), "/sections/" + index, "section " + section.id());
        String field = place.pointer() + "/capped";
        if (!house.network().feedsNothing(section.id())) {
            return Tell.notFor(own, place);
        }
        if (section.capped().is(true)) {
            return Tell.holds(own, place);
        }
        if (section.capped().isUnknown()) {
            return Tell.asks(
                    own,
                    place,
                    "{who} feeds nothing, and whether its end is capped is not entered",
                    Question.fitter("Is the end of {who} closed gastight with a cap or plug?"),
                    field);
        }
        return Tell.broken(
                own,
                place,
                "{who} feeds nothing and its end is open (capped: "
                        + section.capped().findText().orElse("") + ")",
                "Cap or plug the end of {who} before gas is let in.",
                field);
    }
}
