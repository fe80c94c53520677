package longrun.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;

/**
 * The vapour tanks give together at one gauge reading and one air temperature: each by its supplier's own figure where it
 * has one, else by the rule.
 *
 * @param gauge of each tank, percent
 * @param air degF
 */
record TankVapour(List<Container> tanks, List<Figure> gauge, Figure air, TankPressures pressures) {

    private static final String RULE = "D x L x K(fill) x M(air), rule of the LP-gas trade";
    private static final String STANDING =
            "same heat through each square foot as the rule, on the wetted shell (derived)";
    private static final String BURIED =
            "S k (ground - liquid) x wetted share, never above the rule at 0 degF (derived)";
    private static final String CYLINDER = "table of the 100 lb cylinder";

    /** The most for a short time, drawn down to the least pressure. */
    Figure most() {
        return sum("vapour, the most for a short time", pressures.least(), pressures.leastF(), true);
    }

    /** The figure to plan with, keeping the pressure to plan with. */
    Figure planned() {
        String name = "vapour keeping " + pressures.kept().text();
        return sum(name, pressures.kept(), pressures.keptF(), true).named(name);
    }

    /** As worked out from the tank, also where a supplier's figure overrules it. */
    Figure own() {
        return sum("vapour as worked out", pressures.least(), pressures.leastF(), false);
    }

    /** Whether the suppliers' figures alone decide. */
    boolean bySuppliers() {
        return !tanks.isEmpty() && tanks.stream().allMatch(TankVapour::hasSuppliers);
    }

    /** Whether a figure that decides is derived and no rule of the trade. */
    boolean derived() {
        return tanks.stream()
                .anyMatch(t ->
                        !hasSuppliers(t) && t.body().map(Vaporiser::derived).orElse(false));
    }

    private static boolean hasSuppliers(Container t) {
        return t.entry().vapourCapacity().isKnown();
    }

    private Figure sum(String name, Figure psig, double liquidF, boolean suppliers) {
        if (tanks.isEmpty()) {
            return TankStudy.noTank(name, "Btu/h");
        }
        List<Figure> parts = new ArrayList<>();
        for (int i = 0; i < tanks.size(); i++) {
            parts.add(
                    suppliers && hasSuppliers(tanks.get(i)) ? suppliers(tanks.get(i)) : ofOne(i, name, psig, liquidF));
        }
        return parts.size() == 1 ? parts.get(0) : Figure.sum(name, "Btu/h", parts);
    }

    private static Figure suppliers(Container t) {
        return Figure.entered(
                "the supplier's figure",
                t.entry().vapourCapacity(),
                h -> h.btuh(),
                "Btu/h",
                t.at() + "/vapourCapacity",
                "");
    }

    private Figure ofOne(int i, String name, Figure psig, double liquidF) {
        Container t = tanks.get(i);
        if (t.body().isEmpty()) {
            List<Missing> missing = new ArrayList<>(t.bodyMissing());
            missing.addAll(gauge.get(i).missing());
            missing.addAll(air.missing());
            return Figure.unknown(name, "Btu/h", missing);
        }
        Vaporiser body = t.body().get();
        List<Figure> from = new ArrayList<>(List.of(gauge.get(i), air, psig, t.count(), pressures.air()));
        from.addAll(t.bodyFrom());
        boolean tableOnly = body instanceof Vaporiser.Cylinder;
        if (tableOnly && psig.number() != VapourRule.LEAST_PSIG) {
            return Figure.unknown(
                    name,
                    "Btu/h",
                    List.of(new Missing(
                            t.at() + "/vapourCapacity",
                            "the supplier's figure: the cylinder's table names no pressure")));
        }
        Figure figure = Figure.of(
                name, "Btu/h", how(body), Confidence.MEMORY, from, v -> v[3] * body.btuh(v[0] / 100, v[1], liquidF));
        boolean outside = figure.missing().stream().anyMatch(m -> m.field().isEmpty());
        return outside
                ? Figure.unknown(
                        name,
                        "Btu/h",
                        List.of(new Missing(
                                t.at() + "/vapourCapacity",
                                "the supplier's figure: the table of the 100 lb cylinder runs from 0 to 70 degF and"
                                        + " from 20 to 100 lb")))
                : figure;
    }

    private static String how(Vaporiser body) {
        return body instanceof Vaporiser.Lying
                ? RULE
                : body instanceof Vaporiser.Standing ? STANDING : body instanceof Vaporiser.Buried ? BURIED : CYLINDER;
    }

    /** As worked out from cold to warm, a supplier's figure taken as it stands beside others; empty where unknown. */
    List<TankReport.CurvePoint> curve() {
        boolean known = !tanks.isEmpty()
                && tanks.stream()
                        .allMatch(t -> t.body().isPresent() && t.count().isKnown())
                && gauge.stream().allMatch(Figure::isKnown);
        if (!known) {
            return List.of();
        }
        TreeSet<Double> airs = new TreeSet<>();
        for (int f = -50; f <= 60; f += 5) {
            airs.add((double) f);
        }
        air.value().ifPresent(airs::add);
        return airs.stream()
                .map(f ->
                        new TankReport.CurvePoint(f, at(f, pressures.leastF(), true), at(f, pressures.keptF(), false)))
                .toList();
    }

    private OptionalDouble at(double airF, double liquidF, boolean tables) {
        double sum = 0;
        for (int i = 0; i < tanks.size(); i++) {
            Container t = tanks.get(i);
            Vaporiser body = t.body().orElseThrow();
            if (hasSuppliers(t) && !bySuppliers()) {
                sum += suppliers(t).number();
                continue;
            }
            if (body instanceof Vaporiser.Cylinder && !tables) {
                return OptionalDouble.empty();
            }
            sum += t.count().number() * body.btuh(gauge.get(i).number() / 100, airF, liquidF);
        }
        return Double.isNaN(sum) ? OptionalDouble.empty() : OptionalDouble.of(sum);
    }

    /**
     * Vapour with the same share of every tank's liquid left, Btu/h; a supplier's figure falls with the level as ours does.
     *
     * @param left share of what the gauge shows
     */
    double whenLeft(double left) {
        double sum = 0;
        for (int i = 0; i < tanks.size(); i++) {
            Container t = tanks.get(i);
            double fill = gauge.get(i).number() / 100;
            double ours = t.count().number() * gives(t, fill * left);
            sum += hasSuppliers(t) ? asSuppliers(t, fill, ours) : ours;
        }
        return sum;
    }

    private double asSuppliers(Container t, double fill, double ours) {
        double full = t.count().number() * gives(t, fill);
        return full > 0 ? suppliers(t).number() * ours / full : ours;
    }

    private double gives(Container t, double fill) {
        return t.body().orElseThrow().btuh(fill, air.number(), pressures.leastF());
    }
}
