package longrun.rules.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import longrun.finding.EntryName;
import longrun.plan.Section;
import longrun.plan.choice.Material;
import longrun.plan.choice.Setting;
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

/** Pipe within a wall or floor: what keeps nails from it, and which fittings may be where no hand reaches (PI-05, PI-06). */
final class Concealed {

    private Concealed() {}

    static List<Rule> rules() {
        return List.of(AskedOnce.ofSections(new Protection()), AskedOnce.ofSections(new Fittings()));
    }

    /** Far from the face of the stud, or behind a steel plate; steel pipe needs neither. */
    static final class Protection extends SectionRule {

        private static final String REMEDY =
                "Nail a steel plate (16 gauge or thicker) over {who} at each stud and plate,"
                        + " 4 in. beyond the member.";

        @Override
        public String name() {
            return "pipe-protection";
        }

        @Override
        public Verdict judge(House house, Threshold own, Section section, Place place) {
            if (section.setting().isUnknown()) {
                return Sections.askSetting(own, place);
            }
            if (!section.setting().is(Setting.CONCEALED) || section.material().is(Material.STEEL)) {
                return Judge.notFor(own, place);
            }
            if (!section.material().isKnown()) {
                return Verdict.of(name(), place, State.ASKS); // asked with the sizes
            }
            if (section.plates().is(true) || section.fromStuds().is(d -> own.test(d) == State.HOLDS)) {
                return Judge.holds(own, place);
            }
            boolean near = section.fromStuds().isNone() || section.fromStuds().is(d -> own.test(d) == State.BROKEN);
            boolean bare = section.plates().is(false) || section.plates().isNone();
            String face = section.fromStuds()
                    .fold(
                            d -> section.fromStuds().findText().orElse("") + " from the face",
                            () -> "at the face",
                            () -> "");
            if (near && bare) {
                return Judge.broken(
                        own,
                        place,
                        "{who} {is|are} " + face + " of the studs, without plates",
                        REMEDY,
                        place.pointer() + "/fromStuds");
            }
            return near
                    ? Judge.asks(
                            own,
                            place,
                            "whether steel plates cover {who}, which {is|are} " + face + ", is not entered",
                            Question.fitter("Do steel plates cover {who} at each stud, joist and plate?"),
                            place.pointer() + "/plates")
                    : Judge.asks(
                            own,
                            place,
                            "how far from the face of studs and joists {who} {runs|run} is not entered",
                            Question.fitter(
                                    "How far behind the face of studs and joists {is|are} {who}, at the nearest?"),
                            place.pointer() + "/fromStuds");
        }
    }

    /** Fittings that cannot work loose. */
    static final class Fittings extends SectionRule {

        private static final Set<String> FIT = Set.of(
                "elbow",
                "elbow-90",
                "elbow-45",
                "tee",
                "tee-branch",
                "coupling",
                "threaded",
                "threaded-elbow",
                "threaded-tee",
                "threaded-coupling",
                "brazed",
                "welded",
                "press",
                "listed",
                "csst-fitting");
        private static final List<String> BARRED = List.of(
                "union", "right-left", "left-right", "bushing", "compression", "flare", "swing", "valve", "soldered");

        @Override
        public String name() {
            return "pipe-concealed-fitting";
        }

        private static String spoken(List<String> fittings) {
            return fittings.stream().map(EntryName::spoken).collect(Collectors.joining(", "));
        }

        @Override
        public Verdict judge(House house, Threshold own, Section section, Place place) {
            String field = place.pointer() + "/fittingsConcealed";
            List<String> entered = section.fittingsConcealed().findValue().orElse(List.of());
            List<String> barred = new ArrayList<>();
            List<String> open = new ArrayList<>();
            for (String fitting : entered) {
                String name = fitting.toLowerCase(Locale.ROOT).strip().replace(' ', '-');
                if (BARRED.stream().anyMatch(name::contains)) {
                    barred.add(fitting);
                } else if (!FIT.contains(name)) {
                    open.add(fitting);
                }
            }
            if (!barred.isEmpty()) {
                return Judge.broken(
                        own,
                        place,
                        "a fitting of {who} that can work loose is concealed: " + spoken(barred),
                        "Move it to where it can be reached, or braze, weld or thread the joint.",
                        field);
            }
            if (section.setting().isUnknown()) {
                return Sections.askSetting(own, place);
            }
            if (!section.setting().is(Setting.CONCEALED)) {
                return Judge.notFor(own, place);
            }
            if (!open.isEmpty()) {
                return Judge.asks(
                        own,
                        place,
                        "whether a concealed fitting of {who} is listed for it is not known: " + spoken(open),
                        Question.inspector("Is this allowed inside a wall or floor at {who}: " + spoken(open) + "?"),
                        field);
            }
            return section.fittingsConcealed().isUnknown()
                    ? Judge.asks(
                            own,
                            place,
                            "which fittings of {who} are concealed is not entered",
                            Question.fitter("Which fittings of {who} are inside walls, floors or ceilings?"),
                            field)
                    : Judge.holds(own, place);
        }
    }
}
