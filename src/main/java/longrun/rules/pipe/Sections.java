package longrun.rules.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import longrun.plan.Section;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Case;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/** The sections of a house, each at its place. */
final class Sections {

    private Sections() {}

    static List<Case<Section>> each(House house, BiFunction<Section, Place, Case<Section>> at) {
        List<Case<Section>> all = new ArrayList<>();
        List<Section> sections = house.plan().sections();
        for (int i = 0; i < sections.size(); i++) {
            all.add(at.apply(sections.get(i), house.section(i)));
        }
        return all;
    }

    /** Where a section runs decides what is asked of it. */
    static Case<Section> askSetting(Place place) {
        return Case.asks(place, WHERE, ask(), place.pointer() + "/setting");
    }

    static Verdict askSetting(Threshold own, Place place) {
        return Judge.asks(own, place, WHERE, ask(), place.pointer() + "/setting");
    }

    /** On which side of the point of delivery a section lies decides which row holds. */
    static Case.Doubt doubtOfSide(House house, Section section, Place place) {
        return new Case.Doubt(
                "whether it lies ahead of the last regulator is not clear",
                Question.supplier(
                        "Which regulators lie ahead of {who} and after {it|them}, and of which kind is each?"),
                house.network().findKindMissing(section.id()).orElse(place.pointer() + "/from"));
    }

    private static Question ask() {
        return Question.owner("Where {is|are} {who}: outdoors, in the ground, indoors in the open, or concealed?");
    }

    private static final String WHERE =
            "whether {who} {is|are} outdoors, in the ground, indoors or concealed is not entered";
}
