package longrun.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.review.Review;

/** The open questions, sorted by who can answer them; the owner's are those for which nobody else is named. */
public final class QuestionsByWhom {

    private static final Pattern INDEX = Pattern.compile("/[0-9]+");

    private QuestionsByWhom() {}

    /** The open questions among some findings, by who can answer them. */
    public static Map<AskWhom, List<Finding>> of(List<Finding> findings) {
        Map<AskWhom, List<Finding>> out = new EnumMap<>(AskWhom.class);
        for (Finding f : findings) {
            if (f.severity() == Severity.NOTE && f.isOpen()) {
                out.computeIfAbsent(f.askWhom().orElse(AskWhom.OWNER), k -> new ArrayList<>())
                        .add(f);
            }
        }
        return out;
    }

    /** The open questions of a house by whom they are asked, those that one answer or many parts alike share together. */
    public static Map<AskWhom, List<List<Finding>>> together(List<Finding> findings) {
        Map<AskWhom, List<List<Finding>>> out = new EnumMap<>(AskWhom.class);
        of(findings).forEach((whom, asked) -> out.put(whom, alike(asked)));
        return out;
    }

    /** Questions that one entry answers, or entries that differ only in the part they are of, together; in their order. */
    public static List<List<Finding>> alike(List<Finding> questions) {
        Map<String, List<Finding>> out = new LinkedHashMap<>();
        questions.forEach(
                f -> out.computeIfAbsent(likeness(f), k -> new ArrayList<>()).add(f));
        return out.values().stream().map(List::copyOf).toList();
    }

    private static String likeness(Finding f) {
        return (f.ask().isPresent() ? f.askWhom().orElse(AskWhom.OWNER).written() : f.rule()) + " " + about(f.field());
    }

    /** The entry a question is about, of whichever part. */
    public static String about(String pointer) {
        return INDEX.matcher(pointer).replaceAll("/*");
    }

    /** One question that many parts share, as a sentence: that of the first, and of what else the same is asked. */
    public static String words(Review review, List<Finding> alike) {
        Finding first = alike.get(0);
        String others = others(review, alike);
        return Sentence.of(first.ask().orElseGet(() -> Names.of(review, first.at()) + ": " + first.found()))
                + (others.isEmpty() ? "" : " The same is asked of " + others + ".");
    }

    /** What else the same is asked of; empty where the first is all. */
    public static String others(Review review, List<Finding> alike) {
        return alike.stream()
                .filter(f -> !f.at().equals(alike.get(0).at()))
                .map(f -> {
                    String name = Names.of(review, f.at());
                    return name.isEmpty() ? f.at() : name;
                })
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** How many questions are open for each, in words: "supplier 2, rating plate 1". */
    public static String counts(List<Finding> findings) {
        return of(findings).entrySet().stream()
                .map(e -> name(e.getKey()) + "\u00a0" + e.getValue().size())
                .collect(Collectors.joining(", "));
    }

    static String name(AskWhom whom) {
        return switch (whom) {
            case SUPPLIER -> "supplier";
            case FITTER -> "fitter";
            case INSPECTOR -> "inspector";
            case RATING_PLATE -> "rating plate";
            case OWNER -> "yourself";
        };
    }

    /** The heading over the questions of one of them. */
    public static String heading(AskWhom whom) {
        return switch (whom) {
            case SUPPLIER -> "For the supplier";
            case FITTER -> "For the fitter";
            case INSPECTOR -> "For the inspector";
            case RATING_PLATE -> "From the rating plates";
            case OWNER -> "For yourself, with tape and pencil";
        };
    }
}
