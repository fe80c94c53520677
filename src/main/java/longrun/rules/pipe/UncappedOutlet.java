package longrun.rules.pipe;

import longrun.finding.EntryName;
import longrun.plan.Section;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.SectionRule;
import longrun.rules.shape.Verdict;

/** Topic caps: a section that feeds nothing is closed gastight. */
public final class UncappedOutlet extends SectionRule {

    @Override
    public String name() {
        return "outlet-uncapped";
    }

    @Override
    public Verdict judge(House house, Threshold own, Section section, Place place) {
        String field = place.pointer() + "/capped";
        if (!house.network().feedsNothing(section.id())) {
            return Judge.notFor(own, place);
        }
        if (section.capped().is(true)) {
            return Judge.holds(own, place);
        }
        if (section.capped().isUnknown()) {
            return Judge.asks(
                    own,
                    place,
                    "{who} feeds nothing, and whether its end is capped is not entered",
                    Question.fitter("Is the end of {who} closed gastight with a cap or plug?"),
                    field);
        }
        return Judge.broken(
                own,
                place,
                "{who} feeds nothing and its end is open " + EntryName.entered("capped", section.capped()),
                "Cap or plug the end of {who} before gas is let in.",
                field);
    }
}
