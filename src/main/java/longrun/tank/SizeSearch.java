package longrun.tank;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Site;

/**
 * The smallest standard tank that gives everything firing its vapour while it keeps the pressure to plan with, above and
 * below ground; also where the gauge stands 5 % of capacity too high, as a float gauge may.
 */
record SizeSearch(Figure need, Figure design, TankPressures pressures, Figure refill, Plan plan) {

    /** How far a float gauge may be off, percent of capacity (held from memory). */
    private static final double GAUGE_OFF = 5;

    /** Above ground first. */
    List<TankReport.SizeChoice> choices() {
        return List.of(choice(false), choice(true));
    }

    private TankReport.SizeChoice choice(boolean underground) {
        Figure ground = Figure.entered(
                "ground",
                plan.site().map(Site::groundTemp).orElse(Fact.unknown()),
                t -> t.degF(),
                "degF",
                "/site/groundTemp",
                "winter temperature of the ground at the tank's depth");
        List<Figure> inputs = new ArrayList<>(List.of(need, design, pressures.kept(), pressures.air(), refill));
        if (underground) {
            inputs.add(ground);
        }
        Set<Missing> missing = new LinkedHashSet<>();
        inputs.forEach(f -> missing.addAll(f.missing()));
        if (inputs.stream().anyMatch(f -> !f.isKnown())) {
            return new TankReport.SizeChoice(
                    underground,
                    Optional.empty(),
                    Optional.empty(),
                    Figure.unknown("vapour", "Btu/h", List.copyOf(missing)),
                    List.copyOf(missing));
        }
        double liquid = pressures.keptF();
        double low = Math.max(0, refill.number() - GAUGE_OFF) / 100;
        for (StandardTanks.Size size : StandardTanks.horizontal()) {
            Vaporiser body = underground
                    ? new Vaporiser.Buried(
                            size.diameterIn(), size.lengthIn(), 1 + size.diameterIn() / 24, ground.number())
                    : new Vaporiser.Lying(size.diameterIn(), size.lengthIn());
            double gives = body.btuh(refill.number() / 100, design.number(), liquid);
            if (body.btuh(low, design.number(), liquid) >= need.number()) {
                return new TankReport.SizeChoice(
                        underground,
                        Optional.of(size),
                        StandardTanks.distances(size.waterGal(), underground),
                        Figure.of(
                                "vapour", "Btu/h", "standard size " + size.id(), Confidence.MEMORY, inputs, v -> gives),
                        List.of());
            }
        }
        return new TankReport.SizeChoice(
                underground,
                Optional.empty(),
                Optional.empty(),
                Figure.unknown("vapour", "Btu/h", List.of()),
                List.of());
    }
}
