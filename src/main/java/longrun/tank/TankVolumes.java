package longrun.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;

/** Gallons: what the tanks hold, what can be used of it, what is in them. */
record TankVolumes(List<Container> tanks, List<Figure> refill) {

    Figure waterCapacity() {
        String name = "capacity";
        if (tanks.isEmpty()) {
            return TankStudy.noTank(name, "gal");
        }
        List<Figure> parts = tanks.stream()
                .map(t -> Figure.of(
                        name,
                        "gal",
                        "capacity x tanks alike",
                        Confidence.COMPUTED,
                        List.of(t.capacityGal(), t.count()),
                        v -> v[0] * v[1]))
                .toList();
        return parts.size() == 1 ? parts.get(0) : Figure.sum(name, "gal", parts);
    }

    /** Gallons when full, less what stays below the refill gauge where asked; an error of the gauge takes its share off. */
    Figure volume(String name, double gaugeOff, boolean downToRefill) {
        if (tanks.isEmpty()) {
            return TankStudy.noTank(name, "gal");
        }
        List<Figure> parts = new ArrayList<>();
        for (int i = 0; i < tanks.size(); i++) {
            Container t = tanks.get(i);
            double fullPercent = t.cylinder() ? 100 : 100 * FillLimit.USUAL;
            double off = t.cylinder() ? 0 : gaugeOff;
            List<Figure> from = new ArrayList<>(List.of(t.capacityGal(), t.count()));
            if (downToRefill) {
                from.add(refill.get(i));
            }
            String how = t.cylinder()
                    ? "full by weight less the refill weight"
                    : downToRefill ? "(80 % - refill gauge) x water capacity" : "80 % of water capacity";
            Figure part = Figure.of(
                    name, "gal", how + (off > 0 ? ", less 5 % of capacity" : ""), Confidence.MEMORY, from, v -> {
                        double percent = fullPercent - off - (downToRefill ? v[2] : 0);
                        return percent > 0 ? v[0] * v[1] * percent / 100 : Double.NaN;
                    });
            boolean nothing = part.missing().stream().anyMatch(m -> m.field().isEmpty());
            parts.add(
                    nothing
                            ? Figure.unknown(
                                    name,
                                    "gal",
                                    List.of(new Missing(
                                            t.at() + "/refillAt",
                                            "a refill gauge below the level a delivery fills to")))
                            : part);
        }
        return parts.size() == 1 ? parts.get(0) : Figure.sum(name, "gal", parts);
    }

    Figure atGauge(String name, IntFunction<Figure> reading) {
        if (tanks.isEmpty()) {
            return TankStudy.noTank(name, "gal");
        }
        List<Figure> parts = new ArrayList<>();
        for (int i = 0; i < tanks.size(); i++) {
            Container t = tanks.get(i);
            parts.add(Figure.of(
                    name,
                    "gal",
                    "gauge x capacity",
                    Confidence.COMPUTED,
                    List.of(t.capacityGal(), t.count(), reading.apply(i)),
                    v -> v[0] * v[1] * v[2] / 100));
        }
        return parts.size() == 1 ? parts.get(0) : Figure.sum(name, "gal", parts);
    }

    Figure gauge(int i) {
        Container t = tanks.get(i);
        return t.share("gauge", t.entry().gauge(), "/gauge", "what the gauge shows");
    }
}
