package longrun.draft.sections;

import java.util.List;

/**
 * A section as it stands in the draft, every entry as typed and empty where there is none.
 *
 * @param under what a buried section passes under
 * @param ends what both its ends are, where they are the same, else each
 * @param assumed whether what is entered of it is taken as usual and nobody has seen it
 * @param feeds what hangs on its end: {@code app:} or {@code reg:} and an id, {@code cap}, or empty where it branches
 * @param branches ids of the sections that leave it
 */
public record RouteLine(
        int index,
        String id,
        String from,
        List<String> legs,
        String material,
        String setting,
        String under,
        String ends,
        boolean rough,
        boolean assumed,
        String chosenSize,
        String installedSize,
        String reserve,
        String table,
        String feeds,
        List<String> branches) {

    public String pointer(String entry) {
        return "/sections/" + index + "/" + entry;
    }
}
