package longrun.ui.run;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.capacity.CapacityTables;
import longrun.draft.entry.DraftValue;
import longrun.draft.run.RunAnswer;
import longrun.draft.run.SizedCell;
import longrun.draft.run.Sizer;
import longrun.draft.sections.Allowance;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.plan.PlanPath;
import longrun.plan.json.Reading;
import longrun.quantity.Length;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;
import longrun.sizing.Sizing;
import longrun.sizing.StageSize;
import org.springframework.stereotype.Component;

/** Reads the run, sizes it, and takes from the result what the page shows. */
@Component
class ReviewSizer implements Sizer {

    private final Reviewer reviewer = Reviewer.standard();

    @Override
    public Result size(DraftValue document) {
        Reading reading = document.reading();
        if (reading.plan().isEmpty()) {
            return new Result(
                    RunAnswer.NOTHING,
                    Map.of(),
                    reading.errors().stream()
                            .map(e -> new EntryError(e.pointer(), e.message()))
                            .toList());
        }
        Review review = reviewer.review(reading.plan().get(), ReviewParts.PIPING);
        Map<Allowance, RunAnswer> others = new EnumMap<>(Allowance.class);
        Allowance chosen = Allowance.of(document.textOf("fittingAllowance"));
        for (Allowance a : Allowance.values()) {
            if (a == chosen) {
                continue; // the review has sized that one
            }
            Sizing other = Sizing.of(review.piping(), CapacityTables.standard(), a.inPlan());
            others.put(a, new RunAnswer(lines(other), List.of(), List.of()));
        }
        return new Result(answer(review), others, List.of());
    }

    private static RunAnswer answer(Review review) {
        List<Finding> shown = review.findings().stream()
                .filter(f -> !isStillToBeTyped(review, f))
                .toList();
        return new RunAnswer(
                lines(review.sizing()),
                shown.stream().filter(f -> concernsRun(review, f)).toList(),
                shown.stream().filter(f -> !concernsRun(review, f)).toList());
    }

    /** An input or length that is not typed yet the page asks for by itself. */
    private static boolean isStillToBeTyped(Review review, Finding f) {
        PlanPath at = PlanPath.of(f.field());
        if (!f.rule().equals("entry-missing") || at.length() != 3) {
            return false;
        }
        int index = at.findIndex().orElse(-1);
        return switch (at.step(0) + "/" + at.step(2)) {
            case "appliances/input" ->
                !review.plan().appliances().get(index).input().isKnown();
            case "sections/legs" -> review.piping().measured(index).isEmpty();
            case "sections/reserve" -> true; // a line that feeds nothing yet
            default -> false;
        };
    }

    private static Map<String, RunAnswer.LineAnswer> lines(Sizing sizing) {
        Map<String, RunAnswer.LineAnswer> lines = new LinkedHashMap<>();
        for (int i = 0; i < sizing.piping().sectionCount(); i++) {
            lines.put(sizing.piping().section(i).id(), line(sizing, i));
        }
        return lines;
    }

    /** Everything that must be mended or wants care, and of the questions those its own sizes rest on. */
    private static boolean concernsRun(Review review, Finding f) {
        PlanPath at = PlanPath.of(f.field());
        return f.severity() != Severity.NOTE
                || f.field().equals("/availableSizes/csst")
                || f.rule().startsWith("section-")
                || at.isIn("appliances") && at.step(2).equals("input")
                || at.isIn("sections")
                        && at.step(2).equals("legs")
                        && review.piping()
                                .measured(at.findIndex().orElseThrow())
                                .filter(Length.ZERO::equals)
                                .isPresent(); // turns not described are no doubt of it: a fifth stands for them
    }

    private static RunAnswer.LineAnswer line(Sizing sizing, int section) {
        SectionSize size = sizing.section(section);
        return new RunAnswer.LineAnswer(
                status(size.status()),
                sizing.piping().load(section).whole(),
                stage(sizing, section, size),
                size.capacity().isPresent() ? Optional.of(SizedCell.of(sizing, section)) : Optional.empty(),
                sizing.isProvisional(section));
    }

    private static RunAnswer.Status status(SectionStatus status) {
        return switch (status) {
            case SIZED, ADEQUATE, UNDERSIZED -> RunAnswer.Status.SIZED;
            case NO_SIZE -> RunAnswer.Status.NO_SIZE;
            case UNKNOWN -> RunAnswer.Status.UNKNOWN;
        };
    }

    private static Optional<RunAnswer.StageRun> stage(Sizing sizing, int section, SectionSize size) {
        int at = sizing.piping().stageIndex(section);
        if (at < 0) {
            return Optional.empty();
        }
        StageSize stage = sizing.stage(at);
        if (stage.longestRun().isEmpty()
                || stage.measured().isEmpty()
                || stage.longestRunTo().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new RunAnswer.StageRun(
                stage.measured().get(),
                stage.longestRun().get(),
                stage.allowance().orElse(Length.ZERO),
                sizing.withoutAssumedParts()
                        .filter(entered -> !entered.stage(at).longestRun().equals(stage.longestRun()))
                        .map(entered -> new RunAnswer.EnteredParts(
                                entered.stage(at).longestRun().orElse(Length.ZERO),
                                entered.section(section).size())),
                size.rowRun(),
                "the end of line "
                        + sizing.piping()
                                .section(stage.longestRunTo().get().section())
                                .id(),
                sizing.piping().stages().get(at).regulator().id(),
                SizedCell.sum(sizing, at)));
    }
}
