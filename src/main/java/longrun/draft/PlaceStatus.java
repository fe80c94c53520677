package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import longrun.draft.entry.DraftValue;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.holdpoint.HoldPoints;

/**
 * What is still open in a place, in words.
 *
 * @param words what is open, such as "1 must fix, 2 questions"
 * @param must whether something in it must be fixed
 */
public record PlaceStatus(String words, boolean must) {

    /** The price of electricity alone does not mean that hot water was entered. */
    private static final String PRICE_OF_POWER = "/use/pricePerKwh";

    /** The status of every place, in their order. */
    public static Map<PlaceKind, PlaceStatus> all(HouseSession session) {
        OpenQuestions questions = OpenQuestions.of(session);
        Map<PlaceKind, PlaceStatus> out = new EnumMap<>(PlaceKind.class);
        for (PlaceKind place : PlaceKind.values()) {
            out.put(place, of(session, place, questions));
        }
        return out;
    }

    private static PlaceStatus of(HouseSession session, PlaceKind place, OpenQuestions questions) {
        if (place == PlaceKind.FINDINGS) {
            return counted(session.findings(), session.errors().size(), questions.count(), "none yet");
        }
        if (place == PlaceKind.VALVE) {
            return recorded(session);
        }
        if (place == PlaceKind.PAPERS) {
            return new PlaceStatus(session.review().isPresent() ? "as far as it is known" : "none yet", false);
        }
        List<Finding> own =
                session.findings().stream().filter(f -> place.holds(f.field())).toList();
        long wrong = session.errors().keySet().stream().filter(place::holds).count();
        return isStarted(session, place)
                ? counted(own, (int) wrong, questions.countIn(place), none(session, place))
                : notStarted(counted(own, (int) wrong, 0, ""));
    }

    /** The words where nothing is open; an appliance that no section feeds still needs its pipe. */
    private static String none(HouseSession session, PlaceKind place) {
        if (session.review().isEmpty()) {
            return "not known";
        }
        boolean unfed = session.review().get().plan().appliances().stream()
                .anyMatch(a -> !a.fedBy().isKnown());
        return place == PlaceKind.ROUTE && unfed ? "no section feeds an appliance" : "nothing missing";
    }

    /** For the hold points only what is recorded, since what is open for them is counted in the other places. */
    private static PlaceStatus recorded(HouseSession session) {
        long wrong = session.errors().keySet().stream()
                .filter(PlaceKind.VALVE::holds)
                .count();
        if (wrong > 0) {
            return counted(List.of(), (int) wrong, "");
        }
        return session.review()
                .map(HoldPoints::of)
                .map(all -> new PlaceStatus(
                        all.done() == 0
                                ? "nothing recorded yet"
                                : all.done() + " of " + all.points().size() + " recorded",
                        all.points().stream().anyMatch(s -> s.record() == HoldPoints.Record.REASON_MISSING)))
                .orElse(new PlaceStatus("not known", false));
    }

    /** The status of a place in which nothing is entered yet: never that nothing is missing. */
    public static PlaceStatus notStarted(PlaceStatus lack) {
        return new PlaceStatus(
                lack.words().isEmpty() ? "not entered yet" : "not entered yet, " + lack.words(), lack.must());
    }

    /** Whether anything is entered in a place. */
    public static boolean isStarted(HouseSession session, PlaceKind place) {
        return switch (place) {
            case HOUSE -> anyIn(session.tree(), "", p -> place.holds(p) && !p.equals("/format"));
            case APPLIANCES -> !session.at("/appliances").isEmpty();
            case ROUTE -> isRouteBegun(session);
            case HOT_WATER -> anyIn(session.tree(), "", p -> place.holds(p) && !p.equals(PRICE_OF_POWER));
            default -> anyIn(session.tree(), "", place::holds);
        };
    }

    private static boolean isRouteBegun(HouseSession session) {
        for (DraftValue section : session.at("/sections")) {
            if (!isOnlyFilledIn(session, section)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a section was only filled in with the choice of regulators: it lies before one and has no length yet. */
    static boolean isOnlyFilledIn(HouseSession session, DraftValue section) {
        if (!section.get("legs").isEmpty()) {
            return false;
        }
        for (DraftValue regulator : session.at("/regulators")) {
            if (regulator.textOf("fedBy").equals(section.textOf("id"))) {
                return true;
            }
        }
        return false;
    }

    /** Whether any entry below a node has a value and one of the pointers wanted. */
    private static boolean anyIn(JsonNode node, String pointer, Predicate<String> wanted) {
        if (node.isValueNode()) {
            return !node.isNull() && wanted.test(pointer);
        }
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                if (anyIn(node.get(i), pointer + "/" + i, wanted)) {
                    return true;
                }
            }
            return false;
        }
        for (Map.Entry<String, JsonNode> e : node.properties()) {
            if (anyIn(e.getValue(), pointer + "/" + e.getKey(), wanted)) {
                return true;
            }
        }
        return false;
    }

    /** The open findings counted in words. */
    public static PlaceStatus counted(List<Finding> findings, int wrong, String none) {
        return counted(findings, wrong, (int) count(findings, Severity.NOTE), none);
    }

    private static PlaceStatus counted(List<Finding> findings, int wrong, int questions, String none) {
        long must = count(findings, Severity.MUST_FIX);
        String words = java.util.stream.Stream.of(
                        wrong == 0 ? "" : wrong == 1 ? "1 entry not understood" : wrong + " entries not understood",
                        must == 0 ? "" : must + " must fix",
                        several(count(findings, Severity.CAUTION), "caution"),
                        several(questions, "question"))
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(", "));
        return new PlaceStatus(words.isEmpty() ? none : words, must > 0);
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
