package longrun.rules.connector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Appliance.Part;
import longrun.plan.Fact;
import longrun.plan.choice.Gas;
import longrun.plan.choice.PartKind;
import longrun.quantity.HeatRate;
import longrun.quantity.Same;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/**
 * The connector's own rating covers the appliance's full input. A rating for natural gas is taken as it stands: the same
 * connector carries about 1.6 times as much heat in propane (CN-06, arithmetic), so the error is on the safe side.
 */
final class ConnectorCapacity implements Rule {

    @Override
    public String name() {
        return "connector-capacity";
    }

    @Override
    public Precedence precedence() {
        return Precedence.SIZE;
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        List<Verdict> verdicts = new ArrayList<>();
        for (Hookup hookup : Hookup.listIn(house)) {
            List<Hookup.Fitted> connectors = hookup.listOf(PartKind.FLEXIBLE_CONNECTOR);
            if (connectors.isEmpty()) {
                verdicts.add(hookup.<Part>findUnseen("the connector")
                        .flatMap(c -> c.findSettled(own))
                        .orElseGet(() -> Judge.notFor(own, hookup.place())));
            }
            connectors.forEach(c -> verdicts.add(judge(own, hookup, c)));
        }
        return verdicts;
    }

    private static Verdict judge(Threshold own, Hookup hookup, Hookup.Fitted connector) {
        Place place = connector.place();
        Fact<HeatRate> input = hookup.appliance().input();
        Optional<HeatRate> capacity = connector.part().capacity().findValue();
        if (capacity.isEmpty()) {
            return Judge.asks(
                    own,
                    place,
                    "the rated capacity of the connector of {who} is not entered",
                    Question.fitter("What capacity does the tag on the connector of {who} give, and for which gas?"),
                    place.pointer() + "/capacity");
        }
        if (!input.isKnown()) {
            return Judge.asks(
                    own,
                    place,
                    "the input of {who} is not entered",
                    Question.plate("What INPUT in Btu/h does the rating plate of {who} give on the propane line?"),
                    hookup.place().pointer() + "/input");
        }
        if (Same.atLeast(capacity.get().btuh(), input.findValue().orElseThrow().btuh())) {
            return Judge.holds(own, place);
        }
        boolean natural = connector.part().capacityGas().is(Gas.NATURAL);
        return Judge.broken(
                own,
                place,
                "the connector of {who} is rated "
                        + connector.part().capacity().findText().orElse("")
                        + (natural ? " for natural gas, taken as it stands," : "") + " for an input of "
                        + input.findText().orElse(""),
                natural
                        ? "Enter the connector's propane rating from its tag, or fit a connector that covers {who}."
                        : "Fit a connector whose rating covers {who}.",
                place.pointer() + "/capacity");
    }
}
