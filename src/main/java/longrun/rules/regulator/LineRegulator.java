package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import longrun.finding.EntryName;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;
import longrun.plan.choice.RegulatorVent;
import longrun.plan.choice.Setting;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Case;
import longrun.rules.shape.FlagRule;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** Topic line regulator: its shutoff, tees, vent and access. */
public final class LineRegulator {

    private LineRegulator() {}

    public static List<Rule> rules() {
        return List.of(
                new FlagRule<>(
                        "line-regulator-shutoff",
                        Precedence.MISSING,
                        Regulators.eachLine(),
                        Regulator::shutoffBefore,
                        true,
                        "shutoffBefore",
                        new FlagRule.Words(
                                "no shutoff is fitted ahead of {who}",
                                "whether a shutoff is fitted ahead of {who} is not entered",
                                "Add a listed shutoff directly ahead of {who}.",
                                Question.fitter("Is a listed shutoff fitted directly ahead of {who}?"))),
                new Tees(),
                new Vent(),
                new FlagRule<>(
                        "line-regulator-access",
                        Precedence.PLACE,
                        Regulators.eachLine(),
                        Regulator::access,
                        true,
                        "access",
                        new FlagRule.Words(
                                "{who} cannot be reached",
                                "whether {who} can be reached is not entered",
                                "Move {who} to where it can be reached, or give it a removable panel.",
                                Question.fitter("Can {who} be reached for service?"))));
    }

    static <T> Case<T> askVent(Place place) {
        return Case.asks(
                place,
                "where the vent of {who} goes is not entered",
                Question.fitter("Is {who} vented outdoors, or is its listed vent limiter fitted?"),
                place.pointer() + "/vent");
    }

    /** A tee ahead for test and sediment, and one after it unless its one appliance has a test port. */
    private static final class Tees implements Rule {

        private static final FlagRule<Regulator> BEFORE = new FlagRule<>(
                "line-regulator-tee",
                Precedence.MISSING,
                Regulators.eachLine(),
                Regulator::teeBefore,
                true,
                "teeBefore",
                new FlagRule.Words(
                        "no tee is fitted between the shutoff and {who}",
                        "whether a tee is fitted between the shutoff and {who} is not entered",
                        "Add a tee with a plug between the shutoff and {who}.",
                        Question.fitter("Is a tee with a plug fitted between the shutoff and {who}?")));

        @Override
        public String name() {
            return "line-regulator-tee";
        }

        @Override
        public Precedence precedence() {
            return Precedence.MISSING;
        }

        @Override
        public List<Verdict> judge(House house) {
            List<Verdict> verdicts = new ArrayList<>(BEFORE.judge(house));
            Threshold after = house.limits().get(name(), "after");
            for (Regulators.At at : Regulators.listIn(house)) {
                if (at.regulator().kind().is(RegulatorKind.LINE)) {
                    verdicts.add(after(house, after, at));
                }
            }
            return verdicts;
        }

        private static Verdict after(House house, Threshold after, Regulators.At at) {
            Fact<Boolean> tee = at.regulator().teeAfter();
            String field = at.place().pointer() + "/teeAfter";
            if (tee.is(true)) {
                return Judge.holds(after, at.place());
            }
            boolean oneAppliance = house.network().servedBy(at.regulator().id()).appliances() == 1;
            if (tee.isUnknown() || oneAppliance) {
                return Judge.asks(
                        after,
                        at.place(),
                        (tee.isUnknown()
                                ? "whether a tee is fitted after {who} is not entered"
                                : "no tee is fitted after {who}, which serves one appliance"),
                        Question.fitter("Is a plugged tee fitted after {who}, or has its one appliance a test port in"
                                + " the same room?"),
                        field);
            }
            return Judge.broken(
                    after,
                    at.place(),
                    "no tee is fitted after {who} " + EntryName.entered("teeAfter", tee),
                    "Add a plugged tee at least 10 pipe diameters after {who}.",
                    field);
        }
    }

    /** Vented outdoors or through its limiter, and the limiter indoors only. */
    private static final class Vent implements Rule {

        @Override
        public String name() {
            return "line-regulator-vent";
        }

        @Override
        public Precedence precedence() {
            return Precedence.MISSING;
        }

        @Override
        public List<Verdict> judge(House house) {
            Threshold own = house.limits().get(name(), "");
            List<Verdict> verdicts = new ArrayList<>();
            for (Case<Regulator> at : Regulators.each().in(house)) {
                verdicts.add(at.findSettled(own).orElseGet(() -> {
                    Regulator r = at.thing().orElseThrow();
                    return r.kind().is(RegulatorKind.LINE)
                            ? vent(house, own, at.place(), r)
                            : relief(house.limits().get(name(), "relief"), at.place(), r);
                }));
            }
            return verdicts;
        }

        /** A regulator on the tank side has a relief, which a limiter would throttle. */
        private static Verdict relief(Threshold own, Place place, Regulator r) {
            String field = place.pointer() + "/vent";
            if (r.vent().isUnknown()) {
                return Judge.asks(
                        own,
                        place,
                        "whether the vent of {who} is free or has a limiter on it is not entered",
                        Question.fitter("Does the vent of {who} end freely outdoors, or is a vent limiter on it?"),
                        field);
            }
            if (!r.vent().is(RegulatorVent.LIMITER)) {
                return Judge.holds(own, place);
            }
            return RegulatorVents.isReliefIndoors(r)
                    ? Judge.brokenElsewhere(own, place) // piping the relief outdoors takes the limiter off
                    : Judge.broken(
                            own,
                            place,
                            "{who} has a vent limiter on it, which throttles its relief",
                            "Take the limiter off {who} and let its vent end freely, pointing down, outdoors.",
                            field);
        }

        private Verdict vent(House house, Threshold own, Place place, Regulator r) {
            String field = place.pointer() + "/vent";
            if (r.vent().isUnknown()) {
                return LineRegulator.<Regulator>askVent(place).findSettled(own).orElseThrow();
            }
            if (r.vent().isNone()) {
                return Judge.broken(
                        own,
                        place,
                        "{who} has neither a vent outdoors nor a vent limiter " + EntryName.entered("vent", "none"),
                        "Pipe the vent of {who} outdoors, or fit its listed vent limiter.",
                        field);
            }
            if (!r.vent().is(RegulatorVent.LIMITER)) {
                return Judge.holds(own, place);
            }
            if (!r.setting().isKnown()) {
                return Judge.asks(
                        house.limits().get(name(), "limiter-outdoors"),
                        place,
                        "{who} has a vent limiter, and whether it is indoors is not entered",
                        Question.fitter("Is {who} indoors or outdoors?"),
                        place.pointer() + "/setting");
            }
            return r.setting().is(Setting.OUTDOORS)
                    ? Judge.broken(
                            house.limits().get(name(), "limiter-outdoors"),
                            place,
                            "{who} is outdoors and has a vent limiter " + EntryName.entered("vent", "limiter"),
                            "Take the limiter off and let the vent of {who} point down.",
                            field)
                    : Judge.holds(own, place);
        }
    }
}
