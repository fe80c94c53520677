package longrun.capacity;

/**
 * What the code's sizing equation needs to know of a gas. Cr and Y: 2018 IRC Table G2413.4 (2018 IFGC Table 402.4).
 *
 * @param cr factor for viscosity, density and temperature
 * @param y superexpansibility factor
 * @param btuPerFt3 heating value, Btu per cubic foot
 */
public record GasProperties(double cr, double y, double btuPerFt3) {

    /** Undiluted propane at the 2,488 Btu/ft3 the 2018 IFGC propane tables follow. */
    public static final GasProperties PROPANE = new GasProperties(1.2462, 0.9910, 2488);

    /** Natural gas at the 1,000 Btu/ft3 of the code's worked examples. */
    public static final GasProperties NATURAL = new GasProperties(0.6094, 0.9992, 1000);
}
