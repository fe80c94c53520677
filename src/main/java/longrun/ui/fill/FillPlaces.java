package longrun.ui.fill;

import java.util.Optional;
import longrun.draft.fill.FillEntry;
import longrun.draft.fill.FuelUse;
import longrun.draft.fill.PastFillEntries;
import longrun.ui.frame.Entry;

/** The places of the page's entries as the browser knows them: "GAUGE", "BURNS 0 AMOUNT", "PAST 1 DATE", "MONTH 3". */
final class FillPlaces {

    private FillPlaces() {}

    /** The field of a place, where it is on the page. */
    static Optional<Entry> entry(FillView page, String place) {
        String[] steps = place.split(" ");
        int at = steps.length > 1 ? Integer.parseInt(steps[1]) : 0;
        return switch (steps[0]) {
            case "plan" -> Optional.empty();
            case "BURNS" ->
                at < page.burns().size()
                        ? Optional.of(page.burns().row(at).entry(FuelUse.Column.valueOf(steps[2])))
                        : Optional.empty();
            case "PAST" ->
                at < page.past().size()
                        ? Optional.of(page.past().row(at).entry(PastFillEntries.Column.valueOf(steps[2])))
                        : Optional.empty();
            case "MONTH" -> Optional.of(page.fields().month(at));
            default -> Optional.of(page.fields().field(FillEntry.valueOf(place)).entry());
        };
    }

    /** An entry typed while the program did not answer. */
    static void type(FillView page, String place, String text) {
        Optional<Entry> entry = entry(page, place);
        if (entry.isEmpty()) {
            return;
        }
        entry.get().write(text);
        String[] steps = place.split(" ");
        int at = steps.length > 1 ? Integer.parseInt(steps[1]) : 0;
        switch (steps[0]) {
            case "BURNS" -> page.hand().typed(at, FuelUse.Column.valueOf(steps[2]), text);
            case "PAST" -> page.hand().typedPast(at, PastFillEntries.Column.valueOf(steps[2]), text);
            case "MONTH" -> page.hand().typedMonth(at, text);
            default -> page.hand().typed(FillEntry.valueOf(place), text);
        }
    }
}
