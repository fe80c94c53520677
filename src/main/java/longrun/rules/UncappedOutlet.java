package longrun.rules;

import longrun.plan.Section;

/** Topic caps: a section that feeds nothing is closed gastight. */
final class UncappedOutlet extends SectionRule {

    @Override
    public String name() {
        return "outlet-uncapped";
    }

    @Override
    Verdict judge(House house, Threshold own, Section section, Place place) {
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
