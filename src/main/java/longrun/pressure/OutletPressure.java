package longrun.pressure;

import java.util.OptionalDouble;

/**
 * The pressure at one appliance, in. w.c.; each empty where something on the way is not known.
 *
 * @param section index of the section it hangs on, -1 where none
 * @param regulator index of the last regulator before it, -1 where none
 * @param pressureInWc at the pipe's end, from the regulator's setting, everything firing
 * @param pressureDroopedInWc the same, from the setting less droop
 * @param pressureAtInletInWc the same, less the connector: what the label's least is held against
 * @param pressureAloneInWc at the pipe's end, from the setting, with this appliance alone
 * @param pressureIdleInWc nothing firing, the regulator locked up: what the label's greatest is held against
 * @param staticInWc what the gas loses by rising from the regulator, in none of the others
 * @param connector what the connector loses
 * @param status against the label
 */
public record OutletPressure(
        int section,
        int regulator,
        OptionalDouble pressureInWc,
        OptionalDouble pressureDroopedInWc,
        OptionalDouble pressureAtInletInWc,
        OptionalDouble pressureAloneInWc,
        OptionalDouble pressureIdleInWc,
        OptionalDouble staticInWc,
        ConnectorDrop connector,
        InletStatus status) {}
