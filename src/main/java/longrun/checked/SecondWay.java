package longrun.checked;

import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * Something each build works out a second time on random houses, by code that shares nothing with the first.
 *
 * @param id what its test is known by
 * @param what is worked out
 * @param way how it is done the second time
 * @param agree what both must say alike
 * @param within how far apart they may be, in {@code unit}; 0 where they must say the same
 * @param unit of {@code within}; blank where nothing is measured
 * @param count random houses in each build
 * @param many random houses in the long run
 * @param seed of the first house
 */
public record SecondWay(
        String id,
        String what,
        String way,
        String agree,
        double within,
        String unit,
        long count,
        long many,
        long seed) {

    private static final List<SecondWay> ALL = DataFile.read("checked/second-ways.csv").rows().stream()
            .map(SecondWay::of)
            .toList();

    public static List<SecondWay> listAll() {
        return ALL;
    }

    /**
     * The one its test is known by.
     *
     * @throws IllegalArgumentException where none is
     */
    public static SecondWay get(String id) {
        return ALL.stream()
                .filter(w -> w.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no second way is known by " + id));
    }

    private static SecondWay of(DataRow row) {
        return new SecondWay(
                row.text("id"),
                row.text("what"),
                row.text("way"),
                row.text("agree"),
                row.number("within"),
                row.text("unit"),
                (long) row.positive("count"),
                (long) row.positive("many"),
                (long) row.number("seed"));
    }
}
