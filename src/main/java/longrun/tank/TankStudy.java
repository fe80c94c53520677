package longrun.tank;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.DoubleUnaryOperator;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Site;
import longrun.plan.Tank;
import longrun.plan.Use;
import longrun.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/** Works out what the tank holds, the vapour it gives and what is asked of it. Never throws on a plan that can be read. */
public final class TankStudy {

    private static final double GAUGE_OFF = 5;
    private static final AtomicReference<@Nullable Kept> LAST = new AtomicReference<>();

    private final List<Container> tanks;
    private final Figure design;
    private final List<Figure> refill;
    private final TankPressures pressures;
    private final TankVapour vapour;

    private TankStudy(List<Container> tanks, Figure design, List<Figure> refill, Plan plan) {
        this.tanks = tanks;
        this.design = design;
        this.refill = refill;
        this.pressures = TankPressures.of(plan, tanks);
        this.vapour = new TankVapour(tanks, refill, design, pressures);
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
                        .toList(),
                plan);
    }

    /** All that is known of the plan's tank or tanks. The last study is kept: a key on the route changes none. */
    public static TankReport of(Plan plan) {
        Rests rests = Rests.of(plan);
        Kept kept = LAST.get();
        if (kept == null || !kept.on().equals(rests)) {
            kept = new Kept(rests, anew(plan));
            LAST.set(kept);
        }
        return kept.report();
    }

    /** The study, whichever is kept. */
    static TankReport anew(Plan plan) {
        return designDay(plan).report(plan);
    }

    private record Kept(Rests on, TankReport report) {}

    /** All of a plan that its tank study rests on: plans alike in it have the same study, whatever else is entered. */
    private record Rests(
            Optional<Site> site,
            List<Regulator> regulators,
            List<Appliance> appliances,
            List<Tank> tank,
            List<Tank> tanks,
            Optional<Use> use) {

        static Rests of(Plan plan) {
            return new Rests(plan.site(), plan.regulators(), plan.appliances(), plan.tank(), plan.tanks(), plan.use());
        }
    }

    /**
     * Of the whole study only what a tank holds and what it gives with everything firing.
     *
     * @param usableGal from a fill down to the refill gauge
     * @param demand everything firing
     */
    public record Everything(Figure usableGal, Demand demand) {}

    /** What a tank holds, and what it gives with everything firing: a figure as in the whole study, sooner. */
    public static Everything everything(Plan plan) {
        TankStudy s = designDay(plan);
        return new Everything(
                new TankVolumes(s.tanks, s.refill).volume("usable", 0, true),
                new Demands(
                                plan,
                                s.vapour.most(),
                                s.vapour.planned(),
                                new HoldTime(s.vapour, DesignDay.heatingValue(plan))::of)
                        .everything());
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
        TankVapour then =
                new TankStudy(tanks, air, tanks.stream().map(t -> gauge).toList(), plan).vapour;
        return new TankMoment(then.most(), then.planned(), then.own(), then.curve());
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
        Figure capacity = vapour.most();
        Figure planned = vapour.planned();
        List<Demand> demands =
                new Demands(plan, capacity, planned, new HoldTime(vapour, DesignDay.heatingValue(plan))::of).list();
        return new TankReport(
                volumes.waterCapacity(),
                volumes.volume("full", 0, false),
                volumes.volume("full, gauge 5 % off", GAUGE_OFF, false),
                volumes.volume("usable", 0, true),
                volumes.volume("usable, gauge 5 % off", GAUGE_OFF, true),
                volumes.atGauge("in the tank now", volumes::gauge),
                volumes.atGauge("left at the refill gauge", refill::get),
                capacity.named("vapour at the design temperature, the most for a short time"),
                planned,
                vapour.own(),
                pressures.least(),
                pressures.kept(),
                Figure.of(
                        "gas stops",
                        "degF",
                        "propane boils where its pressure is the air's",
                        Confidence.COMPUTED,
                        List.of(pressures.air()),
                        v -> pressures.boilingF()),
                vapour.derived(),
                vapour.bySuppliers(),
                demands,
                vapour.curve(),
                new SizeSearch(demands.get(0).btuh(), design, pressures, firstRefill(), plan).choices());
    }

    static Figure noTank(String name, String unit) {
        return Figure.unknown(
                name, unit, List.of(new Missing("/tank", "the tank: its kind, water capacity, refill gauge")));
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
}
