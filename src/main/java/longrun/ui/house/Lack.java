package longrun.ui.house;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longrun.finding.Finding;
import longrun.finding.Severity;

/**
 * What a place still lacks, in words.
 *
 * @param must whether something in it must be mended
 */
record Lack(String words, boolean must) {

    static Lack of(HouseSession session, PlaceKind place) {
        if (place == PlaceKind.FINDINGS) {
            return counted(session.findings(), 0, "none yet");
        }
        List<Finding> own =
                session.findings().stream().filter(f -> place.holds(f.field())).toList();
        long wrong = session.errors().keySet().stream().filter(place::holds).count();
        return counted(own, (int) wrong, begun(session, place) ? "nothing lacking" : "not begun");
    }

    private static boolean begun(HouseSession session, PlaceKind place) {
        if (place == PlaceKind.CONNECTIONS) {
            return !session.draft().findValues("connection").isEmpty();
        }
        return session.draft().properties().stream()
                .map(Map.Entry::getKey)
                .filter(k -> !k.equals("format"))
                .anyMatch(k -> place.holds("/" + k));
    }

    /** What findings come to in words; those answered are left out. */
    static Lack counted(List<Finding> findings, int wrong, String none) {
        long must = count(findings, Severity.MUST_FIX);
        String words = java.util.stream.Stream.of(
                        wrong == 0 ? "" : wrong == 1 ? "1 entry not understood" : wrong + " entries not understood",
                        must == 0 ? "" : must + " must fix",
                        several(count(findings, Severity.CAUTION), "caution"),
                        several(count(findings, Severity.NOTE), "question"))
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(", "));
        return new Lack(words.isEmpty() ? none : words, must > 0);
    }

    static long count(List<Finding> findings, Severity severity) {
        return findings.stream()
                .filter(f -> f.severity() == severity && f.isOpen())
                .count();
    }

    static String several(long count, String what) {
        return count == 0 ? "" : count == 1 ? "1 " + what : count + " " + what + "s";
    }
}
