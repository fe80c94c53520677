package longrun.rules;

import java.util.List;
import longrun.plan.Appliance.Part;
import longrun.plan.PartKind;

/** Topic connector: the hose at an appliance, and the union where there is none. */
final class Connector {

    private static final String WHAT = "the connector";

    private Connector() {}

    static List<Rule> rules() {
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
                        Hookup.each(PartKind.FLEXIBLE_CONNECTOR, WHAT),
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
}
