package longrun.piping;

import longrun.plan.choice.Named;

/**
 * Which code a stage falls under. The point of delivery is the outlet of the last regulator that is not a line regulator
 * (NFPA 54 1.1.1.1(A)); NFPA 58 rules ahead of it, the house-piping code after it.
 */
public enum Side implements Named {
    TANK_SIDE,
    HOUSE_SIDE,
    /** The kind of its regulator is not entered, or of one further on that could be the point of delivery. */
    UNKNOWN
}
