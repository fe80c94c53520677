package longrun.capacity;

import longrun.quantity.Bore;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;

/** The code's equation in bare numbers, inches, feet, Btu/h and psi, NaN where there is no answer. */
public final class FlowForm {

    private FlowForm() {}

    public static double btuh(double boreIn, Pressure inlet, Pressure drop, double feet) {
        return btuh(GasProperties.PROPANE, boreIn, inlet, drop, feet);
    }

    static double btuh(GasProperties gas, double boreIn, Pressure inlet, Pressure drop, double feet) {
        return FlowEquation.capacity(gas, Bore.ofInches(boreIn), inlet, drop, Length.ofFeet(feet))
                .map(HeatRate::btuh)
                .orElse(Double.NaN);
    }

    public static double dropPsi(double boreIn, Pressure inlet, double btuh, double feet) {
        return dropPsi(boreIn, inlet, inlet, btuh, feet);
    }

    public static double dropPsi(double boreIn, Pressure inlet, Pressure start, double btuh, double feet) {
        return FlowEquation.drop(Bore.ofInches(boreIn), inlet, start, HeatRate.ofBtuh(btuh), Length.ofFeet(feet))
                .map(Pressure::psi)
                .orElse(Double.NaN);
    }

    /**
     * The diameter form (2018 IFGC 402.4), solved for the flow: its rounded constants give 0.5 to 1.0 percent more than
     * the flow form for 1/2 to 4 in. Figures worked that way are held against the program's by it.
     */
    public static double byDiameter(GasProperties gas, double boreIn, Pressure inlet, Pressure drop, double feet) {
        boolean high = inlet.psi() >= 1.5;
        double upstream = inlet.psi() + 14.73;
        double downstream = upstream - drop.psi();
        double head = high ? (upstream * upstream - downstream * downstream) * gas.y() : drop.inWc();
        double share = Math.pow(head / (gas.cr() * feet), 0.206);
        return gas.btuPerFt3() * Math.pow(boreIn * (high ? 18.93 : 19.17) * share, 1 / 0.381);
    }
}
