package longrun.parts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.plan.Plan;
import longrun.plan.SizeNames;
import longrun.plan.choice.Material;
import longrun.quantity.NotAQuantity;

/** Prices the plan has, by material and size however the size is written. */
final class Prices {

    private Prices() {}

    /** Money a foot; of two prices for one pipe the higher. */
    static Optional<Double> find(Plan plan, Optional<Material> material, Optional<String> size) {
        if (material.isEmpty() || size.isEmpty()) {
            return Optional.empty();
        }
        String before = material.get().written() + " ";
        return plan.prices().entrySet().stream()
                .filter(e -> e.getKey().startsWith(before))
                .filter(e -> isSize(material.get(), e.getKey().substring(before.length()), size.get()))
                .map(Map.Entry::getValue)
                .max(Double::compare);
    }

    private static boolean isSize(Material material, String written, String size) {
        try {
            return SizeNames.read(material, written, List.of(size)).equals(size);
        } catch (NotAQuantity e) {
            return false;
        }
    }
}
