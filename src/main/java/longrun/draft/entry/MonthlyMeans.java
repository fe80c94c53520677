package longrun.draft.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;

/**
 * The twelve monthly mean temperatures of the climate in a draft: in the plan once all can be read, beside it until then.
 * The review uses those in the plan, so they are shown first.
 */
public final class MonthlyMeans {

    /** Their pointer in a plan. */
    public static final String AT = "/site/monthlyMeanTemp";

    /** The monthly means of a house. */
    public static final MonthlyMeans OF_HOUSE = new MonthlyMeans("/site/monthlyMeanTempBegun");

    /** Warmer than any month on earth, degrees F; a figure above it is a mistake, such as the wrong unit. Common practice. */
    private static final double WARMEST_F = 130;

    private final String begun;

    /** @param begun the pointer at which unfinished means are kept; the reader of plans ignores it */
    public MonthlyMeans(String begun) {
        this.begun = begun;
    }

    /** Twelve texts, January first; blank where nothing is typed. */
    public List<String> texts(DraftValue draft) {
        DraftValue full = draft.at(AT);
        DraftValue there = full.isList() ? full : draft.at(begun);
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

    /** Writes the mean of one month and keeps the others. */
    public void write(DraftEdit draft, int month, String text) {
        List<String> texts = texts(draft.whole());
        texts.set(month, text);
        write(draft, texts);
    }

    /** Writes twelve means: into the plan where all can be read, else beside it. */
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
                    ? Optional.of("no place has a month as warm as " + text
                            + ": write it in \u00b0F, such as 29, or as 20 \u00b0C")
                    : Optional.empty();
        } catch (NotAQuantity e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }
}
