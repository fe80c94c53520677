package longrun.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.finding.Severity;

/** The open questions, sorted by who can answer them; the owner's are those for which nobody else is named. */
public final class QuestionsByWhom {

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
