package longrun.rules.connector;

import java.util.ArrayList;
import java.util.List;
import longrun.plan.Appliance.Part;
import longrun.plan.Fact;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.PartKind;
import longrun.rules.limit.State;
import longrun.rules.shape.Case;
import longrun.rules.shape.DistanceRule;
import longrun.rules.shape.FlagRule;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.House;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.trap.SedimentTrap;

/** Topic connector: the hose at an appliance, and the union where there is none. */
public final class Connector {

    private static final String WHAT = "the connector";
    private static final String GRILL_HOSE = "grill-hose";

    private Connector() {}

    public static List<Rule> rules() {
        return List.of(
                new SingleConnector(),
                new FlagRule<>(
                        "connector-through-wall",
                        Precedence.PLACE,
                        Hookup.each(PartKind.FLEXIBLE_CONNECTOR, WHAT),
                        Part::throughWall,
                        false,
                        "throughWall",
                        new FlagRule.Words(
                                "the connector of {who} passes a wall, floor or housing",
                                "whether the connector of {who} passes a wall, floor or housing is not entered",
                                "Bring pipe through the wall at {who} and keep the connector on the appliance's side.",
                                Question.fitter("Does the connector of {who} pass a wall, floor or housing?"))),
                new FlagRule<>(
                        "connector-concealed",
                        Precedence.PLACE,
                        Hookup.each(PartKind.FLEXIBLE_CONNECTOR, WHAT),
                        Part::concealed,
                        false,
                        "concealed",
                        new FlagRule.Words(
                                "the connector of {who} is concealed",
                                "whether any of the connector of {who} is concealed is not entered",
                                "Bring the connector of {who} into the open.",
                                Question.fitter("Is any of the connector of {who} concealed?"))),
                new DistanceRule<>(
                        "connector-length",
                        Precedence.SIZE,
                        Connector::byLength,
                        part -> SedimentTrap.distance(part.length()),
                        "length",
                        State.ASKS,
                        new DistanceRule.Words(
                                "the connector of {who} is {entered} long",
                                "the length of the connector of {who} is not entered",
                                "Bring the pipe closer to {who} and fit a connector of at most {limit}.",
                                Question.fitter("How long is the connector of {who}?"))),
                new ConnectorCapacity(),
                new UnionAtRigidPipe());
    }

    /** The hose of an outdoor grill is no connector of an appliance that stands in a room (CN-11). */
    private static List<Case<Part>> byLength(House house) {
        List<Case<Part>> cases = new ArrayList<>();
        for (Hookup h : Hookup.listIn(house)) {
            List<Hookup.Fitted> hoses = h.listOf(PartKind.FLEXIBLE_CONNECTOR);
            if (hoses.isEmpty()) {
                cases.add(h.<Part>findUnseen(WHAT).orElseGet(() -> Case.notFor(h.place())));
            }
            for (Hookup.Fitted hose : hoses) {
                cases.add(byLength(h, hose));
            }
        }
        return cases;
    }

    private static Case<Part> byLength(Hookup h, Hookup.Fitted hose) {
        Fact<ApplianceKind> kind = h.appliance().kind();
        if (kind.isKnown()) {
            return Case.of(hose.place(), hose.part(), kind.is(ApplianceKind.OUTDOOR_GRILL) ? GRILL_HOSE : "");
        }
        return Case.between(
                hose.place(),
                hose.part(),
                List.of("", GRILL_HOSE),
                new Case.Doubt(
                        "what kind of appliance it serves is not entered",
                        Question.plate("What kind of appliance is {who}?"),
                        h.place().pointer() + "/kind"));
    }
}
