package longrun.fuel.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.GaugeReading;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Site;
import longrun.plan.Tank;
import longrun.plan.Use;
import longrun.plan.choice.Orientation;
import longrun.plan.choice.Placement;
import longrun.plan.choice.TankKind;
import longrun.quantity.Elevation;
import longrun.quantity.HeatRate;
import longrun.quantity.HeatingValue;
import longrun.quantity.Ratio;
import longrun.quantity.Temperature;
import longrun.quantity.Volume;
import longrun.tank.StandardTanks;
import longrun.tank.TankStudy;
import org.jspecify.annotations.Nullable;

/** Each standard tank with the house's own use, climate and refill gauge: one of them, lying as the one entered. */
final class TankLadder {

    private static final AtomicReference<@Nullable Kept> LAST = new AtomicReference<>();

    private TankLadder() {}

    /** Smallest first; none for a plan without a tank. */
    static List<Rung> of(Plan plan, Figure coldestPerDay) {
        if (plan.allTanks().isEmpty()) {
            return List.of();
        }
        Tank own = plan.allTanks().get(0);
        boolean buried = own.placement().is(Placement.UNDERGROUND);
        List<StandardTanks.Size> sizes = StandardTanks.horizontal();
        List<TankStudy.Everything> studies = studies(plan, own, sizes);
        List<Rung> out = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            StandardTanks.Size size = sizes.get(i);
            out.add(new Rung(
                    size.waterGal(),
                    Figure.of(
                            "days of a fill in the coldest month",
                            "days",
                            "usable / gallons a day",
                            Confidence.COMPUTED,
                            List.of(studies.get(i).usableGal(), coldestPerDay),
                            v -> v[0] / v[1]),
                    studies.get(i).demand(),
                    StandardTanks.distances(size.waterGal(), buried),
                    plan.allTanks().size() == 1 && stands(own, size)));
        }
        return List.copyOf(out);
    }

    /** All that the tanks' vapour rests on: plans alike in it have the same, whatever else is entered. */
    private record Key(
            Tank largest,
            Fact<Temperature> design,
            Fact<Temperature> ground,
            Fact<Elevation> elevation,
            List<Regulator> regulators,
            List<Fact<HeatRate>> inputs,
            List<String> ids,
            Fact<HeatingValue> heatingValue) {}

    private record Kept(Key key, List<TankStudy.Everything> studies) {}

    /** Each size's study; the last are kept, since a key at the gauge or at a use changes none. */
    private static List<TankStudy.Everything> studies(Plan plan, Tank own, List<StandardTanks.Size> sizes) {
        Key key = new Key(
                instead(own, sizes.get(sizes.size() - 1)),
                plan.site().map(Site::winterDesignTemp).orElse(Fact.unknown()),
                plan.site().map(Site::groundTemp).orElse(Fact.unknown()),
                plan.site().map(Site::elevation).orElse(Fact.unknown()),
                plan.regulators(),
                plan.appliances().stream().map(Appliance::input).toList(),
                plan.appliances().stream().map(Appliance::id).toList(),
                plan.use().map(Use::heatingValue).orElse(Fact.unknown()));
        Kept kept = LAST.get();
        if (kept == null || !kept.key().equals(key)) {
            kept = new Kept(
                    key,
                    sizes.stream()
                            .map(s -> TankStudy.everything(with(plan, instead(own, s))))
                            .toList());
            LAST.set(kept);
        }
        return kept.studies();
    }

    private static boolean stands(Tank own, StandardTanks.Size size) {
        return own.kind().is(TankKind.ASME)
                && !own.count().is(c -> c > 1)
                && own.waterCapacity().is(v -> size.holds(v.gallons()));
    }

    private static Tank instead(Tank own, StandardTanks.Size size) {
        Fact<GaugeReading> refill = own.refillAt().is(r -> r instanceof GaugeReading.Share)
                ? own.refillAt()
                : Fact.known(new GaugeReading.Share(new Ratio(0.30)), "30 %");
        return new Tank(
                Fact.known(TankKind.ASME),
                Fact.known(new Volume(size.waterGal()), size.waterGal() + " gal"),
                Fact.unknown(),
                Fact.known(Orientation.HORIZONTAL),
                own.placement().isKnown() ? own.placement() : Fact.known(Placement.ABOVE_GROUND),
                Fact.unknown(),
                Fact.unknown(),
                Fact.known(1.0, "1"),
                Fact.unknown(),
                Fact.unknown(),
                refill,
                Fact.unknown(),
                Fact.unknown(),
                Fact.unknown(),
                Fact.unknown(),
                Fact.unknown(),
                Fact.unknown(),
                own.leastTankPressure(),
                Fact.unknown(),
                Fact.unknown());
    }

    private static Plan with(Plan p, Tank tank) {
        return new Plan(
                p.format(),
                p.name(),
                p.code(),
                p.site(),
                p.fittingAllowance(),
                p.availableSizes(),
                p.useMemoryTables(),
                p.prices(),
                p.diversity(),
                p.tubingTables(),
                p.regulators(),
                p.sections(),
                p.rooms(),
                p.appliances(),
                List.of(tank),
                List.of(),
                p.use(),
                p.deliveries(),
                p.readings(),
                p.holdPoints(),
                p.answers());
    }
}
