package longrun.checked;

import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * Something each build works out a second time, by code that shares nothing with the first.
 *
 * @param id the id by which its test refers to it
 * @param what is worked out
 * @param way how it is done the second time
 * @param agree which results must agree
 * @param within the greatest allowed difference, in {@code unit}; 0 where both must be the same
 * @param unit the unit of {@code within}; blank where it is 0
 * @param compared what is counted, such as random houses
 * @param count how many are compared in each build
 * @param many how many are compared in the long run of the tests
 * @param seed the seed of the first random house; 0 where nothing is random
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

    /** All of them, in the order of the file. */
    public static List<SecondWay> listAll() {
        return ALL;
    }

    /**
     * The one with an id.
     *
     * @throws IllegalArgumentException where no row has that id
     */
    public static SecondWay get(String id) {
        return ALL.stream()
                .filter(w -> w.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no second way with the id " + id));
    }

    /** Whether random houses are compared. */
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
