package longrun.draft.fill;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import longrun.fuel.fill.FillReport;
import longrun.quantity.Typed;

/**
 * The state of the answer and its first words: nothing typed, questions open, a wrong entry, no use, or the day to call by.
 *
 * @param kind the kind of state
 * @param words the state in words
 * @param because what it rests on, or what is missing; blank for nothing
 * @param days from today to the refill gauge; empty where that is not known or beyond ten years
 * @param questions the entries still open
 */
public record FillState(Kind kind, String words, String because, Optional<Long> days, List<String> questions) {

    /** What kind of state it is. */
    public enum Kind {
        EMPTY,
        WAITING,
        OPEN,
        NO_USE,
        NEVER,
        NOW,
        DATED
    }

    /**
     * The state of a draft.
     *
     * @param report the answer; empty where it cannot be worked out
     * @param wrong the entries not understood, in words
     */
    public static FillState of(
            FillDraft draft, Optional<FillReport> report, Collection<String> wrong, LocalDate today) {
        List<String> open = open(draft);
        if (!wrong.isEmpty()) {
            return state(
                    Kind.WAITING,
                    "Waiting for an entry",
                    "Not understood: " + String.join("; ", wrong) + ". "
                            + (report.isPresent()
                                    ? "What is shown is the answer from before."
                                    : "Nothing is worked out until it is corrected."),
                    days(report, today),
                    open);
        }
        if (draft.lines().isEmpty() && draft.text(FillEntry.GAUGE).isBlank()) {
            return state(
                    Kind.EMPTY,
                    "Nothing to work out yet",
                    "Choose the tank, enter its gauge reading and enter what burns.",
                    Optional.empty(),
                    open);
        }
        if (report.map(FillReport::isNoUse).orElse(false)) {
            return state(
                    Kind.NO_USE,
                    "No use entered",
                    "Nothing burns, so there is no day on which a fill is used up. Enter hours a day or gallons a year.",
                    Optional.empty(),
                    open);
        }
        boolean known =
                report.map(r -> r.ranges().flatMap(x -> x.days()).isPresent()).orElse(false);
        if (report.isEmpty() || !known) {
            return state(
                    Kind.OPEN,
                    open.size() == 1 ? "1 question open" : open.size() + " questions open",
                    open.isEmpty()
                            ? missing(report)
                            : "Not known yet: " + String.join("; ", open.subList(0, Math.min(3, open.size())))
                                    + (open.size() > 3 ? "; and " + (open.size() - 3) + " more" : "")
                                    + ". Nothing missing is taken as zero.",
                    Optional.empty(),
                    open);
        }
        return dated(draft, report.get(), today, open);
    }

    private static String missing(Optional<FillReport> report) {
        return report.flatMap(r -> r.fuel().dateMissing().stream().findFirst())
                .map(m -> "Not known yet: " + m.words() + ".")
                .orElse("");
    }

    private static FillState dated(FillDraft draft, FillReport report, LocalDate today, List<String> open) {
        Optional<LocalDate> refill = report.fuel().nextRefill();
        if (refill.isEmpty()) {
            return state(
                    Kind.NEVER,
                    "No date within ten years",
                    "By these entries the tank lasts more than ten years. Read the gauge each autumn.",
                    Optional.empty(),
                    open);
        }
        String rests = rests(draft);
        Optional<LocalDate> call = report.fuel().callBy();
        Optional<Long> days = days(Optional.of(report), today);
        if (!refill.get().isAfter(today)) {
            return state(
                    Kind.NOW,
                    "Call now",
                    (refill.get().equals(today)
                                    ? "By these entries the refill gauge is reached today"
                                    : "By these entries the refill gauge was reached on " + Typed.words(refill.get()))
                            + ". Read the gauge, and call." + rests,
                    days,
                    open);
        }
        if (call.isEmpty()) {
            return state(
                    Kind.OPEN,
                    "1 question open",
                    "Not known yet: the days from call to truck, and so the day to call by." + rests,
                    days,
                    open);
        }
        if (!call.get().isAfter(today)) {
            return state(
                    Kind.NOW,
                    "Call today",
                    "The day to call by was " + Typed.words(call.get()) + "; the refill gauge is reached on "
                            + Typed.words(refill.get()) + " by these entries." + rests,
                    days,
                    open);
        }
        return state(Kind.DATED, "Call by " + spoken(call.get()), rests.strip(), days, open);
    }

    private static Optional<Long> days(Optional<FillReport> report, LocalDate today) {
        return report.flatMap(r -> r.fuel().nextRefill()).map(d -> ChronoUnit.DAYS.between(today, d));
    }

    /** A date without its year, such as "November 21". */
    public static String spoken(LocalDate date) {
        return Typed.words(date).replaceFirst(",.*", "");
    }

    /** A sentence on the starting values the answer rests on; blank for none. */
    private static String rests(FillDraft draft) {
        List<String> out = new ArrayList<>();
        if (draft.isStartingValue("CLIMATE")) {
            out.add("the climate");
        }
        if (draft.isStartingValue("TANK")) {
            out.add("the tank");
        }
        if (draft.isStartingValue(FillEntry.REFILL_AT.name())) {
            out.add("the refill gauge");
        }
        if (draft.isStartingValue(FillEntry.LEAD.name())) {
            out.add("the days to the truck");
        }
        if (draft.lines().stream().anyMatch(l -> draft.isStartingValue("efficiency " + l.id()))) {
            out.add("the heater\u2019s efficiency");
        }
        return out.isEmpty() ? "" : " Still starting values: " + String.join(", ", out) + ".";
    }

    /** The entries still needed for a date. */
    private static List<String> open(FillDraft draft) {
        List<String> out = new ArrayList<>();
        if (draft.tank().isEmpty() && !draft.hasTank()) {
            out.add("the tank");
        }
        for (FillEntry each : List.of(FillEntry.GAUGE, FillEntry.GAUGE_DATE, FillEntry.REFILL_AT)) {
            boolean withGauge =
                    each == FillEntry.GAUGE_DATE && draft.text(FillEntry.GAUGE).isBlank();
            if (draft.text(each).isBlank() && !withGauge) {
                out.add(each.words());
            }
        }
        if (draft.coldestMonth().isEmpty()) {
            out.add("the climate, all twelve months");
        }
        List<FuelUse> lines = draft.lines();
        if (lines.isEmpty()) {
            out.add("what burns");
        }
        for (FuelUse b : lines) {
            String name = b.name().isBlank() ? "one line" : "the " + b.name().strip();
            if (b.amount().isBlank()) {
                out.add(
                        switch (b.basis()) {
                            case HEATS -> "the heat loss of the house for " + name;
                            case HOURS -> "hours a day of " + name;
                            case GALLONS -> "gallons a year of " + name + ", or its hours a day";
                        });
            }
            if (b.basis() == FuelUse.Basis.HOURS && b.input().isBlank()) {
                out.add("the input of " + name);
            }
            if (b.basis() == FuelUse.Basis.HEATS && b.efficiency().isBlank()) {
                out.add("the efficiency of " + name);
            }
            if (b.basis() == FuelUse.Basis.HEATS && draft.text(FillEntry.DESIGN).isBlank()) {
                out.add(FillEntry.DESIGN.words());
            }
        }
        if (draft.text(FillEntry.LEAD).isBlank()) {
            out.add(FillEntry.LEAD.words());
        }
        return out.stream().distinct().toList();
    }

    private static FillState state(
            Kind kind, String words, String because, Optional<Long> days, List<String> questions) {
        return new FillState(kind, words, because, days, List.copyOf(questions));
    }
}
