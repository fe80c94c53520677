package longrun.draft.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;

/** The climate's twelve monthly means in a draft: the plan's own once each can be read, and beside it until then. */
public final class MonthlyMeans {

    /** Where the plan has them. */
    public static final String AT = "/site/monthlyMeanTemp";

    /** Where unfinished means wait; the plan's reader passes it by. */
    private static final String BEGUN = "/site/monthlyMeanTempBegun";

    private MonthlyMeans() {}

    /** Twelve texts, January first; blank where nothing is typed. */
    public static List<String> texts(Entered draft) {
        Entered full = draft.at(AT);
        Entered there = full.isList() ? full : draft.at(BEGUN);
        List<String> out = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            out.add(there.get(m).text());
        }
        return out;
    }

    /** The month whose mean has this pointer, January 0; empty for any other entry. */
    public static OptionalInt month(String pointer) {
        return pointer.matches(AT + "/([0-9]|1[01])")
                ? OptionalInt.of(Integer.parseInt(pointer.substring(AT.length() + 1)))
                : OptionalInt.empty();
    }

    /** Writes the mean of one month beside the others. */
    public static void write(DraftEdit draft, int month, String text) {
        List<String> texts = texts(draft.whole());
        texts.set(month, text);
        write(draft, texts);
    }

    /** Writes twelve means: as the plan's where each can be read, else beside them. */
    public static void write(DraftEdit draft, List<String> texts) {
        boolean none = texts.stream().allMatch(String::isBlank);
        boolean all = texts.stream().allMatch(MonthlyMeans::reads);
        draft.remove(all ? BEGUN : AT);
        if (none) {
            draft.remove(BEGUN);
        } else {
            draft.put(all ? AT : BEGUN, texts);
        }
    }

    /** Whether a month's text is a temperature. */
    public static boolean reads(String text) {
        return !text.isBlank() && wrong(text).isEmpty();
    }

    /** What is wrong with a month's text; empty where it can be read, or nothing is typed. */
    public static Optional<String> wrong(String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        try {
            Measure.TEMPERATURE.read(text);
            return Optional.empty();
        } catch (NotAQuantity e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }
}
