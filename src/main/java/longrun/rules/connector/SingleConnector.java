package longrun.rules.connector;

import java.util.List;
import longrun.plan.choice.PartKind;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.ApplianceRule;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Verdict;

/** One connector an appliance, none joined in series. */
final class SingleConnector implements ApplianceRule {

    @Override
    public String name() {
        return "connector-single";
    }

    @Override
    public Verdict judge(House house, Threshold own, Hookup hookup) {
        List<Hookup.Fitted> connectors = hookup.listOf(PartKind.FLEXIBLE_CONNECTOR);
        if (connectors.size() > 1) {
            return Judge.broken(
                    own,
                    hookup.place(),
                    connectors.size() + " connectors are joined in series at {who}",
                    "Fit one connector at {who}; bring pipe closer where it does not reach.",
                    connectors.get(1).place().pointer());
        }
        return hookup.findUnseen("the number of connectors")
                .flatMap(c -> c.findSettled(own))
                .orElseGet(() ->
                        connectors.isEmpty() ? Judge.notFor(own, hookup.place()) : Judge.holds(own, hookup.place()));
    }
}
