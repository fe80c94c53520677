package longrun.checked.mutant;

import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * Mutants that no test noticed, read one by one.
 *
 * @param room the package they are in
 * @param where class and method
 * @param change what was changed
 * @param count how many of that kind in that method
 * @param why no test can notice, or need not
 */
public record LeftMutant(String room, String where, Change change, int count, String why) {

    private static final class Holder {
        static final List<LeftMutant> ALL = DataFile.read("checked/mutants-left.csv").rows().stream()
                .map(LeftMutant::of)
                .toList();
    }

    public static List<LeftMutant> listAll() {
        return Holder.ALL;
    }

    private static LeftMutant of(DataRow row) {
        return new LeftMutant(
                row.text("package"),
                row.text("class") + ", " + row.text("method"),
                row.choice("mutator", Change.class),
                (int) row.positive("count"),
                row.text("reason"));
    }
}
