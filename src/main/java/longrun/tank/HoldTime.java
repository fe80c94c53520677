package longrun.tank;

import java.util.List;
import java.util.OptionalDouble;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;

/**
 * How long a load can be held from the refill gauge on: the liquid cools from the warmth about the tank, and less and less
 * of it wets the wall, until the tank stands at its least pressure. The heat through the wall is the rule's, at each level.
 */
record HoldTime(TankVapour vapour, Figure heatingValue) {

    private static final String NAME = "minutes it can be held";

    Demands.Hold of(double btuh) {
        List<Container> tanks = vapour.tanks();
        Figure design = vapour.air();
        boolean ready = design.isKnown()
                && !tanks.isEmpty()
                && vapour.gauge().stream().allMatch(Figure::isKnown)
                && tanks.stream()
                        .allMatch(t -> t.capacityGal().isKnown() && t.count().isKnown());
        if (!ready) {
            return unknown("the tank's capacity, refill gauge and the winter design temperature");
        }
        boolean walls =
                tanks.stream().allMatch(t -> t.body().isPresent() && !(t.body().get() instanceof Vaporiser.Cylinder));
        if (!walls) {
            return unknown("a tank whose wall is known: a cylinder's table and a supplier's figure tell no minutes");
        }
        double source = sourceF(tanks.get(0));
        if (!tanks.stream().allMatch(t -> sourceF(t) == source)) {
            return unknown("tanks that are all above ground or all buried");
        }
        double pounds = pounds(source);
        if (pounds <= 0) {
            return unknown("a refill gauge above 0 %");
        }
        if (btuh <= 0) {
            return new Demands.Hold(Figure.unknown(NAME, "min", List.of()), true);
        }
        double least = vapour.pressures().leastF();
        LiquidBalance balance = new LiquidBalance(
                pounds,
                source,
                source,
                btuh / Propane.BTU_PER_LB,
                LiquidBalance.HEAT_CAPACITY,
                lb -> wall(Math.max(0, lb / pounds), source, least),
                Propane::latent);
        OptionalDouble minutes = balance.minutesUntil(least);
        Figure figure = minutes.isPresent()
                ? Figure.of(
                        NAME,
                        "min",
                        "lumped balance of the liquid as its level falls from the refill gauge: its heat, heat through"
                                + " the wetted wall, latent heat leaving (derived)",
                        Confidence.COMPUTED,
                        List.of(
                                design,
                                vapour.pressures().least(),
                                vapour.gauge().get(0),
                                heatingValue),
                        v -> minutes.getAsDouble())
                : Figure.unknown(NAME, "min", List.of());
        return new Demands.Hold(figure, minutes.isEmpty());
    }

    private double sourceF(Container tank) {
        return tank.body().orElseThrow().sourceF(vapour.air().number());
    }

    /** Of the liquid's own weight and the gallons in which the year is counted, the lesser: the shorter time. */
    private double pounds(double liquidF) {
        double perGal = Math.min(Propane.density(liquidF), heatingValue.number() / Propane.BTU_PER_LB);
        double sum = 0;
        for (int i = 0; i < vapour.tanks().size(); i++) {
            Container t = vapour.tanks().get(i);
            sum += t.capacityGal().number()
                    * t.count().number()
                    * vapour.gauge().get(i).number()
                    / 100
                    * perGal;
        }
        return sum;
    }

    /** Btu/h for each degF: what carries the figure of that level at the least pressure, and no more. */
    private double wall(double left, double sourceF, double leastF) {
        return sourceF <= leastF
                ? 0
                : vapour.whenLeft(left) * Propane.latent(leastF) / Propane.BTU_PER_LB / (sourceF - leastF);
    }

    private Demands.Hold unknown(String words) {
        String at = vapour.tanks().isEmpty() ? "/tank" : vapour.tanks().get(0).at();
        return new Demands.Hold(Figure.unknown(NAME, "min", List.of(new Missing(at, words))), false);
    }
}
