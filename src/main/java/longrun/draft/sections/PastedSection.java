package longrun.draft.sections;

import java.util.List;

/**
 * A section of a pasted list, as understood.
 *
 * @param id its name in the list; the draft gives it another
 * @param from what it leaves, by the names of the list or the id of a regulator; blank where the list does not say
 * @param legs its legs as stored
 * @param feeds as {@link RouteLine#feeds()}; blank where nothing in the house has that name
 * @param feedsWords what it feeds, as the list says
 * @param material as a plan writes it; blank where the list does not say
 * @param problems what was not understood
 */
public record PastedSection(
        String id,
        String from,
        List<String> legs,
        String feeds,
        String feedsWords,
        String material,
        List<String> problems) {}
