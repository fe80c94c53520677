package longrun.finding;

import java.util.List;

/** Lists of names as a sentence has them. */
public final class ListWords {

    private ListWords() {}

    /** All of them: A, B and C; blank for none. */
    public static String all(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** At most {@code most} of them, and how many more there are: A, B and 4 more. */
    public static String most(List<String> names, int most) {
        return most(names, names.size(), most);
    }

    /**
     * The same where only the first names of a long list are given.
     *
     * @param first all of them, or at least one more than are named
     * @param count how many there are
     */
    public static String most(List<String> first, int count, int most) {
        return count > most
                ? String.join(", ", first.subList(0, most)) + " and " + (count - most) + " more"
                : all(first);
    }
}
