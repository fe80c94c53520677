package longrun.draft.fill;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.entry.MonthlyMeans;
import longrun.plan.PlanPath;
import longrun.plan.json.PlanError;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;

/** The errors in the entries of How long does a fill last, each at its field, with what to write instead. */
public final class FillErrors {

    private FillErrors() {}

    /**
     * Every error, by its field: the name of an entry, "BURNS 0 AMOUNT", "PAST 1 DATE" or "MONTH 3"; an error in an entry
     * without a field is under "plan".
     *
     * @param read the errors found when the plan was read
     */
    public static Map<String, String> of(FillDraft draft, List<PlanError> read, LocalDate today) {
        Map<String, String> out = new LinkedHashMap<>();
        gauge(draft, FillEntry.GAUGE, out);
        gauge(draft, FillEntry.REFILL_AT, out);
        date(draft.text(FillEntry.GAUGE_DATE), today, "the gauge was read")
                .ifPresent(e -> out.put(FillEntry.GAUGE_DATE.name(), e));
        MonthlyMeans.wrong(draft.text(FillEntry.COLDEST)).ifPresent(e -> out.put(FillEntry.COLDEST.name(), e));
        for (int m = 0; m < 12; m++) {
            int month = m;
            MonthlyMeans.wrong(draft.months().get(m)).ifPresent(e -> out.put("MONTH " + month, e));
        }
        List<PastFillEntries.Past> past = draft.past();
        for (int i = 0; i < past.size(); i++) {
            String at = "PAST " + i + " ";
            // A fill without gallons may be to come: what it will take is predicted.
            LocalDate last = past.get(i).gallons().isBlank() ? LocalDate.MAX : today;
            date(past.get(i).date(), last, "of the fill, or leave its gallons out")
                    .ifPresent(e -> out.put(at + PastFillEntries.Column.DATE, e));
        }
        read.forEach(e -> out.putIfAbsent(place(draft, e.pointer()), message(draft, e)));
        return out;
    }

    private static void gauge(FillDraft draft, FillEntry which, Map<String, String> out) {
        String stored = draft.text(which);
        if (!stored.endsWith("%")) {
            boolean weight = stored.matches("(?i).*\\d\\s*(lb|kg)");
            if (weight && !draft.tank().map(TankChoice::isCylinder).orElse(true)) {
                out.put(which.name(), "a tank\u2019s gauge shows percent: write what the dial shows, such as 62");
            }
            return;
        }
        try {
            double percent = Measure.RATIO.read(stored).percent();
            if (percent > 100) {
                out.put(which.name(), "a gauge shows 0 to 100 %; " + stored + " is more than a tank holds");
            } else if (which == FillEntry.REFILL_AT
                    && percent >= 80
                    && !draft.tank().map(TankChoice::isCylinder).orElse(false)) {
                out.put(which.name(), "a truck fills to 80 %: write the reading at which you call, such as 30");
            }
        } catch (NotAQuantity e) {
            // the reader of the plan reports it
        }
    }

    private static Optional<String> date(String stored, LocalDate last, String what) {
        if (stored.isBlank()) {
            return Optional.empty();
        }
        try {
            LocalDate day = Typed.readDate(stored);
            return day.isAfter(last)
                    ? Optional.of(Typed.words(day) + " is still to come: write the day " + what)
                    : Optional.empty();
        } catch (NotAQuantity e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    private static String place(FillDraft draft, String pointer) {
        Optional<FillEntry> single = FillEntry.at(pointer);
        if (single.isPresent()) {
            return single.get().name();
        }
        Optional<FuelUseCell> cell = draft.lineAt(pointer);
        if (cell.isPresent()) {
            return "BURNS " + cell.get().line() + " " + cell.get().column();
        }
        PlanPath at = PlanPath.of(pointer);
        if (at.length() == 3 && at.isIn("deliveries")) {
            return switch (at.step(2)) {
                case "date" -> "PAST " + at.step(1) + " " + PastFillEntries.Column.DATE;
                case "volume" -> "PAST " + at.step(1) + " " + PastFillEntries.Column.GALLONS;
                default -> "plan";
            };
        }
        return at.length() == 3 && at.step(1).equals("monthlyMeanTemp") ? "MONTH " + at.step(2) : "plan";
    }

    private static String message(FillDraft draft, PlanError e) {
        boolean months = draft.lineAt(e.pointer())
                .filter(c -> c.column() == FuelUse.Column.MONTHS)
                .isPresent();
        if (months) {
            return "write months as Sep to May, or Nov, Dec, or 11-2; blank for all year";
        }
        if (e.kind() != PlanError.Kind.NOT_A_NUMBER) {
            return e.message();
        }
        String such = e.pointer().endsWith("pricePerGal") ? "2.80" : e.pointer().endsWith("hoursPerDay") ? "1.5" : "7";
        return "that is not a number: write it in digits, such as " + such;
    }

    /** The name of a field, within a sentence. */
    public static String where(String place) {
        String[] steps = place.split(" ");
        return switch (steps[0]) {
            case "BURNS" ->
                "line " + FuelUse.letter(Integer.parseInt(steps[1])) + ", "
                        + FuelUse.Column.valueOf(steps[2]).written();
            case "PAST" -> "past fill " + (Integer.parseInt(steps[1]) + 1);
            case "MONTH" -> "the mean of " + MonthsText.name(Integer.parseInt(steps[1]));
            case "plan" -> "the plan";
            default -> FillEntry.valueOf(place).words();
        };
    }
}
