package longrun.rules.pipe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longrun.finding.EntryName;
import longrun.plan.Section;
import longrun.plan.choice.Jacket;
import longrun.plan.choice.Material;
import longrun.quantity.Measure;
import longrun.quantity.WireGauge;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/**
 * CSST without an arc-resistant jacket is bonded once a dwelling, by a wire thick and short enough (PI-33). The bond may
 * be entered at any section, since its clamp sits on rigid pipe or a fitting; it is told at the first that needs it.
 */
final class CsstBonding implements Rule {

    private static final String BONDING = "/bonding";

    @Override
    public String name() {
        return "pipe-csst-bonding";
    }

    @Override
    public List<Verdict> judge(House house) {
        List<Verdict> verdicts = new ArrayList<>();
        List<Section> sections = house.plan().sections();
        Optional<String> first = sections.stream()
                .filter(s -> mayNeedIt(s) && s.material().isKnown())
                .map(Section::id)
                .min(Comparator.naturalOrder()); // by name, whatever the list's order
        Optional<Verdict> told = first.map(id -> judge(house, sections, at(house, id)));
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            Place place = house.section(i);
            if (!mayNeedIt(section)) {
                verdicts.add(Judge.notFor(row(house, ""), place));
            } else if (!section.material().isKnown()) {
                verdicts.add(Verdict.of(name(), place, State.ASKS)); // asked with the sizes
            } else {
                Verdict verdict = told.orElseThrow();
                boolean here = first.filter(section.id()::equals).isPresent();
                verdicts.add(
                        here
                                ? verdict
                                : Verdict.of(name(), place, verdict.state().state()));
            }
        }
        return verdicts;
    }

    private static Place at(House house, String id) {
        for (int i = 0; i < house.plan().sections().size(); i++) {
            if (house.section(i).at().equals(id)) {
                return house.section(i);
            }
        }
        throw new IllegalArgumentException("no section " + id);
    }

    private static boolean mayNeedIt(Section s) {
        return !s.material().isKnown()
                || (s.material().is(Material.CSST) && !s.jacket().is(Jacket.ARC_RESISTANT));
    }

    private Threshold row(House house, String variant) {
        return house.limits().get(name(), variant);
    }

    private Verdict judge(House house, List<Section> sections, Place place) {
        Optional<Integer> bond = bonded(sections);
        if (bond.isPresent()) {
            int at = bond.get();
            return wire(house, sections.get(at), house.section(at), place);
        }
        boolean plain = sections.stream()
                .anyMatch(s -> s.material().is(Material.CSST) && s.jacket().is(Jacket.PLAIN));
        boolean none = sections.stream().anyMatch(s -> s.bonding().isNone());
        if (!plain) {
            return Judge.asks(
                    row(house, ""),
                    place,
                    "whether the jacket of the corrugated tubing at {who} is arc-resistant is not entered",
                    Question.fitter(
                            "Is the corrugated tubing at {who}, by the print on it, plain yellow or jacketed against arcs?"),
                    place.pointer() + "/jacket");
        }
        return none
                ? Judge.broken(
                        row(house, ""),
                        place,
                        "the corrugated tubing at {who} is not bonded " + EntryName.entered("bonding", "none"),
                        "Have an electrician bond it to the grounding system with 6 AWG copper or thicker, the clamp on"
                                + " rigid pipe or a fitting.",
                        place.pointer() + BONDING)
                : Judge.asks(
                        row(house, ""),
                        place,
                        "whether the corrugated tubing at {who} is bonded is not entered",
                        Question.fitter(
                                "With which wire is the corrugated tubing bonded, how long is it, and where is its"
                                        + " clamp?"),
                        place.pointer() + BONDING);
    }

    /** The section with the thickest bond entered. */
    private static Optional<Integer> bonded(List<Section> sections) {
        Comparator<Integer> byWire = Comparator.<Integer, Double>comparing(i -> sections.get(i)
                        .bonding()
                        .findValue()
                        .map(WireGauge::awg)
                        .orElse(Double.MAX_VALUE))
                .thenComparing(i -> sections.get(i).id());
        return java.util.stream.IntStream.range(0, sections.size())
                .boxed()
                .filter(i -> sections.get(i).bonding().isKnown())
                .min(byWire);
    }

    private Verdict wire(House house, Section bonded, Place at, Place first) {
        Threshold gauge = row(house, "wire");
        Threshold length = row(house, "length");
        String remedy = "Bond it with 6 AWG copper or thicker, at most 75 ft to the grounding system.";
        if (!bonded.bonding().is(w -> w.atLeastAsThickAs(gauge.limitIn(Measure.WIRE)))) {
            return told(
                    gauge,
                    first,
                    "the bonding wire entered at {who} is "
                            + bonded.bonding().findText().orElse(""),
                    remedy,
                    at,
                    BONDING);
        }
        return bonded.bondingLength()
                .fold(
                        l -> length.test(longrun.plan.Distance.of(l)) == State.HOLDS
                                ? Judge.holds(gauge, first)
                                : told(
                                        length,
                                        first,
                                        "the bonding wire entered at {who} is "
                                                + bonded.bondingLength()
                                                        .findText()
                                                        .orElse("") + " long",
                                        remedy,
                                        at,
                                        "/bondingLength"),
                        () -> askLength(length, first, at),
                        () -> askLength(length, first, at));
    }

    private static Verdict told(Threshold own, Place first, String found, String remedy, Place at, String field) {
        return Judge.broken(own, first, found.replace("{who}", at.label()), remedy, at.pointer() + field);
    }

    private static Verdict askLength(Threshold own, Place first, Place at) {
        return Judge.asks(
                own,
                first,
                "how long the bonding wire entered at " + at.label() + " is, is not entered",
                Question.fitter("How long is the bonding wire from its clamp to the grounding system?"),
                at.pointer() + "/bondingLength");
    }
}
