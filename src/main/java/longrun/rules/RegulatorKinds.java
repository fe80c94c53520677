package longrun.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.RegulatorKind;
import longrun.plan.Setting;
import longrun.quantity.Pressure;

/**
 * Topic regulator: which kind belongs where. Gas comes down from tank pressure in two stages or in an integral unit; a
 * line regulator follows them, indoors.
 */
final class RegulatorKinds implements Rule {

    /** Outlet limits of UL 144 (TR-02, TR-03). */
    private static final double FIRST_STAGE_LEAST_PSI = 2;

    private static final double FIRST_STAGE_GREATEST_PSI = 10;
    private static final double SECOND_STAGE_GREATEST_IN_WC = 14;
    /** Small outdoor cooking appliances (TR-01, exception from memory). */
    private static final double GRILL_EXCEPTION_BTUH = 100_000;

    private static final double SLACK = 1e-9;

    private static final String RIGHT_ORDER =
            "Use a first-stage regulator at the tank and a second-stage regulator at the house, an integral two-stage"
                    + " regulator, or 2 psi regulation with line regulators.";

    @Override
    public String name() {
        return "regulator-kind";
    }

    @Override
    public Precedence precedence() {
        return Precedence.MISSING;
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
        boolean onTank = at.regulator().fedBy().is("tank");
        Verdict byPlace = onTank ? atTank(house, at, kind.get()) : onPipe(house, at, kind.get());
        return byPlace.state().state() == State.HOLDS ? byOutlet(house, at, kind.get()) : byPlace;
    }

    private Verdict atTank(House house, Regulators.At at, RegulatorKind kind) {
        return switch (kind) {
            case FIRST_STAGE ->
                at.regulator().setting().is(Setting.INDOORS)
                        ? Tell.broken(
                                limit(house, "outdoors"),
                                at.place(),
                                "{who} is indoors (setting: indoors)",
                                "Move {who} outdoors to the tank valve.",
                                at.place().pointer() + "/setting")
                        : holds(house, at);
            case INTEGRAL_TWO_STAGE -> holds(house, at);
            case TWO_PSI ->
                Tell.asks(
                        limit(house, "inlet"),
                        at.place(),
                        "{who} hangs on the tank; a 2 psi service regulator is rated for an inlet of 10 psi, an integral"
                                + " two-stage unit with a 2 psi outlet for tank pressure",
                        Question.supplier("Is {who} an integral two-stage unit rated for tank pressure?"),
                        at.place().pointer() + "/kind");
            case SINGLE_STAGE -> singleStage(house, at);
            case SECOND_STAGE, LINE ->
                Tell.broken(
                        limit(house, "inlet"),
                        at.place(),
                        "{who} hangs on the tank (fedBy: tank), whose pressure is above its inlet rating",
                        RIGHT_ORDER,
                        at.place().pointer() + "/kind");
        };
    }

    private Verdict singleStage(House house, Regulators.At at) {
        Served served = house.network().servedBy(at.regulator().id());
        boolean smallGrills = served.onlyGrills() && served.appliances() > 0;
        if (smallGrills && served.missing().isEmpty() && served.btuh() <= GRILL_EXCEPTION_BTUH) {
            return holds(house, at);
        }
        if (smallGrills && served.btuh() <= GRILL_EXCEPTION_BTUH) {
            return Tell.asks(
                    limit(house, ""),
                    at.place(),
                    "{who} feeds outdoor grills whose input is not entered; up to 100,000 Btu/h is excused",
                    Question.plate("What INPUT in Btu/h does the rating plate of the grill give?"),
                    served.missing().orElseThrow());
        }
        return Tell.broken(
                limit(house, ""),
                at.place(),
                "{who} feeds fixed piping in a single stage (kind: single-stage)",
                RIGHT_ORDER,
                at.place().pointer() + "/kind");
    }

