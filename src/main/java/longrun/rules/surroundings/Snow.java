package longrun.rules.surroundings;

import longrun.plan.Fact;
import longrun.plan.Site;
import longrun.quantity.Length;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/** How deep snow lies: asked once, of the site, whichever rule wants to know. */
final class Snow {

    private static final Place SITE = new Place("site", "/site", "the house");

    private Snow() {}

    static Fact<Length> at(House house) {
        return house.plan().site().map(Site::snowDepth).orElse(Fact.unknown());
    }

    /** The question, told at the site; the rule stays open at its own place. */
    static Verdict ask(Threshold own, Place place) {
        Verdict asked = Judge.asks(
                own,
                SITE,
                "how deep snow lies at {who} is not entered; vents end and regulators hang above it",
                Question.owner("How deep does snow lie at {who} in a hard winter, or is there none?"),
                "/site/snowDepth");
        return asked.at(place);
    }
}
