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

    /**
     * Never fails for a plan that can be read.
     *
     * @throws CancellationException where its thread was interrupted
     */
    public Review review(Plan plan, Parts parts) {
        Piping piping = Piping.of(plan);
        goOn();
        Sizing sizing = Sizing.of(piping, tables);
        goOn();
        Pressures pressures = Pressures.of(sizing);
        goOn();
        RuleReport rules = Rules.check(House.of(pressures));
        goOn();
        List<Finding> findings = new ArrayList<>(MissingEntries.of(piping));
        findings.addAll(UsualInputs.of(plan));
        findings.addAll(UsualFigures.of(plan));
        findings.addAll(SizingFindings.of(sizing));
        List<Finding> pressureFindings = PressureFindings.of(pressures);
        goOn();
        Optional<TankReport> tank = parts == Parts.ALL ? Optional.of(TankStudy.of(plan)) : Optional.empty();
        List<Finding> tankFindings = tank.map(t -> TankFindings.of(plan, t)).orElse(List.of());
        List<Finding> asking = new ArrayList<>(findings);
        asking.addAll(tankFindings);
        findings.addAll(notYetSaid(rules.findings(), asking, pressureFindings));
        findings.addAll(pressureFindings);
        Optional<HotWaterStudy> hotWater = parts == Parts.ALL ? HotWaterStudy.of(plan) : Optional.empty();
        goOn();
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
     * The review of a plan that could be read, its findings pointing at the entries as the document has them.
     *
     * @throws java.util.NoSuchElementException where the plan could not be read
     */
    public Review review(Reading reading, Parts parts) {
        Review review = review(reading.plan().orElseThrow(), parts);
        return review.withFields(reading.written()::pointer);
    }

    /** Whoever asked may have gone: an interrupted thread works nothing out for nobody. */
    private static void goOn() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("the review was called off");
        }
    }

    private static Set<String> fields(List<Finding> findings) {
        return findings.stream().map(Finding::field).collect(Collectors.toSet());
    }

    /** What the rules found, without a question that a missing entry asks already and without a pressure finding. */
    private static List<Finding> notYetSaid(List<Finding> rules, List<Finding> missing, List<Finding> pressures) {
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
