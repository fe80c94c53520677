package longrun.pressure;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import longrun.plan.Appliance;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.RegulatorKind;
import longrun.quantity.Pressure;

/**
 * Line pressure is for pipes and regulators, not for a burner: 1 psi and more, far above the 14 in. w.c. that household
 * appliances are labelled for (common practice).
 */
public final class LinePressure {

    private static final Pressure FROM = Pressure.ofPsi(1);
    private static final double SAME = 1e-9;

    /** No household kind: a burner that may be made for line pressure. */
    private static final Set<ApplianceKind> OTHERS = EnumSet.of(ApplianceKind.OTHER);

    private LinePressure() {}

    /** Whether a pressure is one for pipes and regulators. */
    public static boolean isLine(Pressure p) {
        return p.inWc() >= FROM.inWc() - SAME;
    }

    /**
     * Whether line pressure stands at an appliance, by the setting of the stage that ends there.
     *
     * @return empty where that is not known
     */
    public static Optional<Boolean> stands(Pressures pressures, OutletPressure outlet) {
        if (outlet.regulator() < 0) {
            return Optional.empty();
        }
        RegulatorPressure regulator = pressures.regulator(outlet.regulator());
        if (regulator.setting().isPresent()) {
            return regulator.setting().map(LinePressure::isLine);
        }
        // whatever these two are set to, it is no pressure for a burner
        return regulator.regulator().kind().is(k -> k == RegulatorKind.FIRST_STAGE || k == RegulatorKind.TWO_PSI)
                ? Optional.of(true)
                : Optional.empty();
    }

    /** Whether the label's greatest inlet pressure is one to believe of that kind of appliance without reading it again. */
    public static boolean isBelieved(Appliance appliance) {
        return appliance.maxInlet().is(p -> p.inWc() <= FROM.inWc() + SAME)
                || (appliance.maxInlet().isKnown() && appliance.kind().is(OTHERS::contains));
    }

    /** Whether the label, as far as it is to believe, bears what stands there with nothing firing. */
    public static boolean isRatedFor(Appliance appliance, OutletPressure outlet) {
        return isBelieved(appliance)
                && outlet.pressureIdle().isPresent()
                && appliance
                        .maxInlet()
                        .is(p -> p.inWc() >= outlet.pressureIdle().get().inWc() - SAME);
    }
}
