package longrun.draft.sections;

import java.util.List;

/**
 * A line of a list from elsewhere, as understood.
 *
 * @param id as the list names it; the tool gives its own
 * @param from what it leaves, by the list's names or a regulator's id; empty where the list does not say
 * @param legs as the draft would hold them
 * @param feeds as {@link RouteLine#feeds()}; empty where nothing of that name is in the house
 * @param feedsWords as the list says it
 * @param material as a plan writes it; empty where the list does not say
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
