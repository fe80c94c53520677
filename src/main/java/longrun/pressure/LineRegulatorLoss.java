package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;
import longrun.quantity.Pressure;
import longrun.quantity.Same;

/**
 * The 2 psi tables leave out what the line regulator itself loses and hold only up to 1/2 psi (footnote of 2018 IRC Table
 * G2413.4(17)).
 */
public final class LineRegulatorLoss {

    static final RuleName RULE = new RuleName("line-regulator-loss");

    /** Greatest loss with which the tables hold. */
    static final Pressure LIMIT = Pressure.ofPsi(0.5);

    private static final Pressure TWO_PSI = Pressure.ofPsi(2);

    private LineRegulatorLoss() {}

    /** The findings of a plan, in the order of its regulators. */
    public static List<Finding> of(Pressures pressures) {
        Piping piping = pressures.sizing().piping();
        List<Finding> out = new ArrayList<>();
        for (Stage stage : piping.stages()) {
            int feeder = piping.stageFeeding(stage.regulatorIndex());
            boolean onTwoPsi = feeder >= 0
                    && piping.stages().get(feeder).regulator().outlet().is(p -> p.fits(TWO_PSI));
            if (onTwoPsi && stage.regulator().kind().is(RegulatorKind.LINE)) {
                find(piping, stage).ifPresent(out::add);
            }
        }
        return List.copyOf(out);
    }

    private static Optional<Finding> find(Piping piping, Stage stage) {
        Regulator regulator = stage.regulator();
        Optional<Pressure> loss = regulator.lossAtLoad().findValue();
        if (loss.isPresent() && Same.atMost(loss.get().inWc(), LIMIT.inWc())) {
            return Optional.empty();
        }
        String id = regulator.id();
        boolean known = loss.isPresent();
        String found = known
                ? "line regulator " + id + " loses " + Words.number(loss.get().psi(), 2) + " psi at its load"
                : "how much pressure line regulator " + id + " loses at its load is not entered";
        return Optional.of(FindingBuilder.finding(
                        RULE,
                        known ? Severity.MUST_FIX : Severity.CAUTION,
                        id,
                        new Citation(
                                "International Residential Code Table G2413.4(17), footnote", "2018", Confidence.PRINT))
                .foundNaming(found)
                .required("no more than 0.5 psi, with which the 2 psi tables hold")
                .remedy(
                        known
                                ? "Use a larger line regulator, whose loss is no more than 0.5 psi."
                                : "Enter its loss at its load.")
                .ask(
                        AskWhom.SUPPLIER,
                        known
                                ? Optional.empty()
                                : Optional.of("What pressure does line regulator " + id + " lose at "
                                        + stageLoad(piping, stage) + "?"))
                .atEntry("/regulators/" + stage.regulatorIndex() + "/lossAtLoad"));
    }

    private static String stageLoad(Piping piping, Stage stage) {
        return stage.outlets().size() == 1
                ? "the full input of "
                        + Words.called(piping, stage.outlets().get(0).id())
                : "the full input of everything behind it";
    }
}
