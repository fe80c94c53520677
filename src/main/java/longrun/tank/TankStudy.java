package longrun.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Plan;
import longrun.quantity.Temperature;

/** Works out what the tank holds, the vapour it gives and what is asked of it. Never throws on a plan that can be read. */
public final class TankStudy {

    /** Pressure printed capacities for steady draw are often given at, psig. */
    public static final double STEADY_PSIG = 20;

    private static final double GAUGE_OFF = 5;
    private static final String RULE = "D x L x K(fill) x M(air), rule of the LP-gas trade";
    private static final String STANDING =
            "same heat through each square foot as the rule, on the wetted shell (derived)";
    private static final String BURIED =
            "S k (ground - liquid) x wetted share, never above the rule at 0 degF (derived)";
    private static final String CYLINDER = "table of the 100 lb cylinder";

    private final List<Container> tanks;
    private final Figure design;
    private final Figure leastPsig;
    private final List<Figure> refill;

    private TankStudy(List<Container> tanks, Figure design, List<Figure> refill) {
        this.tanks = tanks;
        this.design = design;
        this.leastPsig = leastPsig(tanks);
        this.refill = refill;
    }

    private static TankStudy designDay(Plan plan) {
        List<Container> tanks = Container.of(plan);
        return new TankStudy(
                tanks,
                SpaceHeating.design(plan),
                tanks.stream()
                        .map(t -> t.share(
                                "refill gauge",
                                t.entry().refillAt(),
                                "/refillAt",
                                "gauge reading at which it is refilled"))
                        .toList());
    }

    /** All that is known of the plan's tank or tanks. */
    public static TankReport of(Plan plan) {
        return designDay(plan).report(plan);
    }

    /** The winter design temperature, degF. */
    public static Figure design(Plan plan) {
        return SpaceHeating.design(plan);
    }

    /**
     * The vapour of the plan's tank or tanks at another gauge reading and air temperature than the design day's.
     *
     * @param gauge of every tank, percent
     * @param air degF
     */
    public static TankMoment at(Plan plan, Figure gauge, Figure air) {
        List<Container> tanks = Container.of(plan);
        return new TankStudy(tanks, air, tanks.stream().map(t -> gauge).toList()).moment();
    }

    private TankMoment moment() {
        Figure own = vapour("vapour by our own reckoning", leastPsig);
        boolean supplier = hasSuppliers();
        Figure at20 = supplier ? suppliers() : vapour("vapour at 20 psig", given20());
        return new TankMoment(supplier ? suppliers() : own, at20.named("vapour at 20 psig"), own, curve());
    }

    private boolean hasSuppliers() {
        return !tanks.isEmpty()
                && tanks.stream().allMatch(t -> t.entry().vapourCapacity().isKnown());
    }

    /**
     * What a delivery fills the tanks to, gallons by the liquid's temperature (the air's above ground, the ground's below):
     * the lesser of 80 % and the limit by weight; a cylinder full by weight. Empty where a capacity is unknown.
     */
    public static Optional<DoubleUnaryOperator> fillTo(Plan plan) {
        List<Container> tanks = Container.of(plan);
        Optional<Double> ground =
                plan.site().flatMap(s -> s.groundTemp().findValue()).map(Temperature::degF);
        boolean known = !tanks.isEmpty()
                && tanks.stream()
                        .allMatch(t -> t.capacityGal().isKnown() && t.count().isKnown());
        if (!known) {
            return Optional.empty();
        }
        return Optional.of(airF -> tanks.stream()
                .mapToDouble(t -> {
                    double gal = t.capacityGal().number();
                    double liquid = t.underground() ? ground.orElse(airF) : airF;
                    double share = t.cylinder() ? 1 : FillLimit.share(liquid, gal, t.underground());
                    return gal * t.count().number() * share;
                })
                .sum());
    }

    private TankReport report(Plan plan) {
        TankVolumes volumes = new TankVolumes(tanks, refill);
        Figure own = vapour("vapour by our own reckoning", leastPsig);
        Figure ownAt20 = vapour("vapour at 20 psig", given20());
        boolean supplier = hasSuppliers();
        Figure capacity = supplier ? suppliers() : own;
        Figure at20 = supplier ? suppliers().named("vapour at 20 psig") : ownAt20;
        List<Demand> demands = new Demands(plan, capacity, at20, this::hold).list();
        return new TankReport(
                volumes.waterCapacity(),
                volumes.volume("full", 0, false),
                volumes.volume("full, gauge 5 % off", GAUGE_OFF, false),
                volumes.volume("usable", 0, true),
                volumes.volume("usable, gauge 5 % off", GAUGE_OFF, true),
                volumes.atGauge("in the tank now", volumes::gauge),
                volumes.atGauge("left at the refill gauge", refill::get),
                capacity.named("vapour at the design temperature"),
                at20,
                own,
                leastPsig,
                tanks.stream().anyMatch(t -> t.body().map(Vaporiser::derived).orElse(false)),
                supplier,
                demands,
                curve(),
                new SizeSearch(demands.get(0).btuh(), design, leastPsig, firstRefill(), plan).choices());
    }

