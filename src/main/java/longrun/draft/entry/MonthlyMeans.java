package longrun.draft.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
