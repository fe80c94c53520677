package longrun.fuel.fill;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Figure;
import longrun.plan.Fact;
import longrun.plan.GaugeReading;
import longrun.plan.Orientation;
import longrun.plan.Placement;
import longrun.plan.Plan;
import longrun.plan.Tank;
import longrun.plan.TankKind;
import longrun.quantity.Ratio;
import longrun.quantity.Volume;
import longrun.tank.StandardTanks;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;

/** Each standard tank with the house's own use, climate and refill gauge: one of them, lying as the one entered. */
final class TankLadder {

    private TankLadder() {}

    /** Smallest first; none for a plan without a tank. */
    static List<Rung> of(Plan plan, Figure coldestPerDay) {
        if (plan.allTanks().isEmpty()) {
            return List.of();
        }
        Tank own = plan.allTanks().get(0);
        boolean buried = own.placement().is(Placement.UNDERGROUND);
        List<Rung> out = new ArrayList<>();
        for (StandardTanks.Size size : StandardTanks.horizontal()) {
            TankReport report = TankStudy.of(with(plan, instead(own, size)));
            out.add(new Rung(
                    size.waterGal(),
                    Figure.of(
                            "days of a fill in the coldest month",
                            "days",
                            "usable / gallons a day",
                            longrun.origin.Confidence.COMPUTED,
                            List.of(report.usableGal(), coldestPerDay),
                            v -> v[0] / v[1]),
                    report.demands().get(0),
                    StandardTanks.distances(size.waterGal(), buried),
                    plan.allTanks().size() == 1 && stands(own, size)));
        }
        return List.copyOf(out);
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
