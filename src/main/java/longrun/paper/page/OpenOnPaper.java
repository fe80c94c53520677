package longrun.paper.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.origin.Missing;
import longrun.review.Review;
import longrun.sizing.SectionStatus;
import longrun.words.QuestionsByWhom;

/** What a sheet still lacks, in a few words, for whoever is about to take it along. */
public final class OpenOnPaper {

    private OpenOnPaper() {}

    /** What the findings come to; those answered are not open. */
    public static List<String> findings(Review review) {
        List<String> out = new ArrayList<>();
        add(out, count(review, Severity.MUST_FIX), "must-fix finding", "must-fix findings");
        add(out, count(review, Severity.CAUTION), "caution", "cautions");
        long questions = QuestionsByWhom.together(review.findings()).values().stream()
                .mapToLong(List::size)
                .sum();
        add(out, questions, "question open", "questions open");
        return out;
    }

    /** The sections without a size or with a size so far. */
    public static List<String> sizes(Review review) {
        List<String> out = new ArrayList<>();
        int without = 0;
        int tooSmall = 0;
        int soFar = 0;
        int rough = 0;
        for (int i = 0; i < review.piping().sectionCount(); i++) {
            boolean sized = review.sizing().section(i).size().isPresent();
            without += sized ? 0 : 1;
            tooSmall += review.sizing().section(i).status() == SectionStatus.UNDERSIZED ? 1 : 0;
            rough += review.piping().section(i).rough().is(true) ? 1 : 0;
            soFar += sized && review.piping().isProvisional(i) ? 1 : 0;
        }
        if (review.piping().sectionCount() == 0) {
            out.add("no pipe is entered yet");
        }
        add(out, without, "section not yet sized", "sections not yet sized");
        add(out, tooSmall, "section too small", "sections too small");
        add(out, soFar, "size so far", "sizes so far");
        add(out, rough, "length still rough", "lengths still rough");
        return out;
    }

    /** What is asked of the supplier, and the entries the tank's and the year's figures lack. */
    public static List<String> supply(Review review) {
        List<String> out = new ArrayList<>(figures(review));
        int asked = QuestionsByWhom.together(review.findings())
                .getOrDefault(AskWhom.SUPPLIER, List.of())
                .size();
        add(out, asked, "question for the supplier", "questions for the supplier");
        return out;
    }

    /** The entries the tank's and the year's figures lack. */
    public static List<String> figures(Review review) {
        Set<String> lacking = new HashSet<>();
        review.tank().ifPresent(t -> t.missing().stream().map(Missing::words).forEach(lacking::add));
        review.fuel().ifPresent(f -> f.missing().stream().map(Missing::words).forEach(lacking::add));
        lacking.remove("");
        List<String> out = new ArrayList<>();
        if (review.plan().allTanks().isEmpty()) {
            out.add("no tank is entered yet");
        }
        add(out, lacking.size(), "entry of tank and year missing", "entries of tank and year missing");
        return out;
    }

    private static long count(Review review, Severity severity) {
        return review.findings().stream()
                .filter(f -> f.severity() == severity)
                .filter(Finding::isOpen)
                .count();
    }

    private static void add(List<String> out, long count, String one, String many) {
        if (count > 0) {
            out.add(count(count, one, many));
        }
    }

    /** "1 section", "2 sections". */
    public static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
