package longrun.rules.connector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.finding.EntryName;
import longrun.plan.Appliance.Part;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.choice.Material;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.RegulatorKind;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.regulator.Regulators;
import longrun.rules.shape.Case;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;
import longrun.rules.trap.SedimentTrap;

/** Rigid pipe comes apart at a union: near the appliance, and near a line regulator. */
final class UnionAtRigidPipe implements Rule {

    private static final Question HOW =
            Question.fitter("How is {who} connected: rigid pipe with a union, or a flexible connector?");

    @Override
    public String name() {
        return "union-at-rigid-pipe";
    }

    @Override
    public Precedence precedence() {
        return Precedence.MISSING;
    }

    @Override
    public List<Verdict> judge(House house) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Regulators.At at : Regulators.listIn(house)) {
            if (at.regulator().kind().is(RegulatorKind.LINE)) {
                verdicts.add(atLineRegulator(house, at));
            }
        }
        Threshold own = house.limits().get(name(), "");
        for (Hookup hookup : Hookup.listIn(house)) {
            verdicts.add(atAppliance(house, own, hookup));
        }
        return verdicts;
    }

    private Verdict atAppliance(House house, Threshold own, Hookup hookup) {
        if (hookup.has(PartKind.FLEXIBLE_CONNECTOR)) {
            return Judge.notFor(own, hookup.place());
        }
        Optional<Case<Part>> unseen = hookup.findUnseen("the connection");
        List<Hookup.Fitted> unions = hookup.listOf(PartKind.UNION);
        if (!unions.isEmpty()) {
            return atUnion(house, own, unions.get(0));
        }
        if (unseen.isPresent()) {
            return unseen.get().findSettled(own).orElseThrow();
        }
        if (hookup.has(PartKind.RIGID_PIPE)) {
            return Judge.broken(
                    own,
                    hookup.place(),
                    "{who} is piped rigidly and has no union",
                    "Add a union after the shutoff at {who}.",
                    hookup.connectionPointer());
        }
        boolean steel = hookup.appliance()
                .fedBy()
                .findValue()
                .flatMap(house.network()::findSection)
                .filter(s -> s.material().is(Material.STEEL))
                .isPresent();
        return steel
                ? Judge.asks(
                        own,
                        hookup.place(),
                        "steel pipe ends at {who}, and how it is connected is not entered",
                        HOW,
                        hookup.connectionPointer())
                : Judge.notFor(own, hookup.place());
    }

    /** Distance and access of a union are judged where they are entered. */
    private Verdict atUnion(House house, Threshold own, Hookup.Fitted union) {
        Threshold near = house.limits().get(name(), "distance");
        Fact<Distance> distance = union.part().distance();
        if (distance.is(d -> near.test(d) == State.BROKEN)) {
            return Judge.broken(
                    near,
                    union.place(),
                    "the union of {who} is " + distance.findText().orElse("") + " from it",
                    "Move the union of {who} to within {limit} of it.",
                    union.place().pointer() + "/distance");
        }
        if (union.part().accessible().is(false)) {
            return Judge.broken(
                    own,
                    union.place(),
                    "the union of {who} cannot be reached " + EntryName.entered("accessible", "false"),
                    "Move the union of {who} to where a wrench reaches it.",
                    union.place().pointer() + "/accessible");
        }
        return Judge.holds(own, union.place());
    }

    private Verdict atLineRegulator(House house, Regulators.At at) {
        Threshold near = house.limits().get(name(), "line-regulator");
        if (!onSteel(house, at.regulator())) {
            return Judge.notFor(near, at.place());
        }
        String field = at.place().pointer() + "/unionWithin";
        Fact<Distance> within = SedimentTrap.distance(at.regulator().unionWithin());
        String remedy = "Fit a union within {limit} of {who}.";
        return within.fold(
                distance -> near.test(distance) == State.HOLDS
                        ? Judge.holds(near, at.place())
                        : Judge.broken(
                                near,
                                at.place(),
                                "the union at {who} is " + within.findText().orElse("") + " from it",
                                remedy,
                                field),
                () -> Judge.broken(
                        near,
                        at.place(),
                        "no union is fitted at {who} " + EntryName.entered("unionWithin", "none"),
                        remedy,
                        field),
                () -> Judge.asks(
                        near,
                        at.place(),
                        "how far the union is from {who} is not entered",
                        Question.fitter("How far from {who} is the nearest union?"),
                        field));
    }

    private static boolean onSteel(House house, Regulator regulator) {
        Optional<Section> feeding = regulator.fedBy().findValue().flatMap(house.network()::findSection);
        return feeding.filter(s -> s.material().is(Material.STEEL)).isPresent()
                || house.network().listLeaving(regulator.id()).stream()
                        .anyMatch(s -> s.material().is(Material.STEEL));
    }
}
