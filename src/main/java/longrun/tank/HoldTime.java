package longrun.tank;

import java.util.List;
import java.util.OptionalDouble;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;

/** How long a load over the rule can be held: the liquid cools from the warmth about the tank to its least pressure. */
record HoldTime(List<Container> tanks, List<Figure> refill, Figure design, Figure leastPsig) {

    private static final String NAME = "minutes it can be held";

    Demands.Hold of(double btuh) {
        boolean ready = design.isKnown()
                && !tanks.isEmpty()
                && refill.stream().allMatch(Figure::isKnown)
                && tanks.stream()
                        .allMatch(t -> t.capacityGal().isKnown() && t.count().isKnown());
        if (!ready) {
            return unknown("the tank's capacity, refill gauge and the winter design temperature");
        }
        if (!tanks.stream().allMatch(t -> t.body().filter(b -> b.wall(1) > 0).isPresent())) {
            return unknown("a tank whose wall is known: a cylinder's table and a supplier's figure tell no minutes");
        }
        double source = body(0).sourceF(design.number());
        if (!tanks.stream().allMatch(t -> t.body().orElseThrow().sourceF(design.number()) == source)) {
            return unknown("tanks that are all above ground or all buried");
        }
        double pounds = 0;
        for (int i = 0; i < tanks.size(); i++) {
            pounds += tanks.get(i).capacityGal().number()
                    * tanks.get(i).count().number()
                    * fill(i)
                    * Propane.density(source);
        }
        if (pounds <= 0) {
            return unknown("a refill gauge above 0 %");
        }
        double start = pounds;
        LiquidBalance balance = new LiquidBalance(
                pounds,
                source,
                source,
                btuh / Propane.BTU_PER_LB,
                LiquidBalance.HEAT_CAPACITY,
                lb -> wall(Math.max(0, lb / start)),
                Propane::latent);
        double least = Propane.degF(leastPsig.number());
        OptionalDouble minutes = balance.minutesUntil(least);
        Figure figure = minutes.isPresent()
                ? Figure.of(
                        NAME,
                        "min",
                        "lumped balance of the liquid: its heat, heat through the wetted wall, latent heat leaving (derived)",
                        Confidence.COMPUTED,
                        List.of(design, leastPsig, refill.get(0)),
                        v -> minutes.getAsDouble())
                : Figure.unknown(NAME, "min", List.of());
        return new Demands.Hold(figure, minutes.isEmpty());
    }

    private Vaporiser body(int i) {
        return tanks.get(i).body().orElseThrow();
    }

    private double fill(int i) {
        return refill.get(i).number() / 100;
    }

    private double wall(double left) {
        double sum = 0;
        for (int i = 0; i < tanks.size(); i++) {
            sum += tanks.get(i).count().number() * body(i).wall(fill(i) * left);
        }
        return sum;
    }

    private Demands.Hold unknown(String words) {
        String at = tanks.isEmpty() ? "/tank" : tanks.get(0).at();
        return new Demands.Hold(Figure.unknown(NAME, "min", List.of(new Missing(at, words))), false);
    }
}
