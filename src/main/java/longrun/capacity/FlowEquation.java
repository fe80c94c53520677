package longrun.capacity;

import longrun.quantity.Pressure;

/**
 * The fuel gas code's sizing equations (2018 IFGC 402.4 and Appendix A.4; NFPA 54 section 6.4): the low pressure one
 * under 1.5 psi at the inlet, the high pressure one from there. The printed tables follow the flow form. NaN answers
 * what cannot be: a bore, length or drop of nothing, or a drop greater than the inlet pressure.
 */
public final class FlowEquation {

    /** Atmosphere in psia that the 2 psi and 10 psi propane tables of the 2018 IFGC follow; the text says 14.7. */
    public static final double ATMOSPHERE_PSIA = 14.73;

    /** Inlet pressure from which the high pressure equation applies (2018 IFGC A.4). */
    public static final Pressure HIGH_FROM = Pressure.ofPsi(1.5);

    private static final double BORE_POWER = 2.623;
    private static final double DROP_POWER = 0.541;

    private FlowEquation() {}

    static boolean isHigh(Pressure inlet) {
        return inlet.compareTo(HIGH_FROM) >= 0 || inlet.same(HIGH_FROM);
    }

    /** Propane capacity in Btu/h of a bore (inches) over a length (feet), flow form, unrounded. */
    public static double capacityBtuh(double boreIn, Pressure inlet, Pressure drop, double lengthFt) {
        return capacityBtuh(GasProperties.PROPANE, boreIn, inlet, drop, lengthFt);
    }

    /** Capacity in Btu/h for any gas, flow form, unrounded. */
    public static double capacityBtuh(
            GasProperties gas, double boreIn, Pressure inlet, Pressure drop, double lengthFt) {
        if (impossible(boreIn, inlet, drop, lengthFt)) {
            return Double.NaN;
        }
        return gas.btuPerFt3()
                * factor(inlet)
                * Math.pow(boreIn, BORE_POWER)
                * Math.pow(head(gas, inlet, drop) / (gas.cr() * lengthFt), DROP_POWER);
    }

    /**
     * Capacity in Btu/h by the diameter form (2018 IFGC 402.4), solved for the flow. Its rounded constants give 0.5 to
     * 1.0 percent more than the flow form for 1/2 to 4 in.; kept to check against figures worked that way.
     */
    public static double capacityByDiameterForm(
            GasProperties gas, double boreIn, Pressure inlet, Pressure drop, double lengthFt) {
        if (impossible(boreIn, inlet, drop, lengthFt)) {
            return Double.NaN;
        }
        double share = Math.pow(head(gas, inlet, drop) / (gas.cr() * lengthFt), 0.206);
        double constant = isHigh(inlet) ? 18.93 : 19.17;
        return gas.btuPerFt3() * Math.pow(boreIn * constant * share, 1 / 0.381);
    }

    /**
     * Drop in psi of a propane load (Btu/h) over a length of one bore. Zero for no load; NaN where the inlet pressure
     * cannot push the load through.
     */
    public static double dropPsi(double boreIn, Pressure inlet, double loadBtuh, double lengthFt) {
        return dropPsi(boreIn, inlet, inlet, loadBtuh, lengthFt);
    }

    /**
     * As {@link #dropPsi(double, Pressure, double, double)} for a length that begins somewhere along a run.
     *
     * @param inlet pressure at the start of the run, which decides the equation (2018 IFGC A.4)
     * @param start pressure where this length begins
     */
    public static double dropPsi(double boreIn, Pressure inlet, Pressure start, double loadBtuh, double lengthFt) {
        if (!(boreIn > 0) || !(lengthFt >= 0) || !(loadBtuh >= 0) || !(start.psi() > 0)) {
            return Double.NaN;
        }
        GasProperties gas = GasProperties.PROPANE;
        double flow = loadBtuh / gas.btuPerFt3();
        double head =
                gas.cr() * lengthFt * Math.pow(flow / (factor(inlet) * Math.pow(boreIn, BORE_POWER)), 1 / DROP_POWER);
        double drop = isHigh(inlet)
                ? highDrop(gas, start, head)
                : Pressure.ofInWc(head).psi();
        return drop <= start.psi() ? drop : Double.NaN;
    }

    private static double highDrop(GasProperties gas, Pressure start, double head) {
        double upstream = start.psi() + ATMOSPHERE_PSIA;
        double squares = head / gas.y();
        // P1 - P2 written so that a small drop keeps its digits
        return squares / (upstream + Math.sqrt(upstream * upstream - squares));
    }

    private static double factor(Pressure inlet) {
        return isHigh(inlet) ? 2237 : 2313;
    }

    private static double head(GasProperties gas, Pressure inlet, Pressure drop) {
        if (!isHigh(inlet)) {
            return drop.inWc();
        }
        double upstream = inlet.psi() + ATMOSPHERE_PSIA;
        double downstream = upstream - drop.psi();
        return (upstream * upstream - downstream * downstream) * gas.y();
    }

    private static boolean impossible(double boreIn, Pressure inlet, Pressure drop, double lengthFt) {
        return !(boreIn > 0) || !(lengthFt > 0) || !(drop.psi() > 0) || drop.psi() > inlet.psi();
    }
}
