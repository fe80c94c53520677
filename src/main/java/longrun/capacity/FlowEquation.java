package longrun.capacity;

import java.util.Optional;
import longrun.quantity.Bore;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;

/**
 * The fuel gas code's sizing equations (2018 IFGC 402.4 and Appendix A.4; NFPA 54 section 6.4): the low pressure one
 * under 1.5 psi at the inlet, the high pressure one from there. The printed tables follow the flow form. Empty
 * answers what cannot be: a bore, length or drop of nothing, or a drop greater than the inlet pressure.
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

    /** Propane capacity of a bore over a length, flow form, unrounded. */
    public static Optional<HeatRate> capacity(Bore bore, Pressure inlet, Pressure drop, Length length) {
        return capacity(GasProperties.PROPANE, bore, inlet, drop, length);
    }

    /** Capacity for any gas, flow form, unrounded. */
    public static Optional<HeatRate> capacity(
            GasProperties gas, Bore bore, Pressure inlet, Pressure drop, Length length) {
        if (impossible(bore, inlet, drop, length)) {
            return Optional.empty();
        }
        return Optional.of(HeatRate.ofBtuh(gas.btuPerFt3()
                * factor(inlet)
                * Math.pow(bore.inches(), BORE_POWER)
                * Math.pow(head(gas, inlet, drop) / (gas.cr() * length.feet()), DROP_POWER)));
    }

    /**
     * Drop of a propane load over a length of one bore. Zero for no load; empty where the inlet pressure cannot push
     * the load through.
     */
    public static Optional<Pressure> drop(Bore bore, Pressure inlet, HeatRate load, Length length) {
        return drop(bore, inlet, inlet, load, length);
    }

    /**
     * As {@link #drop(Bore, Pressure, HeatRate, Length)} for a length that begins somewhere along a run.
     *
     * @param inlet pressure at the start of the run, which decides the equation (2018 IFGC A.4)
     * @param start pressure where this length begins
     */
    public static Optional<Pressure> drop(Bore bore, Pressure inlet, Pressure start, HeatRate load, Length length) {
        if (bore.inches() <= 0 || length.feet() < 0 || load.btuh() < 0 || start.psi() <= 0) {
            return Optional.empty();
        }
        GasProperties gas = GasProperties.PROPANE;
        double flow = load.btuh() / gas.btuPerFt3();
        double resistance = factor(inlet) * Math.pow(bore.inches(), BORE_POWER);
        double head = gas.cr() * length.feet() * Math.pow(flow / resistance, 1 / DROP_POWER);
        double psi = isHigh(inlet)
                ? highDropPsi(gas, start, head)
                : Pressure.ofInWc(head).psi();
        return psi <= start.psi() ? Optional.of(Pressure.ofPsi(psi)) : Optional.empty();
    }

    private static double highDropPsi(GasProperties gas, Pressure start, double head) {
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

    private static boolean impossible(Bore bore, Pressure inlet, Pressure drop, Length length) {
        return bore.inches() <= 0 || length.feet() <= 0 || drop.psi() <= 0 || drop.psi() > inlet.psi();
    }
}
