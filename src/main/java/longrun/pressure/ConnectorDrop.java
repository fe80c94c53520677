package longrun.pressure;

import java.util.List;
import java.util.Optional;
import longrun.plan.Appliance;
import longrun.plan.choice.PartKind;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;

/**
 * What the hose between pipe and appliance loses at the appliance's full input: its rated drop times (input /
 * capacity)^1.85. A capacity for natural gas is used as it stands, which is on the safe side in Btu.
 *
 * @param drop what it loses
 * @param assumed whether the whole rated drop was taken because the connector or its capacity is not entered, or nobody
 *     has looked at it
 */
public record ConnectorDrop(Pressure drop, boolean assumed) {

    /** Drop at which connectors are rated, in. w.c., unless the tag says another. */
    static final double RATED_IN_WC = 0.5;

    /** How the drop rises with the flow: the code's equation has 1 / 0.541. */
    static final double POWER = 1.85;

    static ConnectorDrop of(Appliance appliance) {
        List<Appliance.Part> parts = appliance.connection().findValue().orElse(List.of());
        double sum = 0;
        boolean assumed = false;
        boolean hose = false;
        for (Appliance.Part part : parts) {
            if (part.part().is(PartKind.FLEXIBLE_CONNECTOR)) {
                ConnectorDrop one = hose(part, appliance.input().findValue());
                sum += one.drop().inWc();
                assumed |= one.assumed();
                hose = true;
            }
        }
        if (hose) {
            return of(sum, assumed);
        }
        boolean rigid = parts.stream().anyMatch(p -> p.part().is(PartKind.RIGID_PIPE) && p.isSeen());
        return rigid ? of(0, false) : of(RATED_IN_WC, true);
    }

    private static ConnectorDrop of(double inWc, boolean assumed) {
        return new ConnectorDrop(Pressure.ofInWc(inWc), assumed);
    }

    private static ConnectorDrop hose(Appliance.Part part, Optional<HeatRate> input) {
        double rated = part.ratedDrop().findValue().map(Pressure::inWc).orElse(RATED_IN_WC);
        Optional<HeatRate> capacity = part.capacity().findValue().filter(c -> c.btuh() > 0);
        if (capacity.isEmpty() || input.isEmpty()) {
            return of(part.isSeen() ? rated : Math.max(rated, RATED_IN_WC), true);
        }
        double share = input.get().btuh() / capacity.get().btuh();
        double drop = rated * Math.pow(share, POWER);
        return part.isSeen() ? of(drop, false) : of(Math.max(drop, Math.max(rated, RATED_IN_WC)), true);
    }
}