    private static Figure leastPsig(List<Container> tanks) {
        return tanks.stream()
                .filter(t -> t.entry().leastTankPressure().isKnown())
                .findFirst()
                .map(t -> Figure.entered(
                        "least tank pressure",
                        t.entry().leastTankPressure(),
                        p -> p.psi(),
                        "psig",
                        t.at() + "/leastTankPressure",
                        ""))
                .orElseGet(() -> Figure.given(
                        "least tank pressure",
                        VapourRule.LEAST_PSIG,
                        "psig",
                        "none entered: liquid at -20 degF, the rule's own basis",
                        Confidence.MEMORY));
    }

    private static Figure given20() {
        return Figure.given("tank pressure", STEADY_PSIG, "psig", "a steady draw", Confidence.SECONDARY);
    }

    static Figure noTank(String name, String unit) {
        return Figure.unknown(
                name, unit, List.of(new Missing("/tank", "the tank: its kind, water capacity, refill gauge")));
    }

    private Figure vapour(String name, Figure psig) {
        if (tanks.isEmpty()) {
            return noTank(name, "Btu/h");
        }
        List<Figure> parts = new ArrayList<>();
        for (int i = 0; i < tanks.size(); i++) {
            parts.add(vapourOf(i, name, psig));
        }
        return parts.size() == 1 ? parts.get(0) : Figure.sum(name, "Btu/h", parts);
    }

    private Figure vapourOf(int i, String name, Figure psig) {
        Container t = tanks.get(i);
        if (t.body().isEmpty()) {
            List<Missing> missing = new ArrayList<>(t.bodyMissing());
            missing.addAll(refill.get(i).missing());
            missing.addAll(design.missing());
            return Figure.unknown(name, "Btu/h", missing);
        }
        Vaporiser body = t.body().get();
        List<Figure> from = new ArrayList<>(List.of(refill.get(i), design, psig, t.count()));
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
                name,
                "Btu/h",
                how(body),
                Confidence.MEMORY,
                from,
                v -> v[3] * body.btuh(v[0] / 100, v[1], Propane.degF(v[2])));
        boolean outside = figure.missing().stream().anyMatch(m -> m.field().isEmpty());
        return outside
                ? Figure.unknown(
                        name,
                        "Btu/h",
                        List.of(new Missing(
                                t.at() + "/vapourCapacity",
                                "the supplier's figure: the table of the 100 lb cylinder runs from 0 to 70 degF and from 20 to"
                                        + " 100 lb")))
                : figure;
    }

    private static String how(Vaporiser body) {
        return body instanceof Vaporiser.Lying
                ? RULE
                : body instanceof Vaporiser.Standing ? STANDING : body instanceof Vaporiser.Buried ? BURIED : CYLINDER;
    }

    private Figure suppliers() {
        List<Figure> parts = tanks.stream()
                .map(t -> Figure.entered(
                        "the supplier's figure",
                        t.entry().vapourCapacity(),
                        h -> h.btuh(),
                        "Btu/h",
                        t.at() + "/vapourCapacity",
                        ""))
                .toList();
        return parts.size() == 1 ? parts.get(0) : Figure.sum("the supplier's figures", "Btu/h", parts);
    }

    private Figure firstRefill() {
        for (int i = 0; i < tanks.size(); i++) {
            if (!tanks.get(i).cylinder()) {
                return refill.get(i);
            }
        }
        return Figure.unknown(
                "refill gauge", "%", List.of(new Missing("/tank/refillAt", "gauge reading at which it is refilled")));
    }

    private List<TankReport.CurvePoint> curve() {
        boolean known = !tanks.isEmpty()
                && tanks.stream()
                        .allMatch(t -> t.body().isPresent() && t.count().isKnown())
                && refill.stream().allMatch(Figure::isKnown);
        if (!known) {
            return List.of();
        }
        TreeSet<Double> airs = new TreeSet<>();
        for (int f = -50; f <= 60; f += 5) {
            airs.add((double) f);
        }
        design.value().ifPresent(airs::add);
        double liquid = Propane.degF(leastPsig.number());
        double liquid20 = Propane.degF(STEADY_PSIG);
        return airs.stream()
                .map(air -> new TankReport.CurvePoint(air, sum(air, liquid, true), sum(air, liquid20, false)))
                .toList();
    }

    private OptionalDouble sum(double airF, double liquidF, boolean tables) {
        double sum = 0;
        for (int i = 0; i < tanks.size(); i++) {
            Vaporiser body = tanks.get(i).body().orElseThrow();
            if (body instanceof Vaporiser.Cylinder && !tables) {
                return OptionalDouble.empty();
            }
            sum += tanks.get(i).count().number() * body.btuh(refill.get(i).number() / 100, airF, liquidF);
        }
        return Double.isNaN(sum) ? OptionalDouble.empty() : OptionalDouble.of(sum);
    }

    /** How long a load can be held from a tank as warm as what warms it, Btu/h to minutes; see {@link LiquidBalance}. */
    private Demands.Hold hold(double btuh) {
        return new HoldTime(tanks, refill, design, leastPsig).of(btuh);
    }
}
