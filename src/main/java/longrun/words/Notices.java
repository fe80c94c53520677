package longrun.words;

import java.util.List;
import longrun.origin.DataFile;
import longrun.plan.Plan;
import longrun.plan.choice.Material;

/**
 * Notices that are no rules: what a person should know once, where it matters. Nothing is judged by them.
 *
 * @param place the place on screen it belongs to, as an address has it
 * @param when what a house must have for it to matter
 * @param text the notice, as a person reads it
 * @param reference where it is from
 */
public record Notices(String place, String when, String text, String reference) {

    private static final List<Notices> ALL = DataFile.read("rules/notices.csv").rows().stream()
            .map(r -> new Notices(r.text("place"), r.text("when"), r.text("text"), r.text("reference")))
            .toList();

    /** Those that matter in a house. */
    public static List<Notices> of(Plan plan) {
        return ALL.stream().filter(n -> n.matters(plan)).toList();
    }

    private boolean matters(Plan plan) {
        return switch (when) {
            case "tank" -> !plan.allTanks().isEmpty();
            case "regulator" -> !plan.regulators().isEmpty();
            case "csst" -> plan.sections().stream().anyMatch(s -> s.material().is(m -> m == Material.CSST));
            default -> throw new IllegalStateException("notices.csv: no such condition: " + when);
        };
    }
}
