package longrun.rules.shutoff;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.plan.Appliance;
import longrun.plan.Appliance.Part;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.ApplianceVent;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.ShutoffPlace;
import longrun.rules.limit.State;
import longrun.rules.shape.Case;
import longrun.rules.shape.DistanceRule;
import longrun.rules.shape.FlagRule;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.House;
import longrun.rules.shape.MissingPart;
import longrun.rules.shape.OrderRule;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;

/** Topic shutoff: a valve at each appliance, where a hand finds it, ahead of what it serves. */
public final class Shutoff {

    /** Appliances whose valve may be remote: vented decorative appliances and vented room heaters (SV-08). */
    private static final Set<ApplianceKind> MAY_BE_REMOTE =
            EnumSet.of(ApplianceKind.FIREPLACE, ApplianceKind.GAS_LOGS, ApplianceKind.SPACE_HEATER);

    private Shutoff() {}

    public static List<Rule> rules() {
        return List.of(
                new MissingPart(
                        "shutoff-missing",
                        PartKind.SHUTOFF,
                        hookup -> Optional.of(hookup).map(h -> Case.of(h.place(), h)),
                        "no shutoff is fitted at {who}",
                        "Add a shutoff valve of its own at {who}, ahead of trap, union and connector."),
                new OrderRule(
                        "shutoff-upstream-of-connector",
                        PartKind.SHUTOFF,
                        List.of(PartKind.UNION, PartKind.FLEXIBLE_CONNECTOR),
                        hookup -> false,
                        "Move the shutoff at {who} to the pipe's end, ahead of trap, union and connector."),
                new DistanceRule<>(
                        "shutoff-within-reach",
                        Precedence.PLACE,
                        house -> at(house, Shutoff::reach),
                        Part::distance,
                        "distance",
                        State.ASKS,
                        new DistanceRule.Words(
                                "the shutoff of {who} is {entered} from it",
                                "how far the shutoff is from {who} is not entered",
                                "Move the shutoff of {who} to within {limit} of it, or add one there.",
                                Question.fitter("How far is the shutoff from {who}?"))),
                new FlagRule<>(
                        "shutoff-same-room",
                        Precedence.PLACE,
                        house -> at(house, Shutoff::room),
                        Part::sameRoom,
                        true,
                        "sameRoom",
                        new FlagRule.Words(
                                "the shutoff of {who} is in another room",
                                "whether the shutoff is in the same room as {who} is not entered",
                                "Put the shutoff in the room of {who}.",
                                Question.fitter("Is the shutoff in the same room as {who}?"))),
                new ShutoffAccess(),
                new ShutoffSize(),
                new MainShutoffRule());
    }

    /** How the serving valve is judged. */
    private interface Look {
        Case<Part> at(Hookup hookup, Hookup.Fitted valve);
    }

    private static List<Case<Part>> at(House house, Look look) {
        List<Case<Part>> cases = new ArrayList<>();
        for (Hookup hookup : Hookup.listIn(house)) {
            cases.add(hookup.findShutoff()
                    .map(valve -> look.at(hookup, valve))
                    .or(() -> hookup.findUnseen("the shutoff"))
                    .orElseGet(() -> Case.notFor(hookup.place())));
        }
        return cases;
    }

    private static Case<Part> reach(Hookup hookup, Hookup.Fitted valve) {
        return switch (hookup.shutoffPlace()) {
            case APPLIANCE -> Case.of(valve.place(), valve.part());
            case MANIFOLD -> Case.of(valve.place(), valve.part(), "manifold");
            case REMOTE -> remote(hookup, valve, Case.of(valve.place(), valve.part()));
        };
    }

    private static Case<Part> room(Hookup hookup, Hookup.Fitted valve) {
        return switch (hookup.shutoffPlace()) {
            case APPLIANCE -> Case.of(valve.place(), valve.part());
            case MANIFOLD -> Case.notFor(valve.place());
            case REMOTE -> remote(hookup, valve, Case.of(valve.place(), valve.part()));
        };
    }

    /** No distance and no room is asked of a remote valve, where the appliance is one that may have it. */
    private static Case<Part> remote(Hookup hookup, Hookup.Fitted valve, Case<Part> otherwise) {
        Appliance a = hookup.appliance();
        if (!a.kind().isKnown()) {
            return Case.asks(
                    valve.place(),
                    "a remote shutoff serves {who}, whose kind is not entered",
                    Question.plate("What kind of appliance is {who}?"),
                    hookup.place().pointer() + "/kind");
        }
        if (a.kind().is(MAY_BE_REMOTE::contains) && a.vent().isUnknown()) {
            return Case.asks(
                    valve.place(),
                    "a remote shutoff serves {who}, and whether it is vented is not entered",
                    Question.plate("Is {who} vented?"),
                    hookup.place().pointer() + "/vent");
        }
        boolean vented = a.vent().is(v -> v != ApplianceVent.NONE);
        return a.kind().is(MAY_BE_REMOTE::contains) && vented ? Case.notFor(valve.place()) : otherwise;
    }

    /** Whether the serving valve is one that must be in plain reach and labelled. */
    static boolean isAway(Hookup hookup) {
        return hookup.shutoffPlace() != ShutoffPlace.APPLIANCE;
    }
}
