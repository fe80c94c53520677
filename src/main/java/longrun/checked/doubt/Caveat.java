package longrun.checked.doubt;

import java.util.List;
import longrun.origin.DataFile;

/**
 * A caveat about what was checked, with its reason.
 *
 * @param what it is about
 * @param why the reason, or the source it rests on
 */
public record Caveat(String what, String why) {

    /** What rests on a single source, such as one maker's sheet. */
    public static List<Caveat> listOfOneSource() {
        return read("one-source");
    }

    /** What was not compared with anything outside the program. */
    public static List<Caveat> listNotChecked() {
        return read("not-checked");
    }

    /** Published cases that neither a plan nor a figure of the program can represent. */
    public static List<Caveat> listNotHeld() {
        return read("not-held");
    }

    private static List<Caveat> read(String file) {
        return DataFile.read("checked/" + file + ".csv").rows().stream()
                .map(r -> new Caveat(r.text("what"), r.text("why")))
                .toList();
    }
}
