package longrun.pressure;

import java.util.Optional;
import longrun.quantity.Pressure;

/**
 * The pressure at one appliance; each empty where something on the way is not known.
 *
 * @param section index of the section it hangs on, -1 where none
 * @param regulator index of the last regulator before it, -1 where none
 * @param pressure at the pipe's end, from the regulator's setting, everything firing
 * @param pressureDrooped the same, from the setting less droop
 * @param pressureAtInlet the same, less the connector: what the label's least is held against
 * @param pressureAlone at the pipe's end, from the setting, with this appliance alone
 * @param pressureIdle nothing firing, the regulator locked up: what the label's greatest is held against
 * @param staticLoss what the gas loses by rising from the regulator, in none of the others
 * @param connector what the connector loses
 * @param status against the label
 */
public record OutletPressure(
        int section,
        int regulator,
        Optional<Pressure> pressure,
        Optional<Pressure> pressureDrooped,
        Optional<Pressure> pressureAtInlet,
        Optional<Pressure> pressureAlone,
        Optional<Pressure> pressureIdle,
        Optional<Pressure> staticLoss,
        ConnectorDrop connector,
        InletStatus status) {}
