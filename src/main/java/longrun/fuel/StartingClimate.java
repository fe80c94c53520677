package longrun.fuel;

import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.DataFile;

/**
 * A published climate a person may begin with and write over.
 *
 * @param name what it is like, and the place it was measured at
 * @param meansF mean of each month, degF, January first
 * @param designF winter design temperature, degF
 */
public record StartingClimate(
        String id, String name, List<Double> meansF, double designF, Confidence means, Confidence design) {

    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    private static final List<StartingClimate> ALL = DataFile.read("climate/starting-climates.csv").rows().stream()
            .map(r -> new StartingClimate(
                    r.text("id"),
                    r.text("name"),
                    MONTHS.stream().map(r::number).toList(),
                    r.number("design_f"),
                    r.choice("means_confidence", Confidence.class),
                    r.choice("design_confidence", Confidence.class)))
            .toList();

    public StartingClimate {
        meansF = List.copyOf(meansF);
    }

    /** All that are held, the coldest first. */
    public static List<StartingClimate> all() {
        return ALL;
    }

    public static Optional<StartingClimate> find(String id) {
        return ALL.stream().filter(c -> c.id().equals(id)).findFirst();
    }
}
