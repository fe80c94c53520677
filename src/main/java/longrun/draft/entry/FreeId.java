package longrun.draft.entry;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Ids that nothing in the house has yet, for new items. */
public final class FreeId {

    private FreeId() {}

    /** The word itself, else with the first free number: range, range-2. */
    public static String of(DraftValue draft, String word) {
        return of(draft.node(), word);
    }

    static String of(JsonNode draft, String word) {
        Set<String> taken = new HashSet<>(Set.of("tank", "site", "plan", "hot-water"));
        for (String list : List.of("regulators", "sections", "rooms", "appliances")) {
            draft.path(list).forEach(n -> taken.add(n.path("id").asText()));
        }
        if (!taken.contains(word)) {
            return word;
        }
        int number = 2;
        while (taken.contains(word + "-" + number)) {
            number++;
        }
        return word + "-" + number;
    }
}
