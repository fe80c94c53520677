package longrun.checked.doubt;

import java.util.List;
import longrun.origin.DataFile;

/**
 * Something that must be said of what was checked: a thing and the reason.
 *
 * @param what it is about
 * @param why the reason, or what it rests on
 */
public record Told(String what, String why) {

    /** What rests on one source alone, a maker or a page. */
    public static List<Told> listOfOneSource() {
        return read("one-source");
    }

    /** What nothing outside was held against. */
    public static List<Told> listNotChecked() {
        return read("not-checked");
    }

    /** Published cases that neither a plan nor a function can hold. */
    public static List<Told> listNotHeld() {
        return read("not-held");
    }

    private static List<Told> read(String file) {
        return DataFile.read("checked/" + file + ".csv").rows().stream()
                .map(r -> new Told(r.text("what"), r.text("why")))
                .toList();
    }
}
