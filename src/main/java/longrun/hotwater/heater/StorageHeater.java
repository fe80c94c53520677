package longrun.hotwater.heater;

/**
 * A storage heater in numbers.
 *
 * @param gallons it holds
 * @param setF set point, degF
 * @param pumpBtuh heat its heat pump gives the water as rated; 0 where it has none
 * @param cop heat given for each unit of current, as rated; 1 where it has no heat pump
 * @param elementBtuh of the element, 0 where it has none or it is off
 * @param lossBtuhPerF standing loss for each degF over the room
 * @param lockoutF room temperature under which the heat pump rests; minus infinity where none is known
 * @param pumpMaxF hottest water the heat pump makes; plus infinity where none is known
 */
public record StorageHeater(
        double gallons,
        double setF,
        double pumpBtuh,
        double cop,
        double elementBtuh,
        double lossBtuhPerF,
        double lockoutF,
        double pumpMaxF) {

    /** Nodes of well mixed water the tank is cut into, one above the other. */
    public static final int NODES = 12;
    /** Water falls this far under the set point before heat comes on: memory. */
    static final double DEAD_BAND_F = 10;

    /** How warm the heat pump alone can make the water. */
    double pumpSetF() {
        return Math.min(setF, pumpMaxF);
    }

    /** Whether the heat pump may run in a room this warm. */
    boolean pumpRuns(double roomF) {
        return pumpBtuh > 0 && roomF >= lockoutF;
    }

    /** The same heater set to another temperature. */
    public StorageHeater withSetF(double other) {
        return new StorageHeater(gallons, other, pumpBtuh, cop, elementBtuh, lossBtuhPerF, lockoutF, pumpMaxF);
    }
}
