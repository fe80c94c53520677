package longrun.draft.sections;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import longrun.plan.SizeNames;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;

/** The last review's answer for one line of the route. */
public final class RouteAnswer {

    private final Review review;
    private final int section;

    private RouteAnswer(Review review, int section) {
        this.review = review;
        this.section = section;
    }

    /** The answer for a section; empty where the review does not have it. */
    public static Optional<RouteAnswer> of(Optional<Review> review, String id) {
        if (review.isEmpty()) {
            return Optional.empty();
        }
        OptionalInt found = review.get().piping().findSection(id);
        return found.isPresent() ? Optional.of(new RouteAnswer(review.get(), found.getAsInt())) : Optional.empty();
    }

    /** The review. */
    public Review review() {
        return review;
    }

    /** The index of the section in the review. */
    public int section() {
        return section;
    }

    /** The size of the section. */
    public SectionSize size() {
        return review.sizing().section(section);
    }

    /** The load of the section; empty where part of it is not known. */
    public Optional<HeatRate> load() {
        return review.piping().load(section).whole();
    }

    /** The size as shown in the column; a word where there is none. */
    public String sizeWords() {
        SectionSize s = size();
        if (s.status() == SectionStatus.NO_SIZE) {
            return "no size";
        }
        return s.size()
                .map(n -> material() == Material.CSST ? SizeNames.shown(Material.CSST, n) : n)
                .orElse("open");
    }

    Material material() {
        return size().table().map(t -> t.material()).orElse(Material.STEEL);
    }

    /** The note under the size: a size so far, too small, the size needed, or the outside diameter; blank for none. */
    public String sizeNote() {
        String note = ownNote();
        if (size().size().isEmpty() || !review.piping().isProvisional(section)) {
            return note;
        }
        return note.isEmpty() ? "so far" : "so far, " + note;
    }

    private String ownNote() {
        SectionSize s = size();
        if (s.status() == SectionStatus.UNDERSIZED) {
            return "too small";
        }
        Optional<String> needed = s.neededSize().filter(n -> !Optional.of(n).equals(s.size()));
        if (needed.isPresent()) {
            return "needs " + needed.get();
        }
        return s.sizeOd().map(od -> "(" + od + " OD)").orElse("");
    }

    /** The share of capacity used, whole percent; empty without a size. */
    public OptionalInt share() {
        OptionalDouble used = size().shareUsed();
        return used.isPresent() ? OptionalInt.of((int) Math.round(used.getAsDouble() * 100)) : OptionalInt.empty();
    }

    /** The index of its stage; empty where its longest run is not known. */
    public OptionalInt stage() {
        int stage = review.piping().stageIndex(section);
        return stage >= 0 && review.sizing().stage(stage).longestRun().isPresent()
                ? OptionalInt.of(stage)
                : OptionalInt.empty();
    }
}
