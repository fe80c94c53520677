package longrun.rules.shutoff;

import java.util.List;
import java.util.Optional;
import longrun.plan.Appliance.Part;
import longrun.plan.Fact;
import longrun.plan.NominalSize;
import longrun.plan.choice.PartKind;
import longrun.quantity.NotAQuantity;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.ApplianceRule;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Verdict;

/** The valve ahead of a flexible connector is at least the connector's nominal size. */
final class ShutoffSize implements ApplianceRule {

    @Override
    public String name() {
        return "shutoff-size";
    }

    @Override
    public Precedence precedence() {
        return Precedence.SIZE;
    }

    @Override
    public Verdict judge(House house, Threshold own, Hookup hookup) {
        Optional<Hookup.Fitted> valve = hookup.findShutoff();
        List<Hookup.Fitted> connectors = hookup.listOf(PartKind.FLEXIBLE_CONNECTOR);
        if (valve.isEmpty() || connectors.isEmpty()) {
            return hookup.<Part>findUnseen("the size of valve and connector")
                    .flatMap(c -> c.findSettled(own))
                    .orElseGet(() -> Judge.notFor(own, hookup.place()));
        }
        return judge(own, valve.get(), connectors.get(0));
    }

    private static Verdict judge(Threshold own, Hookup.Fitted valve, Hookup.Fitted connector) {
        Optional<Double> valveInches = inches(valve.part().size());
        Optional<Double> connectorInches = inches(connector.part().size());
        if (valveInches.isEmpty() || connectorInches.isEmpty()) {
            Hookup.Fitted lacks = valveInches.isEmpty() ? valve : connector;
            return Judge.asks(
                    own,
                    valve.place(),
                    "the nominal sizes of shutoff and connector at {who} are not both entered",
                    Question.fitter("What nominal size is the shutoff at {who}, and what size is its connector?"),
                    lacks.place().pointer() + "/size");
        }
        if (valveInches.get() >= connectorInches.get()) {
            return valve.part().isSeen() && connector.part().isSeen()
                    ? Judge.holds(own, valve.place())
                    : Judge.asks(
                            own,
                            valve.place(),
                            "the shutoff or the connector at {who} is assumed, not seen",
                            Question.fitter("Are the shutoff and the connector at {who} as entered?"),
                            (valve.part().isSeen() ? connector : valve).place().pointer() + "/seen");
        }
        return Judge.broken(
                own,
                valve.place(),
                "the shutoff of {who} is "
                        + valve.part().size().findText().orElse("") + ", its connector "
                        + connector.part().size().findText().orElse(""),
                "Fit a shutoff of at least the connector's size at {who}.",
                valve.place().pointer() + "/size");
    }

    /** A nominal size in inches; an outside diameter is another way of naming and is not compared. */
    private static Optional<Double> inches(Fact<String> size) {
        return size.findValue().flatMap(written -> {
            try {
                return NominalSize.read(written);
            } catch (NotAQuantity notASize) {
                return Optional.empty();
            }
        });
    }
}
