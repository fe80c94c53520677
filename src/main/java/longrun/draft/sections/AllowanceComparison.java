package longrun.draft.sections;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import longrun.capacity.CapacityTables;
import longrun.quantity.Length;
import longrun.review.Review;
import longrun.sizing.Sizing;
import longrun.sizing.StageSize;
import org.jspecify.annotations.Nullable;

/** Sizes a house with each fitting allowance, for comparison; once for each review, since a large house takes time. */
public final class AllowanceComparison {

    private final Map<Allowance, Sizing> sized = new EnumMap<>(Allowance.class);
    private @Nullable Review sizedOf;

    /** The effect of an allowance on the longest run of a section; empty while that run is not known. */
    public Optional<AllowanceEffect> effect(Review review, int section, Allowance allowance) {
        Sizing other = at(review, allowance);
        int stage = review.piping().stageIndex(section);
        if (stage < 0) {
            return Optional.empty();
        }
        StageSize size = other.stage(stage);
        if (size.longestRun().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new AllowanceEffect(
                size.allowance().orElse(Length.ZERO), other.section(section).rowRun()));
    }

    private Sizing at(Review review, Allowance allowance) {
        if (review != sizedOf) {
            sizedOf = review;
            sized.clear();
        }
        return sized.computeIfAbsent(allowance, a -> Sizing.of(review.piping(), CapacityTables.standard(), a.inPlan()));
    }
}
