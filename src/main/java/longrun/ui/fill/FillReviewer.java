package longrun.ui.fill;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.draft.entry.DraftValue;
import longrun.finding.Finding;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.fuel.fill.FillReport;
import longrun.fuel.fill.FillStudy;
import longrun.piping.UsualFigures;
import longrun.piping.UsualInputs;
import longrun.plan.Plan;
import longrun.plan.json.PlanError;
import longrun.plan.json.Reading;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.springframework.stereotype.Component;

/** Reads the page as any plan, reviews it as any house, and adds how long a fill lasts. */
@Component
class FillReviewer {

    private final Reviewer reviewer = Reviewer.standard();

    /**
     * Either an answer or the entries that keep one from being made.
     *
     * @param findings of the review that concern the tank's vapour and what is burnt
     */
    record Result(Optional<Plan> plan, Optional<FillReport> report, List<Finding> findings, List<PlanError> errors) {
        static final Result NONE = new Result(Optional.empty(), Optional.empty(), List.of(), List.of());
    }

    Result review(DraftValue document) {
        Reading reading = document.reading();
        if (reading.plan().isEmpty()) {
            return new Result(Optional.empty(), Optional.empty(), List.of(), reading.errors());
        }
        Plan plan = reading.plan().get();
        Review review = reviewer.review(reading, ReviewParts.ALL);
        Set<String> unusual = unusual(plan, reading);
        return new Result(
                Optional.of(plan),
                Optional.of(FillStudy.of(
                        plan, review.tank().orElseThrow(), review.fuel().orElseThrow())),
                review.findings().stream()
                        .filter(f -> concernsTheFill(f, unusual))
                        .toList(),
                List.of());
    }

    /** Where figures stand that no house usually has. */
    private static Set<String> unusual(Plan plan, Reading reading) {
        return Stream.concat(UsualInputs.of(plan).stream(), UsualFigures.of(plan).stream())
                .map(f -> reading.written().pointer(f.field()))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** What is wrong with the vapour, and figures no house usually has; pipes, rooms and distances are a house's. */
    private static boolean concernsTheFill(Finding f, Set<String> unusual) {
        return f.name().equals(RuleName.ENTRY_MISSING) && unusual.contains(f.field())
                || f.rule().startsWith("tank-vapour") && f.severity() != Severity.NOTE;
    }
}
