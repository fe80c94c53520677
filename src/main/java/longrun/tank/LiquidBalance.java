package longrun.tank;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Lumped balance of the liquid in a tank under a steady draw: its own heat, heat through the wetted wall, latent heat leaving
 * with the vapour. The steel's heat is left out, which errs to the short side.
 *
 * @param pounds liquid at the start
 * @param startF its temperature at the start
 * @param sourceF air, or the ground
 * @param drawLbPerHour vapour drawn
 * @param heatCapacity of the liquid, Btu/(lb.degF)
 * @param wall Btu/(h.degF) through the wetted wall, by the pounds left
 * @param latent Btu/lb by temperature
 */
public record LiquidBalance(
        double pounds,
        double startF,
        double sourceF,
        double drawLbPerHour,
        double heatCapacity,
        DoubleUnaryOperator wall,
        DoubleUnaryOperator latent) {

    /** Heat capacity of liquid propane between -20 and 20 degF, Btu/(lb.degF), held from memory, on the low side. */
    public static final double HEAT_CAPACITY = 0.56;

    private static final double REFERENCE_F = 0;
    private static final int MOST_STEPS = 20_000;
    private static final double DREGS = 0.05;

    /**
     * Where the balance stands.
     *
     * @param hours since the draw began
     * @param enthalpy of the liquid left, Btu over 0 degF
     * @param heatIn Btu in through the wall so far
     * @param heatOut Btu gone with the vapour so far, its latent heat and the liquid's own
     */
    public record State(double hours, double pounds, double enthalpy, double heatIn, double heatOut) {}

    public State start() {
        return new State(0, pounds, pounds * heatCapacity * (startF - REFERENCE_F), 0, 0);
    }

    /** Temperature of the liquid, degF. */
    public double degF(State s) {
        return REFERENCE_F + s.enthalpy() / (s.pounds() * heatCapacity);
    }

    /** One step of the classic fourth-order rule; heat in and out are carried with it, so that the sum closes. */
    public State step(State s, double hours) {
        return step(s, hours, wall.applyAsDouble(s.pounds()), wall.applyAsDouble(left(s, hours)));
    }

    /** The same with the wall at its start and end already known: the end of one step is the start of the next. */
    private State step(State s, double hours, double wallAtStart, double wallAtEnd) {
        double half = hours / 2;
        double halfway = left(s, half);
        double wallHalfway = wall.applyAsDouble(halfway);
        double[] a = rates(s.pounds(), s.enthalpy(), wallAtStart);
        double[] b = rates(halfway, s.enthalpy() + half * (a[0] - a[1]), wallHalfway);
        double[] c = rates(halfway, s.enthalpy() + half * (b[0] - b[1]), wallHalfway);
        double[] d = rates(left(s, hours), s.enthalpy() + hours * (c[0] - c[1]), wallAtEnd);
        double in = hours / 6 * (a[0] + 2 * b[0] + 2 * c[0] + d[0]);
        double out = hours / 6 * (a[1] + 2 * b[1] + 2 * c[1] + d[1]);
        return new State(
                s.hours() + hours, left(s, hours), s.enthalpy() + in - out, s.heatIn() + in, s.heatOut() + out);
    }

    private double left(State s, double hours) {
        return s.pounds() - drawLbPerHour * hours;
    }

    private double[] rates(double lb, double enthalpy, double wallThere) {
        double temp = REFERENCE_F + enthalpy / (lb * heatCapacity);
        double in = wallThere * (sourceF - temp);
        double out = drawLbPerHour * (latent.applyAsDouble(temp) + heatCapacity * (temp - REFERENCE_F));
        return new double[] {in, out};
    }

    /**
     * Minutes until the liquid has cooled to a temperature; empty where it never does while a twentieth of the liquid is left.
     *
     * @param leastF temperature of the liquid at the least tank pressure
     */
    public OptionalDouble minutesUntil(double leastF) {
        State s = start();
        if (startF <= leastF) {
            return OptionalDouble.of(0);
        }
        double guess = pounds * heatCapacity * (startF - leastF) / (drawLbPerHour * latent.applyAsDouble(leastF));
        double step = Math.max(guess / 200, 1e-6);
        double wallNow = wall.applyAsDouble(s.pounds());
        for (int i = 0; i < MOST_STEPS; i++) {
            if (left(s, step) <= DREGS * pounds) {
                return OptionalDouble.empty();
            }
            double wallNext = wall.applyAsDouble(left(s, step));
            State next = step(s, step, wallNow, wallNext);
            wallNow = wallNext;
            if (degF(next) <= leastF) {
                double share = (degF(s) - leastF) / (degF(s) - degF(next));
                return OptionalDouble.of(60 * (s.hours() + share * step));
            }
            s = next;
        }
        return OptionalDouble.empty();
    }
}
