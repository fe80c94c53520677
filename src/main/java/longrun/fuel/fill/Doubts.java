package longrun.fuel.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.fuel.OtherYear;
import longrun.plan.ApplianceNames;
import longrun.plan.GaugeReading;
import longrun.plan.Plan;
import longrun.plan.Tank;
import longrun.plan.Use;
import longrun.plan.choice.TankKind;
import longrun.tank.TankReport;

/** What the entries of a plan leave open. A thing weighed or billed is in no doubt. */
final class Doubts {

    /** A float gauge may be off so much of the capacity (held from memory). */
    static final double GAUGE_SHARE = 0.05;
    /** A month may be so much warmer or colder than its mean, degF (common practice). */
    static final double CLIMATE_F = 2;
    /** Hours a day at full fire as people guess them (common practice). */
    static final double HOURS_SHARE = 0.25;
    /** The heat loss of a house, calculated or taken from the sizing of a heater (common practice). */
    static final double LOSS_SHARE = 0.10;

    private Doubts() {}

    static List<Doubt> of(Plan plan, TankReport tank, Optional<TicketFit> fit) {
        List<Doubt> out = new ArrayList<>();
        gauge(plan, tank).ifPresent(out::add);
        boolean heats = plan.use().map(u -> !u.heating().isEmpty()).orElse(false);
        if (heats) {
            out.add(new Doubt(
                    "the climate, 2 \u00b0F",
                    "/site/monthlyMeanTemp",
                    "a season\u2019s tickets",
                    0,
                    OtherYear.warmer(-CLIMATE_F),
                    OtherYear.warmer(CLIMATE_F)));
        }
        if (fit.isPresent()) { // the tickets tell what the hours and the loss only guess
            double spread = fit.get().spread();
            out.add(share(
                    "the fit to the past fills, " + inHundred(spread), "/deliveries", "one more ticket", "", spread));
            return List.copyOf(out);
        }
        if (heats) {
            out.add(share(
                    "the heat the house loses, 10 in 100",
                    "/use/heating/0/designLoad",
                    "two past fills",
                    OtherYear.HEATING,
                    LOSS_SHARE));
        }
        List<Use.Other> others = plan.use().map(Use::others).orElse(List.of());
        for (int i = 0; i < others.size(); i++) {
            Use.Other o = others.get(i);
            if (!o.volumePerYear().isKnown() && o.hoursPerDay().is(h -> h > 0)) {
                String id = o.appliance().findValue().orElse("other-" + (i + 1));
                out.add(share(
                        "the hours of " + called(plan, id) + ", 25 in 100",
                        "/use/others/" + i + "/hoursPerDay",
                        "counting them for a week",
                        id,
                        HOURS_SHARE));
            }
        }
        return List.copyOf(out);
    }

    static String inHundred(double share) {
        return Math.max(1, Math.round(100 * share)) + " in 100";
    }

    private static Optional<Doubt> gauge(Plan plan, TankReport tank) {
        boolean float5 = plan.allTanks().stream().anyMatch(Doubts::isGauged);
        return float5 && tank.waterGal().isKnown()
                ? Optional.of(new Doubt(
                        "the gauge, 5 in 100",
                        "/tank/gauge",
                        "a second reading some weeks on",
                        GAUGE_SHARE * tank.waterGal().number(),
                        OtherYear.PLAIN,
                        OtherYear.PLAIN))
                : Optional.empty();
    }

    /** A cylinder put on a scale is weighed, not gauged. */
    private static boolean isGauged(Tank t) {
        return !t.kind().is(TankKind.CYLINDER) || t.gauge().is(g -> g instanceof GaugeReading.Share);
    }

    private static Doubt share(String entry, String field, String counting, String use, double share) {
        OtherYear more = use.isEmpty() ? OtherYear.times(1 + share) : OtherYear.timesOf(use, 1 + share);
        OtherYear less = use.isEmpty() ? OtherYear.times(1 - share) : OtherYear.timesOf(use, 1 - share);
        return new Doubt(entry, field, counting, 0, more, less);
    }

    private static String called(Plan plan, String id) {
        return plan.appliances().stream()
                .filter(a -> a.id().equals(id))
                .map(ApplianceNames.of(plan)::called)
                .findFirst()
                .orElse(id);
    }
}
