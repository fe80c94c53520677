package longrun.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.PlanPath;
import longrun.plan.json.YesOrNo;
import longrun.words.QuestionsByWhom;

/**
 * The questions of a house in their time. A place in which nothing is entered yet has no questions but a next step; what
 * many parts are asked alike is one question, and so is what one entry answers for several rules. Those a person answers
 * who stands in the house with a tape, and reads the plates, are the owner's own; those of supplier, fitter and inspector
 * are taken along to them. All are counted.
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

        /** Who can answer it; what nobody else need be asked is the owner's own. */
        public AskWhom whom() {
            return first().askWhom().orElse(AskWhom.OWNER);
        }

        /** Whether a person answers it in the house, from the tape and the plates. */
        public boolean isOwn() {
            return !whom().isForSomeoneElse();
        }

        /** The entries that answer it, each once. */
        public List<String> entries() {
            return alike.stream().map(Finding::field).distinct().toList();
        }

        /** Whether one key may answer it for all parts: a yes or a no, asked of more than one. */
        public boolean isAnsweredAtOnce(HouseSession session) {
            return entries().size() > 1
                    && entries().stream()
                            .allMatch(at -> YesOrNo.is(at) && session.at(at).isNothing() && session.holds(at));
        }

        /** Says yes or no of all parts that are asked, as one step; what is entered already stays. */
        public void answer(HouseSession session, boolean yes) {
            session.change(
                    d -> entries().stream().filter(at -> d.at(at).isNothing()).forEach(at -> d.put(at, yes)));
        }
    }

    /** So many stand open before a person at once. */
    public static final int AT_ONCE = 7;

    /** The questions of a house as it stands. */
    public static OpenQuestions of(HouseSession session) {
        List<Finding> now = new ArrayList<>();
        Map<PlaceKind, List<Finding>> byPlace = new EnumMap<>(PlaceKind.class);
        for (Finding f : session.findings()) {
            if (f.severity() == Severity.NOTE) {
                byPlace.computeIfAbsent(PlaceKind.of(f.field()), k -> new ArrayList<>())
                        .add(f);
            }
        }
        byPlace.forEach((place, asked) -> {
            if (PlaceStatus.isStarted(session, place)) { // else it has a next step instead
                asked.stream().filter(f -> isInTime(session, f)).forEach(now::add);
            }
        });
        return new OpenQuestions(together(now));
    }

    /** What the pipe between two regulators is asked waits for its length; that it lacks one is asked itself. */
    private static boolean isInTime(HouseSession session, Finding f) {
        PlanPath at = PlanPath.of(f.field());
        return !at.isIn("sections")
                || at.findIndex().isEmpty()
                || at.entry().equals("legs")
                || !PlaceStatus.isOnlyFilledIn(session, session.at(at.thing()));
    }

    /** The entry a question is about, of whichever part. */
    public static String about(String pointer) {
        return QuestionsByWhom.about(pointer);
    }

    /** What is open of some findings, alike ones together; they keep their order. */
    public static List<Asked> together(List<Finding> findings) {
        List<Finding> open = findings.stream()
                .filter(f -> f.severity() == Severity.NOTE && f.isOpen())
                .toList();
        return QuestionsByWhom.alike(open).stream()
                .map(alike -> new Asked(PlaceKind.of(alike.get(0).field()), alike))
                .toList();
    }

    /** How many open questions there are. */
    public int count() {
        return now.size();
    }

    /** How many of them stand in a place. */
    public int countIn(PlaceKind place) {
        return (int) now.stream().filter(a -> a.place() == place).count();
    }

    /** Those a person answers in the house, from the tape and the plates. */
    public List<Asked> own() {
        return now.stream().filter(Asked::isOwn).toList();
    }

    /** Those that are taken along, by whom they are asked. */
    public Map<AskWhom, List<Asked>> forSomeoneElse() {
        Map<AskWhom, List<Asked>> out = new EnumMap<>(AskWhom.class);
        now.stream()
                .filter(a -> !a.isOwn())
                .forEach(a ->
                        out.computeIfAbsent(a.whom(), k -> new ArrayList<>()).add(a));
        return out;
    }

    /** The owner's next ones, no more than a person takes in at once. */
    public List<Asked> next() {
        List<Asked> own = own();
        return own.subList(0, Math.min(AT_ONCE, own.size()));
    }
}
