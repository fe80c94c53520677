package longrun.rules.trap;

import java.util.List;
import java.util.Optional;
import longrun.piping.TrapNeed;
import longrun.plan.Appliance.Part;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.choice.PartKind;
import longrun.quantity.Length;
import longrun.rules.limit.State;
import longrun.rules.shape.Case;
import longrun.rules.shape.DistanceRule;
import longrun.rules.shape.FlagRule;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.MissingPart;
import longrun.rules.shape.OrderRule;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;

/** Topic trap: a pocket for dirt after the valve, with gas turning and the cap hanging down. */
public final class SedimentTrap {

    private static final String WHAT = "the sediment trap";

    private SedimentTrap() {}

    public static List<Rule> rules() {
        return List.of(
                new MissingPart(
                        "trap-missing",
                        PartKind.SEDIMENT_TRAP,
                        SedimentTrap::needed,
                        "no sediment trap is fitted at {who}, and none is built in",
                        "Add a sediment trap at {who}, after the shutoff."),
                new OrderRule(
                        "trap-downstream-of-shutoff",
                        PartKind.SHUTOFF,
                        List.of(PartKind.SEDIMENT_TRAP),
                        SedimentTrap::shutoffIsMoved,
                        "Move the sediment trap of {who} to after the shutoff."),
                new OrderRule(
                        "trap-before-connector",
                        PartKind.SEDIMENT_TRAP,
                        List.of(PartKind.FLEXIBLE_CONNECTOR),
                        SedimentTrap::shutoffIsMoved,
                        "Move the sediment trap of {who} to before the connector."),
                new FlagRule<>(
                        "trap-gas-turns",
                        Precedence.PLACE,
                        Hookup.each(PartKind.SEDIMENT_TRAP, WHAT),
                        Part::gasTurns,
                        true,
                        "gasTurns",
                        new FlagRule.Words(
                                "gas goes straight through the trap's tee at {who}",
                                "whether gas turns in the trap's tee at {who} is not entered",
                                "Turn the tee at {who}: gas in at the top, out at the branch, the nipple below.",
                                Question.fitter("Does gas turn 90 degrees in the trap's tee at {who}?"))),
                new FlagRule<>(
                        "trap-cap-down",
                        Precedence.PLACE,
                        Hookup.each(PartKind.SEDIMENT_TRAP, WHAT),
                        Part::capPointsDown,
                        true,
                        "capPointsDown",
                        new FlagRule.Words(
                                "the trap's nipple at {who} does not hang straight down",
                                "whether the trap's nipple at {who} hangs straight down is not entered",
                                "Hang the capped nipple at {who} straight down from the tee's bottom opening.",
                                Question.fitter("Does the trap's capped nipple at {who} hang straight down?"))),
                new DistanceRule<>(
                        "trap-nipple-length",
                        Precedence.SIZE,
                        Hookup.each(PartKind.SEDIMENT_TRAP, WHAT),
                        part -> distance(part.nipple()),
                        "nipple",
                        State.BROKEN,
                        new DistanceRule.Words(
                                "the trap's nipple at {who} is {entered} long",
                                "the length of the trap's nipple at {who} is not entered",
                                "Fit a capped nipple of 3 in or longer in the trap at {who}.",
                                Question.fitter("How long is the trap's nipple at {who}?"))));
    }

    private static Optional<Case<Hookup>> needed(Hookup hookup) {
        return switch (TrapNeed.of(hookup.appliance())) {
            case NEEDED -> Optional.of(Case.of(hookup.place(), hookup));
            case EXEMPT -> Optional.empty();
            case KIND_NOT_KNOWN ->
                Optional.of(Case.asks(
                        hookup.place(),
                        "the kind of {who} is not entered, so whether it needs a sediment trap is not known",
                        Question.plate("What kind of appliance is {who}?"),
                        hookup.place().pointer() + "/kind"));
            case ASK_AUTHORITY ->
                Optional.of(Case.asks(
                        hookup.place(),
                        "no sediment trap is fitted at {who}; the code excuses ranges and does not name it",
                        Question.inspector("Does {who} count as a range, which needs no sediment trap?"),
                        hookup.connectionPointer()));
            case VENT_NOT_KNOWN ->
                Optional.of(Case.asks(
                        hookup.place(),
                        "whether {who} is vented is not entered; an unvented set needs a sediment trap",
                        Question.plate("Is {who} made for a vented fireplace, or unvented?"),
                        hookup.place().pointer() + "/vent"));
        };
    }

    /** The valve stands after the connector or union: putting it at the pipe's end mends the trap's place as well. */
    private static boolean shutoffIsMoved(Hookup hookup) {
        int connector = hookup.first(PartKind.UNION, PartKind.FLEXIBLE_CONNECTOR);
        int shutoff = hookup.first(PartKind.SHUTOFF);
        return connector >= 0 && connector < shutoff;
    }

    public static Fact<Distance> distance(Fact<Length> length) {
        return length.fold(
                known -> Fact.known(Distance.of(known), length.findText().orElse("")), Fact::none, Fact::unknown);
    }
}
