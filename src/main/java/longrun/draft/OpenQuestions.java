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
 * The questions of a house that are open now. A place in which nothing is entered yet has no questions, only a next step.
 * The same question about many parts counts once, and so does an entry that several rules ask for. Questions that a tape
 * measure or a rating plate answers are the owner's own; the others are for supplier, fitter and inspector.
 *
 * @param now the questions of all places in which something is entered, place after place
 */
public record OpenQuestions(List<Asked> now) {

    /**
     * One question.
     *
     * @param place where its entry is
     * @param alike the findings that ask it, at least one, in the order of the plan
     */
    public record Asked(PlaceKind place, List<Finding> alike) {

        /** The first finding that asks it. */
        public Finding first() {
            return alike.get(0);
        }

        /** Who can answer it; the owner where nobody else is named. */
        public AskWhom whom() {
            return first().askWhom().orElse(AskWhom.OWNER);
        }

        /** Whether the owner can answer it, with a tape measure or from a rating plate. */
        public boolean isOwn() {
            return !whom().isForSomeoneElse();
        }

        /** The entries that answer it, each once. */
        public List<String> entries() {
            return alike.stream().map(Finding::field).distinct().toList();
        }

        /** Whether one button can answer it for all parts: it is a yes-or-no question about more than one. */
        public boolean isAnsweredAtOnce(HouseSession session) {
            return entries().size() > 1
                    && entries().stream()
                            .allMatch(at -> YesOrNo.is(at) && session.at(at).isNothing() && session.holds(at));
        }

        /** Answers yes or no for all its parts, as one undo step; entries made already stay. */
        public void answer(HouseSession session, boolean yes) {
            session.change(
                    d -> entries().stream().filter(at -> d.at(at).isNothing()).forEach(at -> d.put(at, yes)));
        }
    }

    /** How many questions are shown open at once. */
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

    /** Questions about a section that was only filled in wait until its length is entered. */
    private static boolean isInTime(HouseSession session, Finding f) {
        PlanPath at = PlanPath.of(f.field());
        return !at.isIn("sections")
                || at.findIndex().isEmpty()
                || at.entry().equals("legs")
                || !PlaceStatus.isOnlyFilledIn(session, session.at(at.thing()));
    }

    /** The pointer with each list index replaced by a star: the entry whatever part it belongs to. */
    public static String about(String pointer) {
        return QuestionsByWhom.about(pointer);
    }

    /** The open questions among some findings, in their order, the same questions together. */
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

    /** The questions the owner can answer. */
    public List<Asked> own() {
        return now.stream().filter(Asked::isOwn).toList();
    }

    /** The questions for supplier, fitter and inspector, by who can answer. */
    public Map<AskWhom, List<Asked>> forSomeoneElse() {
        Map<AskWhom, List<Asked>> out = new EnumMap<>(AskWhom.class);
        now.stream()
                .filter(a -> !a.isOwn())
                .forEach(a ->
                        out.computeIfAbsent(a.whom(), k -> new ArrayList<>()).add(a));
        return out;
    }

    /** The owner's next questions, at most {@link #AT_ONCE}. */
    public List<Asked> next() {
        List<Asked> own = own();
        return own.subList(0, Math.min(AT_ONCE, own.size()));
    }
}
