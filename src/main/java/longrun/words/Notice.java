package longrun.words;

import java.util.List;
import longrun.origin.DataFile;
import longrun.plan.Plan;
import longrun.plan.choice.Material;

/**
 * A notice: something a person should know in a certain house, from {@code data/rules/notices.csv}. Nothing is judged by it.
 *
 * @param place the place on screen it belongs to, as in the page's address
 * @param when what a house must have for the notice to be shown: tank, regulator or csst
 * @param text the notice, as a person reads it
 * @param reference its source
 */
public record Notice(String place, String when, String text, String reference) {

    private static final List<Notice> ALL = DataFile.read("rules/notices.csv").rows().stream()
            .map(r -> new Notice(r.text("place"), r.text("when"), r.text("text"), r.text("reference")))
            .toList();

    /** The notices for a house. */
    public static List<Notice> of(Plan plan) {
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
