package longrun.rules.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Leg;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.plan.choice.Direction;
import longrun.plan.choice.Material;
import longrun.plan.choice.Setting;
import longrun.quantity.Length;
import longrun.rules.limit.State;
import longrun.rules.shape.AskedOnce;
import longrun.rules.shape.Case;
import longrun.rules.shape.DistanceRule;
import longrun.rules.shape.House;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;

/**
 * How far apart pipe above ground is held, by material and size (PI-20, PI-21). CSST goes by its maker (PI-22). A piece
 * no longer than its spacing is held by its ends; tube and pipe from 1-1/4 in. that only rises is held at each floor.
 */
final class Support {

    private static final String NAME = "pipe-support";
    private static final List<String> STEEL = List.of("steel-half", "steel-three-quarter", "steel-large");
    private static final List<String> TUBE = List.of("tube-half", "tube-three-quarter", "tube-large");

    private Support() {}

    static Rule rule() {
        return AskedOnce.ofSections(new DistanceRule<>(
                NAME,
                Precedence.PLACE,
                Support::cases,
                s -> distance(s.supportEvery()),
                "supportEvery",
                State.BROKEN,
                new DistanceRule.Words(
                        "{who} {is|are} held every {entered}",
                        "how far apart the supports of {who} are is not entered",
                        "Hold it every {limit} or closer.",
                        Question.fitter("How far apart are the straps or hangers of {who}?"))));
    }

    private static Fact<Distance> distance(Fact<longrun.quantity.Length> length) {
        return length.fold(l -> Fact.known(Distance.of(l), length.findText().orElse("")), Fact::none, Fact::unknown);
    }

    private static List<Case<Section>> cases(House house) {
        List<Case<Section>> all = new ArrayList<>();
        for (int i = 0; i < house.plan().sections().size(); i++) {
            Section section = house.plan().sections().get(i);
            all.add(at(house, section, i, house.section(i)));
        }
        return all;
    }

    private static Case<Section> at(House house, Section section, int index, Place place) {
        if (section.setting().isUnknown()) {
            return Sections.askSetting(place);
        }
        boolean held = section.material().is(m -> m == Material.STEEL || m == Material.COPPER);
        if (!held && section.material().isKnown() || section.setting().is(Setting.UNDERGROUND)) {
            return Case.notFor(place);
        }
        if (!section.material().isKnown()) {
            return Case.asks(
                    place,
                    "what {who} {is|are} made of, which decides how far apart {it is|they are} held, is not entered",
                    Question.fitter("What {is|are} {who} made of?"),
                    place.pointer() + "/material");
        }
        List<String> rows = rows(house, section, index);
        Optional<Length> length = house.pressures().sizing().piping().measured(index);
        double least = rows.stream()
                .mapToDouble(
                        r -> house.limits().get(NAME, r).limit().orElseThrow().feet())
                .min()
                .orElseThrow();
        boolean upright = isUpright(section) && !rows.contains("steel-half") && !rows.contains("steel-three-quarter");
        if (upright || (length.isPresent() && length.get().feet() <= least)) {
            return Case.notFor(place);
        }
        return rows.size() == 1
                ? Case.of(place, section, rows.get(0))
                : Case.between(
                        place,
                        section,
                        rows,
                        new Case.Doubt(
                                "its size, which decides how far apart it is held, is not known",
                                Question.fitter("Which size is laid at {who}?"),
                                place.pointer() + "/installedSize"));
    }

    /** The rows its size could fall in: one where the size is known. */
    private static List<String> rows(House house, Section section, int index) {
        boolean steel = section.material().is(Material.STEEL);
        Optional<String> size = house.pressures().sizing().section(index).size().or(() -> inPlace(section));
        if (size.isEmpty()) {
            return steel ? STEEL : TUBE;
        }
        return List.of(steel ? steel(size.get()) : tube(size.get()));
    }

    /** The size entered where a table cannot say one, as with a load that is not known. */
    private static Optional<String> inPlace(Section section) {
        Material material = section.material().findValue().orElseThrow();
        return section.installedSize()
                .findValue()
                .or(() -> section.chosenSize().findValue())
                .map(written -> SizeNames.read(
                        material, written, List.of(written.strip().toLowerCase(Locale.ROOT))));
    }

    private static String steel(String size) {
        return switch (size) {
            case "1/2" -> STEEL.get(0);
            case "3/4", "1" -> STEEL.get(1);
            default -> STEEL.get(2);
        };
    }

    /** Nominal copper sizes; the table goes by the outside diameter, an eighth more. */
    private static String tube(String nominal) {
        return switch (nominal) {
            case "1/4", "3/8" -> TUBE.get(0);
            case "1/2", "5/8" -> TUBE.get(1);
            default -> TUBE.get(2);
        };
    }

    private static boolean isUpright(Section section) {
        List<Leg> legs = section.legs().findValue().orElse(List.of());
        return !legs.isEmpty()
                && legs.stream()
                        .allMatch(l -> l.direction()
                                .filter(d -> d == Direction.UP || d == Direction.DOWN)
                                .isPresent());
    }
}
