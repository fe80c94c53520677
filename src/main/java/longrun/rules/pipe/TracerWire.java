package longrun.rules.pipe;

import java.util.ArrayList;
import java.util.List;
import longrun.finding.EntryName;
import longrun.piping.Side;
import longrun.plan.Section;
import longrun.quantity.Measure;
import longrun.quantity.WireGauge;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Case;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.SectionRule;
import longrun.rules.shape.Verdict;

/** A wire along buried plastic, so that it can be found before somebody digs (PI-15). */
final class TracerWire extends SectionRule {

    @Override
    public String name() {
        return "pipe-tracer-wire";
    }

    @Override
    public Verdict judge(House house, Threshold own, Section section, Place place) {
        if (!section.material().isKnown()) {
            return Verdict.of(name(), place, State.ASKS); // asked with the sizes
        }
        if (!section.material().is(m -> m.isPlastic())) {
            return Judge.notFor(own, place);
        }
        String field = place.pointer() + "/tracerWire";
        return section.tracerWire()
                .fold(
                        wire -> judge(house, section, place, wire, field),
                        () -> Judge.broken(
                                thickest(house, section),
                                place,
                                "no tracer wire lies along {who} " + EntryName.entered("tracerWire", "none"),
                                "Lay an insulated copper tracer wire along {who}, reachable at both ends.",
                                field),
                        () -> Judge.asks(
                                thickest(house, section),
                                place,
                                "whether a tracer wire lies along {who} is not entered",
                                Question.fitter(
                                        "Which tracer wire lies along {who}, and is it reachable at both ends?"),
                                field));
    }

    private Verdict judge(House house, Section section, Place place, WireGauge wire, String field) {
        List<Threshold> rows = rows(house, section);
        Threshold strict = thickest(house, section);
        String found = "the tracer wire along {who} is "
                + section.tracerWire().findText().orElse("");
        String remedy = "Lay " + strict.limitText() + " or thicker; " + "14 AWG meets every code.";
        if (wire.atLeastAsThickAs(needed(strict))) {
            return house.limits().listOthers(name(), strict.variant()).stream()
                    .filter(t -> !wire.atLeastAsThickAs(needed(t)))
                    .findFirst()
                    .map(other -> Judge.stricterElsewhere(strict, other, State.HOLDS, place, found, remedy, field))
                    .orElseGet(() -> Judge.holds(strict, place));
        }
        boolean enoughOnOneSide = rows.stream().anyMatch(t -> wire.atLeastAsThickAs(needed(t)));
        if (!enoughOnOneSide) {
            return Judge.broken(strict, place, found, remedy, field);
        }
        Case.Doubt doubt = Sections.doubtOfSide(house, section, place);
        return Judge.asks(strict, place, found + "; " + doubt.found(), doubt.question(), doubt.field());
    }

    private List<Threshold> rows(House house, Section section) {
        Side side = house.network().sideOf(section.id());
        List<Threshold> rows = new ArrayList<>();
        if (side != Side.HOUSE_SIDE) {
            rows.add(house.limits().get(name(), "tank"));
        }
        if (side != Side.TANK_SIDE) {
            rows.add(house.limits().get(name(), ""));
        }
        return rows;
    }

    /** The row that wants the thicker wire: the tank side's is never the thinner. */
    private Threshold thickest(House house, Section section) {
        return rows(house, section).get(0);
    }

    private static WireGauge needed(Threshold t) {
        return t.limitIn(Measure.WIRE);
    }
}
