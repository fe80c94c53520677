package longrun.checked.mutant;

import java.util.List;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * The result of mutation testing for one package.
 *
 * @param room the package
 * @param about what the package does
 * @param made the number of mutants made
 * @param killed the number that a test noticed or that never ended
 */
public record MutationScore(String room, String about, int made, int killed) {

    private static final class Holder {
        static final DataFile FILE = DataFile.read("checked/mutation-scores.csv");
        static final List<MutationScore> ALL =
                FILE.rows().stream().map(MutationScore::of).toList();
    }

    /** When they were measured, and with what. */
    public static String measured() {
        return Holder.FILE.need("measured").value();
    }

    /** All packages measured. */
    public static List<MutationScore> listAll() {
        return Holder.ALL;
    }

    private static MutationScore of(DataRow row) {
        return new MutationScore(
                row.text("package"), row.text("about"), (int) row.positive("made"), (int) row.positive("killed"));
    }

    /** The share of mutants that were noticed, in percent. */
    public double percent() {
        return 100.0 * killed / made;
    }

    /** How many no test noticed. */
    public int survivors() {
        return made - killed;
    }

    /** The mutants no test noticed, with the reasons. */
    public List<SurvivingMutant> listSurvivors() {
        return SurvivingMutant.listAll().stream()
                .filter(m -> m.room().equals(room))
                .toList();
    }
}
