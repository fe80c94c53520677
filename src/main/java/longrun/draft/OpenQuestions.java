package longrun.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.json.YesOrNo;

/**
 * The questions of a house in their time. A place in which nothing is entered yet has no questions but a next step; what
 * many parts are asked alike is one question.
 *
 * @param now the questions of places that are begun, place after place; each stands for all that are asked alike
 */
public record OpenQuestions(List<Asked> now) {

    /**
     * One question.
     *
     * @param alike the findings that ask it, at least one, in the order of the plan
     */
    public record Asked(PlaceKind place, List<Finding> alike) {

        public Finding first() {
            return alike.get(0);
        }

        /** Whether one key may answer it for all parts: a yes or a no, asked of more than one. */
        public boolean isAnsweredAtOnce(HouseSession session) {
            return alike.size() > 1
                    && alike.stream()
                            .map(Finding::field)
                            .allMatch(at -> YesOrNo.is(at) && session.at(at).isNothing() && session.holds(at));
        }

        /** Says yes or no of all parts that are asked, as one step; what is entered already stays. */
        public void answer(HouseSession session, boolean yes) {
            session.change(d -> alike.stream()
                    .map(Finding::field)
                    .filter(at -> d.at(at).isNothing())
                    .forEach(at -> d.put(at, yes)));
        }
    }

    private static final Pattern INDEX = Pattern.compile("/[0-9]+");

    /** So many stand open before a person at once. */
    public static final int AT_ONCE = 7;

    /** The questions of a house as it stands. */
    public static OpenQuestions of(HouseSession session) {
        Map<String, Asked> now = new LinkedHashMap<>();
        Map<PlaceKind, List<Finding>> byPlace = new EnumMap<>(PlaceKind.class);
        for (Finding f : session.findings()) {
            if (f.severity() == Severity.NOTE) {
                byPlace.computeIfAbsent(PlaceKind.of(f.field()), k -> new ArrayList<>())
                        .add(f);
            }
        }
        for (Map.Entry<PlaceKind, List<Finding>> asked : byPlace.entrySet()) {
            PlaceKind place = asked.getKey();
            if (!OpenInPlace.isBegun(session, place)) {
                continue; // it has a next step instead
            }
            for (Finding f : asked.getValue()) {
                now.computeIfAbsent(likeness(f), k -> new Asked(place, new ArrayList<>()))
                        .alike()
                        .add(f);
            }
        }
        return new OpenQuestions(now.values().stream()
                .map(a -> new Asked(a.place(), List.copyOf(a.alike())))
                .toList());
    }

    /** What two questions have in common that differ only in the part they are asked of. */
    private static String likeness(Finding f) {
        return f.rule() + " " + INDEX.matcher(f.field()).replaceAll("/*");
    }

    /** How many open questions there are. */
    public int count() {
        return now.size();
    }

    /** How many of them stand in a place. */
    public int countIn(PlaceKind place) {
        return (int) now.stream().filter(a -> a.place() == place).count();
    }

    /** The next ones, no more than a person takes in at once. */
    public List<Asked> next() {
        return now.subList(0, Math.min(AT_ONCE, now.size()));
    }
}
