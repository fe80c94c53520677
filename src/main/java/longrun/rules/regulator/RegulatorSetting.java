package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;
import longrun.quantity.Pressure;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** What a regulator is set to fits its kind (RG-17, with TR-02 and TR-03), and is never above what feeds it. */
public final class RegulatorSetting implements Rule {

    private static final double SLACK = 1e-9;

    /** The settings a kind may have, psi, and the row that says so. */
    private record Range(double leastPsi, double greatestPsi, String variant) {

        boolean holds(double psi) {
            return psi >= leastPsi - SLACK && psi <= greatestPsi + SLACK;
        }
    }

    private static final double LOW_PRESSURE_PSI = Pressure.ofInWc(14).psi();

    @Override
    public String name() {
        return "regulator-setting";
    }

    @Override
    public List<Verdict> judge(House house) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Regulators.At at : Regulators.listIn(house)) {
            verdicts.add(judge(house, at));
        }
        return verdicts;
    }

    private Verdict judge(House house, Regulators.At at) {
        Optional<RegulatorKind> kind = at.regulator().kind().findValue();
        if (kind.isEmpty()) {
            return Regulators.<Regulator>askKind(at)
                    .findSettled(limit(house, ""))
                    .orElseThrow();
        }
        Optional<Range> range = range(kind.get());
        String variant = range.map(Range::variant).orElse("");
        String field = at.place().pointer() + "/outlet";
        Optional<Pressure> outlet = at.regulator().outlet().findValue();
        if (outlet.isEmpty()) {
            return Judge.asks(
                    limit(house, variant),
                    at.place(),
                    "the outlet pressure of {who} is not entered",
                    Question.supplier("What outlet pressure is {who} set to?"),
                    field);
        }
        String set = "{who} is set to " + at.regulator().outlet().findText().orElse("");
        if (range.isPresent() && !range.get().holds(outlet.get().psi())) {
            return Judge.broken(
                    limit(house, variant),
                    at.place(),
                    set,
                    "Set {who} within its range, or enter the kind it is.",
                    field);
        }
        Optional<Regulator> ahead =
                house.network().findRegulatorAhead(at.regulator().id());
        Optional<Pressure> inlet = ahead.flatMap(r -> r.outlet().findValue());
        if (inlet.isPresent() && outlet.get().psi() > inlet.get().psi() + SLACK) {
            return Judge.broken(
                    limit(house, "inlet"),
                    at.place(),
                    set + ", above the "
                            + ahead.orElseThrow().outlet().findText().orElse("") + " that "
                            + ahead.orElseThrow().id() + " feeds it",
                    "Set {who} lower than what feeds it, or set "
                            + ahead.orElseThrow().id() + " higher.",
                    field);
        }
        return Judge.holds(limit(house, variant), at.place());
    }

    /** Empty for a single-stage regulator, which is judged by what it feeds. */
    private static Optional<Range> range(RegulatorKind kind) {
        return switch (kind) {
            case FIRST_STAGE -> Optional.of(new Range(2, 10, "first-stage"));
            case TWO_PSI -> Optional.of(new Range(1, 5, "two-psi"));
            case SECOND_STAGE, INTEGRAL_TWO_STAGE, LINE -> Optional.of(new Range(0, LOW_PRESSURE_PSI, "low-pressure"));
            case SINGLE_STAGE -> Optional.empty();
        };
    }

    private Threshold limit(House house, String variant) {
        return house.limits().get(name(), variant);
    }
}
