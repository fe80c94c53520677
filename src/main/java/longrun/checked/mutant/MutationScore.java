package longrun.checked.mutant;

import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * What was measured of a package.
 *
 * @param room the package
 * @param about what it works out
 * @param made mutants made of it
 * @param killed those that a test noticed, or that never came to an end
 */
public record MutationScore(String room, String about, int made, int killed) {

    private static final class Holder {
        static final List<MutationScore> ALL = DataFile.read("checked/mutation-scores.csv").rows().stream()
                .map(MutationScore::of)
                .toList();
    }

    public static List<MutationScore> listAll() {
        return Holder.ALL;
    }

    private static MutationScore of(DataRow row) {
        return new MutationScore(
                row.text("package"), row.text("about"), (int) row.positive("made"), (int) row.positive("killed"));
    }

    /** The share of its mutants that were noticed, in percent. */
    public double percent() {
        return 100.0 * killed / made;
    }

    /** How many nobody noticed. */
    public int left() {
        return made - killed;
    }

    /** Those nobody noticed, with why. */
    public List<LeftMutant> listLeft() {
        return LeftMutant.listAll().stream().filter(m -> m.room().equals(room)).toList();
    }
}
