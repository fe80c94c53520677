package longrun.plan;

import java.util.List;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.ApplianceVent;
import longrun.plan.choice.Condensate;
import longrun.plan.choice.Gas;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.ShutoffPlace;
import longrun.quantity.Elevation;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;

/**
 * A gas appliance.
 *
 * @param input the rating plate's INPUT on the propane line
 * @param minInlet least inlet pressure of the label
 * @param altitudeLabel the height above the sea that its label or its altitude kit covers
 * @param connection its hookup: parts in flow order from the end of the pipe to the appliance
 */
public record Appliance(
        String id,
        Fact<ApplianceKind> kind,
        Fact<String> name,
        Fact<HeatRate> input,
        Fact<Gas> gas,
        Fact<Pressure> minInlet,
        Fact<Pressure> maxInlet,
        Fact<String> fedBy,
        Fact<String> room,
        Fact<ApplianceVent> vent,
        Fact<List<Part>> connection,
        Fact<Distance> terminalAboveGrade,
        Fact<Distance> terminalToRegulator,
        Fact<Condensate> condensate,
        Fact<Boolean> freezePower,
        Fact<Distance> ignitionAboveFloor,
        Fact<Elevation> altitudeLabel) {

    /** Whether any part of its hookup is taken as usual and nobody has looked at it yet. */
    public boolean hasPartsNotSeen() {
        return connection.findValue().orElse(List.of()).stream().anyMatch(p -> !p.isSeen());
    }

    /**
     * One part of a hookup; which entries mean something depends on what part it is.
     *
     * @param seen false where the part is taken as usual and nobody has looked at it; a part without the entry was
     *     looked at by whoever entered it
     */
    public record Part(
            Fact<PartKind> part,
            Fact<Distance> distance,
            Fact<Boolean> sameRoom,
            Fact<Boolean> accessible,
            Fact<Boolean> readyAccess,
            Fact<ShutoffPlace> place,
            Fact<Boolean> labelled,
            Fact<String> size,
            Fact<Length> nipple,
            Fact<Boolean> capPointsDown,
            Fact<Boolean> gasTurns,
            Fact<Length> length,
            Fact<Boolean> throughWall,
            Fact<Boolean> concealed,
            Fact<HeatRate> capacity,
            Fact<Gas> capacityGas,
            Fact<Pressure> ratedDrop,
            Fact<Boolean> seen) {

        /** Whether somebody has looked at it: no rule passes on a part that nobody has seen. */
        public boolean isSeen() {
            return !seen().is(false) && !seen().isNone();
        }
    }
}
