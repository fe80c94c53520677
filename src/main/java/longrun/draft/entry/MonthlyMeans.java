package longrun.draft.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;

/**
 * The climate's twelve monthly means in a draft: the plan's own once each can be read, and beside it until then. What the
 * plan has is what is answered by, so it is shown before what waits.
 */
public final class MonthlyMeans {

    /** Where the plan has them. */
    public static final String AT = "/site/monthlyMeanTemp";

    /** Those of a house. */
    public static final MonthlyMeans OF_HOUSE = new MonthlyMeans("/site/monthlyMeanTempBegun");

    /** No month of a place on earth is so warm: a figure above it is a slip, such as a reading in other degrees. */
    private static final double WARMEST_F = 130;

    private final String begun;

    /** @param begun where unfinished means wait; the plan's reader passes it by */
    public MonthlyMeans(String begun) {
        this.begun = begun;
    }

    /** Twelve texts, January first; blank where nothing is typed. */
    public List<String> texts(Entered draft) {
        Entered full = draft.at(AT);
        Entered there = full.isList() ? full : draft.at(begun);
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
    public void write(DraftEdit draft, int month, String text) {
        List<String> texts = texts(draft.whole());
        texts.set(month, text);
        write(draft, texts);
    }

    /** Writes twelve means: as the plan's where each can be read, else beside them. */
    public void write(DraftEdit draft, List<String> texts) {
        boolean none = texts.stream().allMatch(String::isBlank);
        boolean all = texts.stream().allMatch(MonthlyMeans::reads);
        draft.remove(all ? begun : AT);
        if (none) {
            draft.remove(begun);
        } else {
            draft.put(all ? AT : begun, texts);
        }
    }

    /** Whether a month's text is a temperature that a month can have. */
    public static boolean reads(String text) {
        return !text.isBlank() && wrong(text).isEmpty();
    }

    /** What is wrong with a month's text; empty where it can be read, or nothing is typed. */
    public static Optional<String> wrong(String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        try {
            return Measure.TEMPERATURE.read(text).degF() > WARMEST_F
                    ? Optional.of("no place has a month of " + text + ": write it in \u00b0F, such as 29, or 20 degC")
                    : Optional.empty();
        } catch (NotAQuantity e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }
}
