package longrun.rules.pipe;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.finding.EntryName;
import longrun.plan.Section;
import longrun.plan.choice.Joint;
import longrun.plan.choice.Material;
import longrun.plan.choice.Named;
import longrun.plan.choice.Tube;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.AskedOnce;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.SectionRule;
import longrun.rules.shape.Verdict;

/** Which copper tube carries gas, and how it is joined (PI-01, PI-02). */
final class CopperTube {

    /** Press fittings count only as fittings listed for gas (LC4), which PI-05 names. */
    private static final Set<Joint> FIT = EnumSet.of(Joint.BRAZED, Joint.FLARED, Joint.PRESS);

    private CopperTube() {}

    static List<Rule> rules() {
        return List.of(AskedOnce.ofSections(new Type()), AskedOnce.ofSections(new Joints()));
    }

    /** A rule of copper alone. */
    private abstract static class OfCopper extends SectionRule {

        @Override
        public final Verdict judge(House house, Threshold own, Section section, Place place) {
            if (!section.material().isKnown()) {
                return Verdict.of(name(), place, State.ASKS); // asked with the sizes
            }
            return section.material().is(Material.COPPER)
                    ? judgeCopper(house, own, section, place)
                    : Judge.notFor(own, place);
        }

        abstract Verdict judgeCopper(House house, Threshold own, Section section, Place place);
    }

    /** Type K, L or ACR. */
    static final class Type extends OfCopper {

        @Override
        public String name() {
            return "pipe-copper-type";
        }

        @Override
        Verdict judgeCopper(House house, Threshold own, Section section, Place place) {
            String field = place.pointer() + "/tube";
            if (section.tube().is(Tube.M)) {
                return Judge.broken(
                        own,
                        place,
                        "the copper of {who} is Type M, whose wall is too thin " + EntryName.entered("tube", "M"),
                        "Lay Type K or L, or refrigeration tube (ACR).",
                        field);
            }
            return section.tube().isKnown()
                    ? Judge.holds(own, place)
                    : Judge.asks(
                            own,
                            place,
                            "the type of copper tube of {who} is not entered",
                            Question.fitter("Which copper, by the print on it, is laid at {who}: Type K, L, M or ACR?"),
                            field);
        }
    }

    /** Brazed or flared; never soft solder. */
    static final class Joints extends OfCopper {

        private static final String REMEDY = "Braze the joints of {who} or make them as flares.";

        @Override
        public String name() {
            return "pipe-copper-joint";
        }

        @Override
        Verdict judgeCopper(House house, Threshold own, Section section, Place place) {
            String field = place.pointer() + "/joints";
            List<Joint> joints = section.joints().findValue().orElse(List.of());
            Set<Joint> wrong = joints.stream()
                    .filter(j -> !FIT.contains(j))
                    .collect(Collectors.toCollection(() -> EnumSet.noneOf(Joint.class)));
            if (wrong.contains(Joint.SOLDERED) || wrong.contains(Joint.THREADED)) {
                wrong.remove(Joint.COMPRESSION);
                return Judge.broken(own, place, "copper of {who} has " + words(wrong) + " joints", REMEDY, field);
            }
            if (!wrong.isEmpty()) {
                return Judge.brokenAsking(
                        house.limits().get(name(), "compression"),
                        place,
                        "copper of {who} has compression joints",
                        REMEDY,
                        Question.inspector("Are the compression fittings of {who} approved for gas here?"),
                        field);
            }
            return joints.isEmpty()
                    ? Judge.asks(
                            own,
                            place,
                            "how the copper of {who} is joined is not entered",
                            Question.fitter("How is the copper of {who} joined: brazed, flared or in another way?"),
                            field)
                    : Judge.holds(own, place);
        }

        private static String words(Set<Joint> joints) {
            return joints.stream().map(Named::written).collect(Collectors.joining(", "));
        }
    }
}