    private Verdict onPipe(House house, Regulators.At at, RegulatorKind kind) {
        Optional<Regulator> ahead =
                house.network().findRegulatorAhead(at.regulator().id());
        if (ahead.isEmpty()) {
            return Tell.asks(
                    limit(house, ""),
                    at.place(),
                    "what feeds {who} is not entered",
                    Question.fitter("Which pipe or tank feeds {who}?"),
                    at.place().pointer() + "/fedBy");
        }
        Optional<RegulatorKind> before = ahead.get().kind().findValue();
        if (before.isEmpty()) {
            String pointer = house.network()
                    .findPointer(ahead.get().id())
                    .orElse(at.place().pointer());
            return Tell.asks(
                    limit(house, ""),
                    at.place(),
                    "the kind of the regulator " + ahead.get().id() + " ahead of {who} is not entered",
                    Question.supplier(
                            "What kind is the regulator " + ahead.get().id() + "?"),
                    pointer + "/kind");
        }
        if (follows(kind, before.get())) {
            return holds(house, at);
        }
        if (isMisplaced(house, ahead.get())) {
            return Tell.brokenElsewhere(limit(house, ""), at.place()); // told at the regulator ahead
        }
        boolean line = kind == RegulatorKind.LINE;
        return Tell.broken(
                limit(house, line ? "line" : kind == RegulatorKind.SINGLE_STAGE ? "" : "inlet"),
                at.place(),
                "{who} (kind: " + kind.written() + ") follows the "
                        + before.get().label() + " " + ahead.get().id(),
                RIGHT_ORDER,
                at.place().pointer() + "/kind");
    }

    /** Whether a regulator's own kind is wrong where it stands; then what follows it is not told as well. */
    private static boolean isMisplaced(House house, Regulator r) {
        Optional<RegulatorKind> kind = r.kind().findValue();
        if (r.fedBy().is("tank")) {
            return kind.filter(k -> k == RegulatorKind.SECOND_STAGE
                            || k == RegulatorKind.LINE
                            || k == RegulatorKind.SINGLE_STAGE)
                    .isPresent();
        }
        Optional<RegulatorKind> before =
                house.network().findRegulatorAhead(r.id()).flatMap(a -> a.kind().findValue());
        return kind.isPresent() && before.isPresent() && !follows(kind.get(), before.get());
    }

    /** Which kind is at home after which. */
    private static boolean follows(RegulatorKind kind, RegulatorKind before) {
        return switch (kind) {
            case SECOND_STAGE, TWO_PSI -> before == RegulatorKind.FIRST_STAGE;
            case LINE -> before != RegulatorKind.FIRST_STAGE && before != RegulatorKind.SINGLE_STAGE;
            case FIRST_STAGE, INTEGRAL_TWO_STAGE, SINGLE_STAGE -> false;
        };
    }

    private Verdict byOutlet(House house, Regulators.At at, RegulatorKind kind) {
        Fact<Pressure> outlet = at.regulator().outlet();
        String field = at.place().pointer() + "/outlet";
        String variant = kind == RegulatorKind.FIRST_STAGE
                ? "first-outlet"
                : kind == RegulatorKind.SECOND_STAGE ? "second-outlet" : "";
        if (!outlet.isKnown()) {
            return Tell.asks(
                    limit(house, variant),
                    at.place(),
                    "the outlet pressure of {who} is not entered",
                    Question.supplier("What outlet pressure is {who} set to?"),
                    field);
        }
        double psi = outlet.findValue().orElseThrow().psi();
        boolean fits = switch (kind) {
            case FIRST_STAGE -> psi >= FIRST_STAGE_LEAST_PSI - SLACK && psi <= FIRST_STAGE_GREATEST_PSI + SLACK;
            case SECOND_STAGE -> psi * Pressure.IN_WC_PER_PSI <= SECOND_STAGE_GREATEST_IN_WC + SLACK;
            default -> true;
        };
        if (!fits) {
            return Tell.broken(
                    limit(house, variant),
                    at.place(),
                    "{who} is set to " + outlet.findText().orElse(""),
                    "Set {who} within its range, or enter the kind it is.",
                    field);
        }
        return holds(house, at);
    }

    private Verdict holds(House house, Regulators.At at) {
        return Tell.holds(limit(house, ""), at.place());
    }

    private Threshold limit(House house, String variant) {
        return house.limits().get(name(), variant);
    }
}
