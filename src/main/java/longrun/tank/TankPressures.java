package longrun.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Site;
import longrun.quantity.Elevation;
import longrun.quantity.Pressure;

/**
 * The pressures vapour is told at, and the liquid's temperature at each where the house stands.
 *
 * @param least the tank may be drawn down to for a short time, psig; of several tanks the greatest
 * @param kept the pressure to plan with: 20 psig, or what the first regulator or the tank asks for where that is more
 * @param air pressure of the air, psia
 * @param leastF temperature of the liquid at the least pressure, degF
 * @param keptF temperature of the liquid at the pressure to plan with
 * @param boilingF temperature at which gas stops: propane boils at the air's own pressure
 */
record TankPressures(Figure least, Figure kept, Figure air, double leastF, double keptF, double boilingF) {

    /** Pressure printed capacities for steady draw are often given at, psig. */
    static final double STEADY_PSIG = 20;

    static TankPressures of(Plan plan, List<Container> tanks) {
        Figure air = air(plan);
        Figure least = tanks.stream()
                .map(TankPressures::least)
                .max(Comparator.comparingDouble(Figure::number))
                .orElseGet(TankPressures::rulesOwn);
        Figure kept = kept(plan, least);
        // The rule's own basis is liquid at -20 degF, wherever the gauge stands.
        double leastF = least.confidence().isPresent()
                ? Propane.degF(least.number())
                : Propane.degF(least.number(), air.number());
        return new TankPressures(
                least,
                kept,
                air,
                leastF,
                Math.max(leastF, Propane.degF(kept.number(), air.number())),
                Propane.degF(0, air.number()));
    }

    private static Figure air(Plan plan) {
        Optional<Elevation> elevation = plan.site().map(Site::elevation).flatMap(e -> e.findValue());
        return elevation
                .map(e -> Figure.of(
                        "pressure of the air",
                        "psia",
                        "U.S. Standard Atmosphere, 1976",
                        Confidence.MEMORY,
                        List.of(Figure.entered(
                                "elevation",
                                plan.site().orElseThrow().elevation(),
                                Elevation::feet,
                                "ft",
                                "/site/elevation",
                                "")),
                        v -> Propane.airPsia(e)))
                .orElseGet(() -> Figure.given(
                        "pressure of the air",
                        Propane.AIR_PSIA,
                        "psia",
                        "no elevation entered: the sea\u2019s, the safer side",
                        Confidence.COMPUTED));
    }

    private static Figure least(Container tank) {
        return tank.entry().leastTankPressure().isKnown()
                ? Figure.entered(
                        "least tank pressure",
                        tank.entry().leastTankPressure(),
                        Pressure::psi,
                        "psig",
                        tank.at() + "/leastTankPressure",
                        "")
                : rulesOwn();
    }

    private static Figure rulesOwn() {
        return Figure.given(
                "least tank pressure",
                VapourRule.LEAST_PSIG,
                "psig",
                "none entered: liquid at -20 degF, the rule's own basis",
                Confidence.MEMORY);
    }

    private static Figure kept(Plan plan, Figure least) {
        List<Figure> all = new ArrayList<>();
        all.add(Figure.given("tank pressure", STEADY_PSIG, "psig", "a steady draw", Confidence.SECONDARY));
        for (int i = 0; i < plan.regulators().size(); i++) {
            Regulator r = plan.regulators().get(i);
            if (r.fedBy().is("tank") && r.minInlet().isKnown()) {
                all.add(Figure.entered(
                        "least inlet of " + r.id(),
                        r.minInlet(),
                        Pressure::psi,
                        "psig",
                        "/regulators/" + i + "/minInlet",
                        ""));
            }
        }
        all.add(least);
        return all.stream()
                .max(Comparator.comparingDouble(Figure::number))
                .orElseThrow()
                .named("pressure to plan with");
    }
}
