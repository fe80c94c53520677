package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** Told at the regulator. */
final class VentTerminalAtRegulator implements Rule {

    @Override
    public String name() {
        return VentTerminal.AT_REGULATOR;
    }

    @Override
    public List<Verdict> judge(House house) {
        VentTerminal all = new VentTerminal(house);
        double atAppliances = all.smallestAtAppliances();
        State side = all.bySide(all.appliances.stream().map(all::own).toList());
        List<Verdict> verdicts = new ArrayList<>();
        for (Regulators.At at : Regulators.listIn(house)) {
            Threshold main = all.limit(name(), all.direct || all.unknown ? "" : VentTerminal.FAN);
            if (!at.regulator().kind().isKnown()) {
                verdicts.add(Regulators.<Regulator>askKind(at).findSettled(main).orElseThrow());
            } else if (!all.hasTerminal()) {
                verdicts.add(Judge.notFor(main, at.place()));
            } else if (VentTerminal.mayVentOutdoors(at.regulator())) {
                verdicts.add(perhaps(all, main, at, side, atAppliances));
            } else if (!VentTerminal.isVentOutdoors(at.regulator())) {
                verdicts.add(Judge.notFor(main, at.place()));
            } else {
                verdicts.add(judge(all, main, at, side, atAppliances));
            }
        }
        return verdicts;
    }

    /** A line regulator whose place is not entered: far enough outdoors is far enough. */
    private static Verdict perhaps(
            VentTerminal all, Threshold main, Regulators.At at, State side, double atAppliances) {
        Fact<Distance> measured = at.regulator().ventToVentTerminal();
        boolean theirs = all.regulators.isEmpty() && atAppliances < VentTerminal.feet(measured);
        return all.own(measured).orElse(side) == State.HOLDS && !theirs
                ? Judge.holds(main, at.place())
                : Judge.asks(
                        main,
                        at.place(),
                        "whether {who} is outdoors, where its vent keeps away from an appliance's vent terminal, is"
                                + " not entered",
                        Question.fitter("Is {who} indoors or outdoors?"),
                        at.place().pointer() + "/setting");
    }

    private static Verdict judge(VentTerminal all, Threshold main, Regulators.At at, State side, double atAppliances) {
        Fact<Distance> measured = at.regulator().ventToVentTerminal();
        Optional<State> own = all.own(measured);
        String field = at.place().pointer() + "/ventToVentTerminal";
        Question question = Question.fitter(
                "How far is the relief outlet of {who} from the nearest vent terminal of an appliance, or is there"
                        + " none?");
        if (own.isEmpty()) {
            return switch (side) {
                case HOLDS -> Judge.holds(main, at.place());
                case BROKEN -> Judge.brokenElsewhere(main, at.place());
                default ->
                    Judge.asks(
                            main,
                            at.place(),
                            "how far the vent of {who} is from the nearest vent terminal of an appliance is not"
                                    + " entered",
                            question,
                            field);
            };
        }
        boolean theirs = all.regulators.size() == 1 && atAppliances < VentTerminal.feet(measured);
        return switch (own.get()) {
            case HOLDS -> theirs ? Judge.brokenElsewhere(main, at.place()) : Judge.holds(main, at.place());
            case BROKEN ->
                theirs
                        ? Judge.brokenElsewhere(main, at.place())
                        : Judge.broken(
                                main,
                                at.place(),
                                all.found(measured, "the vent of {who} is {entered} from an appliance's vent terminal"),
                                "Move the vent of {who} to {limit} or more from the vent terminal, or pipe it"
                                        + " there.",
                                field);
            default -> {
                boolean mixed = (all.fan && all.direct) || all.unknown;
                yield Judge.asks(
                        main,
                        at.place(),
                        all.found(measured, "the vent of {who} is {entered} from the nearest vent terminal")
                                + (mixed ? "; whether that is a direct-vent one is not clear" : ""),
                        mixed ? Question.fitter("How far is {who} from the nearest direct-vent terminal?") : question,
                        mixed ? all.fieldThatDecides(field) : field);
            }
        };
    }
}
