package longrun.rules.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.piping.Side;
import longrun.plan.Appliance;
import longrun.plan.Section;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.CodeProfile;
import longrun.plan.choice.Material;
import longrun.plan.choice.Setting;
import longrun.plan.choice.Under;
import longrun.rules.limit.State;
import longrun.rules.shape.AskedOnce;
import longrun.rules.shape.Case;
import longrun.rules.shape.DistanceRule;
import longrun.rules.shape.FlagRule;
import longrun.rules.shape.House;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;

/**
 * How deep pipe lies, and what keeps buried steel from rusting (PI-13, PI-14, PI-17). The tank side is NFPA 58's. Less
 * cover for a single line to an outdoor light or grill is the authority's to allow, so it stays a caution.
 */
final class Burial {

    private static final String DEPTH = "pipe-burial-depth";

    private Burial() {}

    static List<Rule> rules() {
        return List.of(
                AskedOnce.ofSections(new DistanceRule<>(
                        DEPTH,
                        Precedence.PLACE,
                        Burial::cases,
                        Section::depth,
                        "depth",
                        State.BROKEN,
                        new DistanceRule.Words(
                                "{who} {lies|lie} under {entered} of cover",
                                "how deep the top of {who} lies is not entered",
                                "Lay it with {limit} or more of cover, measured to the top of the pipe.",
                                Question.fitter("How much cover is over the top of {who}?")))),
                AskedOnce.ofSections(new FlagRule<>(
                        "pipe-coating",
                        Precedence.PLACE,
                        house -> steel(house),
                        Section::coated,
                        true,
                        "coated",
                        new FlagRule.Words(
                                "{who} {is|are} bare steel in the ground",
                                "whether the buried steel of {who} is coated is not entered",
                                "Lay factory-coated pipe and wrap every fitting and joint; galvanizing alone does not do.",
                                Question.fitter(
                                        "Is the buried steel of {who} factory-coated, its fittings wrapped too?")))));
    }

    private static List<Case<Section>> cases(House house) {
        return Sections.each(house, (section, place) -> {
            if (section.setting().isUnknown()) {
                return Sections.askSetting(place);
            }
            if (!section.setting().is(Setting.UNDERGROUND)) {
                return Case.notFor(place);
            }
            List<String> variants = variants(house, section);
            return variants.size() == 1
                    ? Case.of(place, section, variants.get(0))
                    : Case.between(place, section, variants, doubt(house, section, place));
        });
    }

    /** The rows that could hold: by the side it is on, what it is, and what drives over it. */
    private static List<String> variants(House house, Section section) {
        if (isShallowSmallLine(house, section)) {
            return List.of("small-line");
        }
        List<String> kinds = new ArrayList<>();
        Side side = house.network().sideOf(section.id());
        if (side != Side.TANK_SIDE) {
            if (!section.material().is(Material::isPlastic)) {
                kinds.add("");
            }
            if (section.material().is(Material::isPlastic)
                    || !section.material().isKnown()) {
                kinds.add("plastic");
            }
        }
        if (side != Side.HOUSE_SIDE) {
            kinds.add("tank");
        }
        List<String> all = new ArrayList<>();
        for (String kind : kinds) {
            if (!section.under().is(Under.DRIVE)) {
                all.add(kind);
            }
            if (section.under().is(Under.DRIVE) || section.under().isUnknown()) {
                all.add(kind.isEmpty() ? "drive" : kind + "-drive");
            }
        }
        return all;
    }

    private static Case.Doubt doubt(House house, Section section, Place place) {
        if (section.under().isUnknown()) {
            return new Case.Doubt(
                    "whether a drive or a building lies over it is not entered",
                    Question.fitter("{Does|Do} {who} pass under a building, a slab or a drive anywhere?"),
                    place.pointer() + "/under");
        }
        if (house.network().sideOf(section.id()) == Side.UNKNOWN) {
            return Sections.doubtOfSide(house, section, place);
        }
        return new Case.Doubt(
                "whether it is plastic is not entered",
                Question.fitter("What {is|are} {who} made of?"),
                place.pointer() + "/material");
    }

    private static boolean isShallowSmallLine(House house, Section section) {
        List<Appliance> fed = house.network().listFedBy(section.id());
        return house.profile() == CodeProfile.FUEL_GAS_2018
                && house.network().sideOf(section.id()) == Side.HOUSE_SIDE
                && fed.size() == 1
                && fed.get(0).kind().is(k -> k == ApplianceKind.OUTDOOR_GRILL || k == ApplianceKind.LIGHT)
                && section.depth()
                        .is(d -> house.limits().get(DEPTH, "small-line-least").test(d) == State.HOLDS);
    }

    private static List<Case<Section>> steel(House house) {
        return Sections.each(house, (section, place) -> {
            if (section.setting().isUnknown()) {
                return Sections.askSetting(place);
            }
            if (!section.material().isKnown() && section.setting().is(Setting.UNDERGROUND)) {
                return Case.asks(
                        place,
                        "what the buried pipe of {who} is made of is not entered",
                        Question.fitter("What {is|are} {who} made of?"),
                        place.pointer() + "/material");
            }
            Optional<Section> buried = Optional.of(section)
                    .filter(s ->
                            s.setting().is(Setting.UNDERGROUND) && s.material().is(Material.STEEL));
            return buried.map(s -> Case.of(place, s)).orElseGet(() -> Case.notFor(place));
        });
    }
}
