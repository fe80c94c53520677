package longrun.checked;

import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * Something each build works out a second time, by code that shares nothing with the first.
 *
 * @param id what its test is known by
 * @param what is worked out
 * @param way how it is done the second time
 * @param agree what both must say alike
 * @param within how far apart they may be, in {@code unit}; 0 where they must say the same
 * @param unit of {@code within}; blank where nothing is measured
 * @param compared what is counted, such as random houses
 * @param count how many in each build
 * @param many how many in the long run
 * @param seed of the first random house; 0 where nothing is left to chance
 */
public record SecondWay(
        String id,
        String what,
        String way,
        String agree,
        double within,
        String unit,
        String compared,
        long count,
        long many,
        long seed) {

    private static final String RANDOM = "random houses";

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

    /** Whether what is compared is made by chance, from a seed. */
    public boolean isRandom() {
        return compared.equals(RANDOM);
    }

    private static SecondWay of(DataRow row) {
        return new SecondWay(
                row.text("id"),
                row.text("what"),
                row.text("way"),
                row.text("agree"),
                row.number("within"),
                row.text("unit"),
                row.text("compared"),
                (long) row.positive("count"),
                (long) row.positive("many"),
                (long) row.findNumber("seed").orElse(0));
    }
}
