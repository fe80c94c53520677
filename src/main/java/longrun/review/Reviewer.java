package longrun.review;

import java.util.ArrayList;
import java.util.List;
import longrun.capacity.CapacityTables;
import longrun.finding.Finding;
import longrun.piping.MissingEntries;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.sizing.Sizing;
import longrun.sizing.SizingFindings;

/** Works a plan out. The same plan always gives the same review. */
public final class Reviewer {

    private final CapacityTables tables;

    public Reviewer(CapacityTables tables) {
        this.tables = tables;
    }

    /** A reviewer with the published tables. */
    public static Reviewer standard() {
        return new Reviewer(CapacityTables.standard());
    }

    /** Never fails for a plan that could be read. */
    public Review review(Plan plan, Parts parts) {
        Piping piping = Piping.of(plan);
        Sizing sizing = Sizing.of(piping, tables);
        List<Finding> findings = new ArrayList<>(MissingEntries.of(piping));
        findings.addAll(SizingFindings.of(sizing));
        return new Review(plan, piping, sizing, findings);
    }
}
