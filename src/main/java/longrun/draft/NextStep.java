package longrun.draft;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.draft.entry.DraftValue;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.review.Review;
import longrun.words.QuestionsByWhom;
import longrun.words.Sentence;

/**
 * What to do next, in one sentence.
 *
 * @param words the sentence
 * @param pointer the entry it is done at; empty where nothing is left to enter
 */
public record NextStep(String words, String pointer) {

    /** Whether it is a question, rather than an instruction. */
    public boolean isAsked() {
        return words.contains("?");
    }

    /** What to do next in a house as it stands. */
    public static NextStep of(HouseSession session) {
        List<WrongEntry> wrong = WrongEntry.listIn(session);
        if (!wrong.isEmpty()) {
            return new NextStep(
                    "Correct the entry that is not understood: " + wrong.get(0).where() + ".",
                    wrong.get(0).pointer());
        }
        return begin(session)
                .or(() -> failed(session))
                .or(() -> mend(session))
                .or(() -> goOn(session))
                .or(() -> answer(session))
                .or(() -> rest(session))
                .orElse(new NextStep(
                        "All that is asked is entered. Take the papers to supplier, fitter and inspector; nothing is approved yet.",
                        ""));
    }

    /** What the house cannot be sized without, in the order it is built up. */
    private static Optional<NextStep> begin(HouseSession session) {
        if (session.at("/regulators").isEmpty()) {
            return step("Say how the pressure is reduced between tank and house.", "/regulators");
        }
        if (session.at("/appliances").isEmpty()) {
            return step("Enter the first appliance, from its rating plate.", "/appliances");
        }
        Optional<Review> review = session.review();
        int i = 0;
        for (DraftValue a : session.at("/appliances")) {
            if (a.textOf("input").isBlank()) {
                return step("Enter the input of " + called(review, i) + ", from its rating plate.", at(i, "input"));
            }
            i++;
        }
        if (session.at("/sections").isEmpty()) {
            return step("Pace out the pipe: enter the first section, from the regulator on.", "/sections");
        }
        i = 0;
        for (DraftValue s : session.at("/sections")) {
            String section = "/sections/" + i++;
            for (String entry : List.of("from", "material", "legs")) {
                if (isMissing(s.get(entry))) {
                    return step(
                            "Enter "
                                    + switch (entry) {
                                        case "from" -> "what section " + s.textOf("id") + " leaves";
                                        case "legs" -> "the length of section " + s.textOf("id");
                                        default -> "the material of section " + s.textOf("id");
                                    }
                                    + ".",
                            section + "/" + entry);
                }
            }
        }
        i = 0;
        for (DraftValue a : session.at("/appliances")) {
            if (a.textOf("fedBy").isBlank()) {
                return step("Enter the section of pipe that feeds " + called(review, i) + ".", at(i, "fedBy"));
            }
            i++;
        }
        return Optional.empty();
    }

    /** Whether an entry is missing; a list such as legs is missing while it is empty. */
    private static boolean isMissing(DraftValue entry) {
        return entry.isNothing()
                || (entry.isList() || entry.isObject()
                        ? entry.isEmpty()
                        : entry.text().isBlank());
    }

    /** A house whose review failed has no findings, which does not mean that nothing is open. */
    private static Optional<NextStep> failed(HouseSession session) {
        return session.isFailed()
                ? step(
                        "What is open can\u2019t be told at the moment. Every entry is kept; go on, or undo the last one.",
                        "")
                : Optional.empty();
    }

    private static Optional<NextStep> mend(HouseSession session) {
        return session.findings().stream()
                .filter(f -> f.severity() == Severity.MUST_FIX
                        && PlaceKind.find(f.field()).isPresent())
                .findFirst()
                .map(f -> new NextStep("Fix this first: " + Sentence.of(f.found()), f.field()));
    }

    /** The places that nothing stands in yet, in the order of the thread. */
    private static Optional<NextStep> goOn(HouseSession session) {
        if (!PlaceStatus.isStarted(session, PlaceKind.CONNECTIONS)) {
            return step("Enter the parts at each appliance, from the end of the pipe on.", "/appliances/0/connection");
        }
        if (!PlaceStatus.isStarted(session, PlaceKind.TANK)) {
            return step("Enter the tank: its size, where it stands and what its gauge reads.", "/tank/waterCapacity");
        }
        if (!PlaceStatus.isStarted(session, PlaceKind.FUEL)) {
            return step("Enter what the house burns through the year.", "/use/heating/appliance");
        }
        return Optional.empty();
    }

    private static Optional<NextStep> answer(HouseSession session) {
        OpenQuestions open = OpenQuestions.of(session);
        return Stream.concat(open.own().stream(), open.now().stream())
                .findFirst()
                .map(asked -> {
                    Finding f = asked.first();
                    int others = asked.entries().size() - 1;
                    String question = Sentence.of(f.ask().orElse(f.found()));
                    return new NextStep(
                            (asked.isOwn()
                                            ? ""
                                            : "The questions that are left are for others. "
                                                    + QuestionsByWhom.heading(asked.whom()) + ": ")
                                    + question
                                    + (others == 0
                                            ? ""
                                            : " The same is asked of " + others
                                                    + (others == 1 ? " other." : " others.")),
                            f.field());
                });
    }

    /** Whatever else is open: a caution, what no page asks for, a place in which nothing is entered. */
    private static Optional<NextStep> rest(HouseSession session) {
        return session.findings().stream()
                .min(Comparator.comparing(Finding::severity))
                .map(f -> new NextStep(
                        f.severity() == Severity.NOTE
                                ? PlaceKind.of(f.field()).title() + ": not entered yet. "
                                        + Sentence.of(f.ask().orElse(f.found()))
                                : f.severity() == Severity.CAUTION
                                        ? "Look at this caution: " + Sentence.of(f.found())
                                        : "Fix this first: " + Sentence.of(f.found()),
                        f.field()));
    }

    private static Optional<NextStep> step(String words, String pointer) {
        return Optional.of(new NextStep(words, pointer));
    }

    private static String at(int appliance, String entry) {
        return "/appliances/" + appliance + "/" + entry;
    }

    private static String called(Optional<Review> review, int index) {
        return review.filter(r -> index < r.plan().appliances().size())
                .map(r -> r.piping().names().called(r.plan().appliances().get(index)))
                .orElse("the appliance");
    }
}
