package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import longrun.finding.EntryName;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;
import longrun.plan.choice.RegulatorVent;
import longrun.plan.choice.Setting;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Case;
import longrun.rules.shape.Cases;
import longrun.rules.shape.DistanceRule;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** Topic vent: what a regulator lets go of ends away from openings, flames, intakes and wet exhaust. */
public final class RegulatorVents {

    private RegulatorVents() {}

    public static List<Rule> rules() {
        return List.of(
                new VentIndoors(),
                rule(
                        "regulator-vent-ignition",
                        RegulatorVents::ignition,
                        Regulator::ventToIgnition,
                        "ventToIgnition",
                        "a source of ignition"),
                rule(
                        "regulator-vent-intake",
                        Regulators.eachOnTankSide(),
                        Regulator::ventToIntake,
                        "ventToIntake",
                        "a direct-vent opening or air intake"),
                new VentTerminalAtRegulator(),
                new VentTerminalAtAppliance());
    }

    static DistanceRule<Regulator> rule(
            String name,
            Cases<Regulator> where,
            Function<Regulator, Fact<Distance>> measure,
            String field,
            String thing) {
        return new DistanceRule<>(
                name,
                Precedence.PLACE,
                where,
                measure,
                field,
                State.HOLDS,
                new DistanceRule.Words(
                        "the vent of {who} is {entered} from " + thing,
                        "how far the vent of {who} is from the nearest " + thing.replaceFirst("^(an|a) ", "")
                                + " is not entered",
                        "Move the vent of {who} to {limit} or more from " + thing + ", or pipe it there.",
                        Question.fitter(
                                "How far is the relief outlet of {who} from " + thing + ", or is there none?")));
    }

    /** A line regulator's vent counts where it ends outdoors; a limiter lets nothing out worth a distance. */
    private static List<Case<Regulator>> ignition(House house) {
        List<Case<Regulator>> cases = new ArrayList<>();
        for (Regulators.At at : Regulators.listIn(house)) {
            Regulator r = at.regulator();
            if (!r.kind().isKnown()) {
                cases.add(Regulators.askKind(at));
            } else if (!r.kind().is(RegulatorKind.LINE)) {
                cases.add(Case.of(at.place(), r));
            } else if (r.vent().isUnknown()) {
                cases.add(LineRegulator.askVent(at.place()));
            } else if (r.vent().is(v -> v != RegulatorVent.LIMITER)) {
                cases.add(Case.of(at.place(), r, "line"));
            } else {
                cases.add(Case.notFor(at.place()));
            }
        }
        return cases;
    }

    /** Whether the relief of a regulator opens indoors, unless it is one that must not be there at all. */
    static boolean isReliefIndoors(Regulator r) {
        return r.kind().is(k -> k != RegulatorKind.LINE)
                && !Regulators.takesTankPressure(r)
                && r.setting().is(s -> s == Setting.INDOORS || s == Setting.CONCEALED);
    }

    /** The same, where its place is not entered and its relief is not known to be led outdoors. */
    private static boolean mayReliefBeIndoors(Regulator r) {
        return r.kind().is(k -> k != RegulatorKind.LINE)
                && !Regulators.takesTankPressure(r)
                && !r.setting().isKnown()
                && !r.vent().is(v -> v != RegulatorVent.LIMITER);
    }

    /** The distance to an opening below the relief; indoors the relief is piped outdoors first. */
    private static final class VentIndoors implements Rule {

        private final DistanceRule<Regulator> distance = rule(
                name(),
                Regulators.eachOnTankSide(),
                Regulator::ventToOpening,
                "ventToOpening",
                "a building opening below it");

        @Override
        public String name() {
            return "regulator-vent-opening";
        }

        @Override
        public List<Verdict> judge(House house) {
            List<Verdict> verdicts = new ArrayList<>(distance.judge(house));
            Threshold piped = house.limits().get(name(), "indoors");
            for (Regulators.At at : Regulators.listIn(house)) {
                Regulator r = at.regulator();
                if (isReliefIndoors(r)) {
                    verdicts.add(indoors(piped, at.place(), r.vent()));
                } else if (mayReliefBeIndoors(r)) {
                    verdicts.add(indoorsOrNot(piped, at.place(), r.vent()));
                }
            }
            return verdicts;
        }

        private static Verdict indoorsOrNot(Threshold piped, Place place, Fact<RegulatorVent> vent) {
            return Judge.asks(
                    piped,
                    place,
                    "whether {who} is indoors is not entered"
                            + (vent.isUnknown()
                                    ? ", nor where its vent goes"
                                    : ", and its relief is not piped outdoors " + EntryName.entered("vent", vent)),
                    Question.fitter("Is {who} indoors or outdoors, and does its vent end freely outdoors?"),
                    place.pointer() + (vent.isUnknown() ? "/vent" : "/setting"));
        }

        private static Verdict indoors(Threshold piped, Place place, Fact<RegulatorVent> vent) {
            String field = place.pointer() + "/vent";
            if (vent.isUnknown()) {
                return Judge.asks(
                        piped,
                        place,
                        "{who} is indoors, and where its vent goes is not entered",
                        Question.fitter("Is the vent of {who} piped outdoors?"),
                        field);
            }
            return vent.is(v -> v != RegulatorVent.LIMITER)
                    ? Judge.holds(piped, place)
                    : Judge.broken(
                            piped,
                            place,
                            "{who} is indoors and its relief is not piped outdoors " + EntryName.entered("vent", vent),
                            "Pipe the vent of {who} outdoors, or move the regulator outdoors.",
                            field);
        }
    }
}
