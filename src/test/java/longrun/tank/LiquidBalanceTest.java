package longrun.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longrun.checked.Ran;
import longrun.checked.SecondWay;
import org.assertj.core.data.Percentage;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** Cooling of the liquid under a steady draw: against a closed form, an independent integrator, and its own energy. */
class LiquidBalanceTest {

    private static final SecondWay WAY = SecondWay.get("liquid-balance");

    private static final double WALL = 30;
    private static final double LATENT = 175;
    private static final double DRAW = 30;
    private static final double C = 0.56;
    private static final double LB = 650;
    private static final double AIR = 8;

    private static LiquidBalance constant() {
        return new LiquidBalance(LB, AIR, AIR, DRAW, C, lb -> WALL, t -> LATENT);
    }

    private static LiquidBalance varying() {
        return new LiquidBalance(LB, AIR, AIR, DRAW, C, lb -> WALL * Math.sqrt(lb / LB), Propane::latent);
    }

    /** With the mass falling at r and nothing else changing: T - T* = (T0 - T*) (1 - r t / m0)^(UA / (c r)). */
    private static double closedForm(double hours) {
        double rest = AIR - DRAW * LATENT / WALL;
        return rest + (AIR - rest) * Math.pow(1 - DRAW * hours / LB, WALL / (C * DRAW));
    }

    @Test
    void constantPropertiesFollowTheClosedForm() {
        double hours = LB
                / DRAW
                * (1 - Math.pow((-20 - (AIR - DRAW * LATENT / WALL)) / (DRAW * LATENT / WALL), C * DRAW / WALL));
        assertThat(closedForm(hours)).isCloseTo(-20, within(1e-9));
        assertThat(constant().minutesUntil(-20)).hasValueCloseTo(60 * hours, Percentage.withPercentage(0.01));
    }

    @Test
    void varyingPropertiesFollowAnIndependentIntegrator() {
        LiquidBalance balance = varying();
        double minutes = balance.minutesUntil(-20).orElseThrow();
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double lb = LB - DRAW * t;
                double heat = WALL * Math.sqrt(lb / LB) * (AIR - y[0]) - DRAW * Propane.latent(y[0]);
                return new double[] {heat / (lb * C)};
            }
        };
        ODEStateAndDerivative end = new DormandPrince853Integrator(1e-9, 1, 1e-10, 1e-10)
                .integrate(equation, new ODEState(0, new double[] {AIR}), minutes / 60);
        assertThat(end.getPrimaryState()[0]).isCloseTo(-20, within(WAY.within()));
        Ran.told(WAY.id(), WAY.count(), 0, Math.abs(end.getPrimaryState()[0] + 20));
    }

    @Test
    void energyClosesAtEachStep() {
        LiquidBalance balance = varying();
        LiquidBalance.State s = balance.start();
        double start = s.enthalpy();
        for (int i = 0; i < 300; i++) {
            LiquidBalance.State next = balance.step(s, 0.02);
            double residual =
                    next.enthalpy() - s.enthalpy() - (next.heatIn() - s.heatIn()) + (next.heatOut() - s.heatOut());
            assertThat(Math.abs(residual)).isLessThan(1e-9 * Math.max(Math.abs(start), next.heatOut()));
            s = next;
        }
        assertThat(s.enthalpy()).isCloseTo(start + s.heatIn() - s.heatOut(), within(1e-9 * s.heatOut()));
        assertThat(s.pounds()).isCloseTo(LB - 300 * 0.02 * DRAW, within(1e-9 * LB));
    }

    @Test
    void aLoadUnderTheSteadyFigureIsHeldWithoutEnd() {
        double steady = WALL * (AIR + 20) / LATENT;
        assertThat(new LiquidBalance(LB, AIR, AIR, steady * 0.99, C, lb -> WALL, t -> LATENT).minutesUntil(-20))
                .isEmpty();
        assertThat(new LiquidBalance(LB, AIR, AIR, steady * 1.5, C, lb -> WALL, t -> LATENT).minutesUntil(-20))
                .isPresent();
    }

    @Test
    void aTankAlreadyTooColdHoldsNothing() {
        assertThat(new LiquidBalance(LB, -21, -21, DRAW, C, lb -> WALL, t -> LATENT).minutesUntil(-20))
                .hasValue(0);
    }

    @Test
    void moreLoadLessLiquidAndColderAirEachShortenIt() {
        double base = varying().minutesUntil(-20).orElseThrow();
        assertThat(new LiquidBalance(LB, AIR, AIR, DRAW * 1.1, C, varying().wall(), Propane::latent)
                        .minutesUntil(-20)
                        .orElseThrow())
                .isLessThan(base);
        assertThat(new LiquidBalance(LB * 0.9, AIR, AIR, DRAW, C, varying().wall(), Propane::latent)
                        .minutesUntil(-20)
                        .orElseThrow())
                .isLessThan(base);
        assertThat(new LiquidBalance(LB, AIR - 3, AIR - 3, DRAW, C, varying().wall(), Propane::latent)
                        .minutesUntil(-20)
                        .orElseThrow())
                .isLessThan(base);
    }
}
