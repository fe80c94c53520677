package longrun.checked.mutant;

import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * Mutants of one kind in one method that no test noticed; each was reviewed by hand.
 *
 * @param room the package
 * @param where class and method
 * @param change the kind of change
 * @param count how many of that kind survive in that method
 * @param why why no test can notice it, or need not
 */
public record SurvivingMutant(String room, String where, Mutation change, int count, String why) {

    private static final class Holder {
        static final List<SurvivingMutant> ALL = DataFile.read("checked/mutants-left.csv").rows().stream()
                .map(SurvivingMutant::of)
                .toList();
    }

    /** All of them. */
    public static List<SurvivingMutant> listAll() {
        return Holder.ALL;
    }

    private static SurvivingMutant of(DataRow row) {
        return new SurvivingMutant(
                row.text("package"),
                row.text("class") + ", " + row.text("method"),
                row.choice("mutator", Mutation.class),
                (int) row.positive("count"),
                row.text("reason"));
    }
}
