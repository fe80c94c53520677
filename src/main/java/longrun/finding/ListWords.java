package longrun.finding;

import java.util.List;

/** Names one after the other, as a sentence has them. */
public final class ListWords {

    private ListWords() {}

    /** All of them: A, B and C; blank for none. */
    public static String all(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** No more than so many of them, and how many more there are: A, B and 4 more. */
    public static String most(List<String> names, int most) {
        return names.size() > most
                ? String.join(", ", names.subList(0, most)) + " and " + (names.size() - most) + " more"
                : all(names);
    }
}
