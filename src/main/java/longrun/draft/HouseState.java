package longrun.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.Appliance;
import longrun.plan.FittingAllowance;
import longrun.plan.Plan;
import longrun.review.Review;
import longrun.sizing.SectionStatus;

/**
 * How far the house has come, in words. It never looks finished: at best it is sized, not approved.
 *
 * @param words the state
 * @param because the reason: what it rests on, or what is open
 * @param unsized the word shown in place of a size that is not known yet
 * @param mustFix how many findings must be fixed
 * @param questions how many questions are open
 */
public record HouseState(String words, String because, String unsized, int mustFix, int questions) {

    public static final String SIZED = "Sized, not approved";
    public static final String FAILED = "Can\u2019t be worked out at the moment";
    private static final String NOTHING = "Nothing to size yet";

    /** Whether there is neither a section nor an appliance yet. */
    public boolean isNothing() {
        return words.equals(NOTHING);
    }

    /** The state of a house as it stands. */
    public static HouseState of(HouseSession session) {
        List<Finding> findings = session.findings();
        int mustFix = (int) PlaceStatus.count(findings, Severity.MUST_FIX);
        int questions = OpenQuestions.of(session).count();
        if (session.isFailed()) {
            return new HouseState(
                    FAILED,
                    "The fault is the program\u2019s. Every entry is kept, and there is no result until it is mended.",
                    "not known",
                    0,
                    0);
        }
        if (!session.isCurrent()) {
            int wrong = session.errors().size();
            return new HouseState(
                    "Waiting for an entry",
                    (wrong == 1 ? "One entry is" : wrong + " entries are")
                            + (session.leavesOut()
                                    ? " not understood and left out: what depends on it is not known."
                                    : session.review().isPresent()
                                            ? " not understood. What is shown is the answer from before."
                                            : " not understood, so nothing is known yet."),
                    "waiting",
                    mustFix,
                    questions);
        }
        Optional<Review> review = session.review();
        Plan plan = review.map(Review::plan).orElseThrow();
        if (plan.sections().isEmpty() && plan.appliances().isEmpty()) {
            return new HouseState(
                    NOTHING,
                    "Begin with how the pressure is reduced, or with the appliances; any order will do.",
                    "none yet",
                    mustFix,
                    questions);
        }
        boolean unknown = plan.sections().isEmpty() || anyOf(review.get(), SectionStatus.UNKNOWN);
        if (unknown) {
            return new HouseState(
                    questions == 0
                            ? "Not sized yet"
                            : questions == 1 ? "1 question open" : questions + " questions open",
                    "No missing entry is taken as zero, so the sizes that depend on one are not known yet.",
                    "not yet",
                    mustFix,
                    questions);
        }
        if (anyOf(review.get(), SectionStatus.NO_SIZE)) {
            return new HouseState(
                    "No size in the table",
                    "A run is longer than its table, or a load is more than the table\u2019s largest size carries.",
                    "no size",
                    mustFix,
                    questions);
        }
        if (anyOf(review.get(), SectionStatus.UNDERSIZED)) {
            return new HouseState(
                    "A section is too small",
                    "The size in place or chosen carries less than its load.",
                    "too small",
                    mustFix,
                    questions);
        }
        String mend = mustFix == 0 ? "" : mustFix + " must fix. ";
        if (!review.get().connectedLoadComplete()) {
            return new HouseState(
                    "Sized so far",
                    mend
                            + (review.get().piping().hangsLoose()
                                    ? "Something is not connected to a section or regulator yet; its load can make any"
                                            + " size larger."
                                    : "Not every appliance has an input and a section, so the loads will grow."),
                    "sized",
                    mustFix,
                    questions);
        }
        return new HouseState(
                SIZED, mend + assumed(review.get(), questions) + notEntered(session), "sized", mustFix, questions);
    }

    /** The places in which nothing is entered yet, so that nothing in them is asked or judged. */
    private static String notEntered(HouseSession session) {
        String places = Stream.of(PlaceKind.CONNECTIONS, PlaceKind.TANK, PlaceKind.FUEL)
                .filter(p -> !PlaceStatus.isStarted(session, p))
                .map(p -> p.title().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
        return places.isEmpty() ? "" : " Not entered yet: " + places + ".";
    }

    private static boolean anyOf(Review review, SectionStatus status) {
        for (int i = 0; i < review.piping().sectionCount(); i++) {
            if (review.sizing().section(i).status() == status) {
                return true;
            }
        }
        return false;
    }

    private static String assumed(Review review, int questions) {
        List<String> said = new ArrayList<>();
        String rough = review.plan().sections().stream()
                .filter(s -> s.rough().is(true))
                .map(s -> s.id())
                .collect(Collectors.joining(", "));
        if (!rough.isEmpty()) {
            said.add("Rough, not yet measured: " + rough + ".");
        }
        FittingAllowance allowance = review.sizing().allowance();
        if (allowance instanceof FittingAllowance.None) {
            said.add("Fittings are left out: the real run is longer than the one measured.");
        } else if (allowance instanceof FittingAllowance.Share) {
            said.add("A share is added for fittings, whatever they come to.");
        }
        boolean counted = IntStream.range(0, review.piping().sectionCount())
                .anyMatch(i -> !review.sizing().assumedParts(i).isEmpty());
        if (counted) {
            said.addAll(partsCounted(review));
        }
        if (questions > 0) {
            said.add(questions == 1 ? "One question is open." : questions + " questions are open.");
        }
        if (said.isEmpty()) {
            said.add("Supplier, fitter and inspector have not seen it yet.");
        }
        return String.join(" ", said);
    }

    /** Parts that count though nobody has entered them, or nobody has seen them. */
    private static List<String> partsCounted(Review review) {
        long all = review.plan().appliances().size();
        long unseen = review.plan().appliances().stream()
                .filter(Appliance::hasPartsNotSeen)
                .count();
        long lacking = review.plan().appliances().stream()
                .filter(a -> a.connection().isUnknown())
                .count();
        List<String> said = new ArrayList<>();
        if (lacking > 0) {
            said.add(at(lacking, all) + " the parts are not entered; those the rules ask for are counted.");
        }
        if (unseen > 0) {
            said.add(at(unseen, all) + " the parts are assumed; nobody has seen them yet.");
        }
        if (said.isEmpty()) {
            said.add("Some parts at appliances are not entered; those the rules ask for are counted.");
        }
        return said;
    }

    private static String at(long some, long all) {
        return some == all && all > 1
                ? "At all " + all + " appliances"
                : some == 1 ? "At one appliance" : "At " + some + " appliances";
    }
}
