package longrun.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import longrun.capacity.CapacityTables;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.fuel.FuelReport;
import longrun.fuel.FuelYear;
import longrun.fuel.YearQuestions;
import longrun.hotwater.Altitude;
import longrun.hotwater.HotWaterQuestions;
import longrun.hotwater.HotWaterStudy;
import longrun.piping.MissingEntries;
import longrun.piping.Piping;
import longrun.piping.UsualFigures;
import longrun.piping.UsualInputs;
import longrun.plan.Plan;
import longrun.plan.json.Reading;
import longrun.pressure.Headroom;
import longrun.pressure.PressureFindings;
import longrun.pressure.Pressures;
import longrun.rules.Answers;
import longrun.rules.RuleReport;
import longrun.rules.Rules;
import longrun.rules.shape.House;
import longrun.sizing.Sizing;
import longrun.sizing.SizingFindings;
import longrun.tank.TankFindings;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;

/** Makes the review of a plan. The same plan always gives the same review. */
public final class Reviewer {

    private final CapacityTables tables;

    public Reviewer(CapacityTables tables) {
        this.tables = tables;
    }

    /** A reviewer with the published tables. */
    public static Reviewer standard() {
        return new Reviewer(CapacityTables.standard());
    }

    /**
     * Reviews a plan. It never fails for a plan that can be read.
     *
     * @throws CancellationException where its thread was interrupted
     */
    public Review review(Plan plan, ReviewParts parts) {
        Piping piping = Piping.of(plan);
        stopIfInterrupted();
        Sizing sizing = Sizing.of(piping, tables);
        stopIfInterrupted();
        Pressures pressures = Pressures.of(sizing);
        stopIfInterrupted();
        RuleReport rules = Rules.check(House.of(pressures));
        stopIfInterrupted();
        List<Finding> findings = new ArrayList<>(MissingEntries.of(piping));
        findings.addAll(UsualInputs.of(plan));
        findings.addAll(UsualFigures.of(plan));
        findings.addAll(SizingFindings.of(sizing));
        List<Finding> pressureFindings = PressureFindings.of(pressures);
        stopIfInterrupted();
        Optional<TankReport> tank = parts == ReviewParts.ALL ? Optional.of(TankStudy.of(plan)) : Optional.empty();
        List<Finding> tankFindings = tank.map(t -> TankFindings.of(plan, t)).orElse(List.of());
        List<Finding> asking = new ArrayList<>(findings);
        asking.addAll(tankFindings);
        findings.addAll(withoutRepeats(rules.findings(), asking, pressureFindings));
        findings.addAll(pressureFindings);
        Optional<HotWaterStudy> hotWater = parts == ReviewParts.ALL ? HotWaterStudy.of(plan) : Optional.empty();
        stopIfInterrupted();
        Optional<FuelReport> fuel = tank.map(t -> FuelYear.of(plan, t, hotWater.map(HotWaterStudy::use)));
        if (fuel.isPresent()) {
            findings.addAll(tankFindings);
            findings.addAll(Altitude.findings(plan));
            hotWater.ifPresent(w -> findings.addAll(HotWaterQuestions.of(w)));
            findings.addAll(YearQuestions.of(plan, fuel.get(), fields(findings)));
        }
        return new Review(
                plan,
                piping,
                sizing,
                pressures,
                Headroom.of(sizing),
                rules,
                tank,
                fuel,
                hotWater,
                Answers.apply(plan, findings));
    }

    /**
     * Reviews a plan that could be read; its findings point at the entries as the document has them.
     *
     * @throws java.util.NoSuchElementException where the plan could not be read
     */
    public Review review(Reading reading, ReviewParts parts) {
        Review review = review(reading.plan().orElseThrow(), parts);
        return review.withFields(reading.written()::pointer);
    }

    /** The request may have been cancelled: then its thread is interrupted, and the work ends. */
    private static void stopIfInterrupted() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("the review was cancelled");
        }
    }

    private static Set<String> fields(List<Finding> findings) {
        return findings.stream().map(Finding::field).collect(Collectors.toSet());
    }

    /** The rules' findings, less the questions a missing entry asks already and the findings the pressures give. */
    private static List<Finding> withoutRepeats(List<Finding> rules, List<Finding> missing, List<Finding> pressures) {
        Set<String> asked = new HashSet<>();
        missing.forEach(f -> asked.add(f.field()));
        Set<String> said = new HashSet<>();
        pressures.forEach(f -> said.add(f.rule() + " " + f.at()));
        return rules.stream()
                .filter(f -> f.ask().isEmpty() || f.severity() != Severity.NOTE || !asked.contains(f.field()))
                .filter(f -> !said.contains(f.rule() + " " + f.at()))
                .toList();
    }
}
