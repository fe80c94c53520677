package longrun.draft.sections;

import java.util.List;

/**
 * A section of the draft, every entry as stored and blank where there is none.
 *
 * @param under what a buried section passes under
 * @param ends the kind of both its ends where they are the same, else of each
 * @param assumed whether its entries are assumed and nobody has seen it
 * @param feeds what is at its end: {@code app:} or {@code reg:} and an id, {@code cap}, or blank where it branches
 * @param branches the ids of the sections that leave it
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

    /** The pointer of one of its entries. */
    public String pointer(String entry) {
        return "/sections/" + index + "/" + entry;
    }
}
