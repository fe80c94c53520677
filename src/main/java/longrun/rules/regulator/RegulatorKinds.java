package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.finding.EntryName;
import longrun.piping.Served;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;
import longrun.plan.choice.Setting;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/**
 * Topic regulator: which kind belongs where. Gas comes down from tank pressure in two stages or in an integral unit; a
 * line regulator follows them, indoors.
 */
public final class RegulatorKinds implements Rule {

    /** Small outdoor cooking appliances (TR-01, exception from memory). */
    private static final double GRILL_EXCEPTION_BTUH = 100_000;

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
            Verdict kind = judge(house, at);
            Optional<Verdict> place = at.regulator().kind().findValue().flatMap(k -> place(house, at, k, kind));
            if (place.isEmpty() || kind.state().state() != State.HOLDS) {
                verdicts.add(kind);
            }
            place.ifPresent(verdicts::add);
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
        return onTank ? atTank(house, at, kind.get()) : onPipe(house, at, kind.get());
    }

    private Verdict atTank(House house, Regulators.At at, RegulatorKind kind) {
        return switch (kind) {
            case FIRST_STAGE, INTEGRAL_TWO_STAGE -> holds(house, at);
            case TWO_PSI ->
                Judge.asks(
                        limit(house, "inlet"),
                        at.place(),
                        "{who} is fed straight from the tank; a 2 psi service regulator is rated for an inlet of 10 psi, an"
                                + " integral two-stage unit with a 2 psi outlet for tank pressure",
                        Question.supplier("Is {who} an integral two-stage unit rated for tank pressure?"),
                        at.place().pointer() + "/kind");
            case SINGLE_STAGE -> singleStage(house, at);
            case SECOND_STAGE, LINE ->
                Judge.broken(
                        limit(house, "inlet"),
                        at.place(),
                        "{who} is fed straight from the tank, whose pressure is above its inlet rating",
                        RIGHT_ORDER,
                        at.place().pointer() + "/kind");
        };
    }

    private Verdict singleStage(House house, Regulators.At at) {
        Served served = house.network().servedBy(at.regulator().id());
        boolean smallGrills = served.onlyGrills() && served.appliances() > 0;
        if (smallGrills && served.missing().isEmpty() && served.known().btuh() <= GRILL_EXCEPTION_BTUH) {
            return holds(house, at);
        }
        if (smallGrills && served.known().btuh() <= GRILL_EXCEPTION_BTUH) {
            return Judge.asks(
                    limit(house, ""),
                    at.place(),
                    "{who} feeds outdoor grills whose input is not entered; up to 100,000 Btu/h is excused",
                    Question.plate("What INPUT in Btu/h does the rating plate of the grill give?"),
                    served.missing().orElseThrow());
        }
        return Judge.broken(
                limit(house, ""),
                at.place(),
                "{who} feeds fixed piping in a single stage " + EntryName.entered("kind", "single-stage"),
                RIGHT_ORDER,
                at.place().pointer() + "/kind");
    }

    private Verdict onPipe(House house, Regulators.At at, RegulatorKind kind) {
        Optional<Regulator> ahead =
                house.network().findRegulatorAhead(at.regulator().id());
        if (ahead.isEmpty()) {
            return Judge.asks(
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
            return Judge.asks(
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
            return Judge.brokenElsewhere(limit(house, ""), at.place()); // told at the regulator ahead
        }
        boolean line = kind == RegulatorKind.LINE;
        return Judge.broken(
                limit(house, line ? "line" : kind == RegulatorKind.SINGLE_STAGE ? "" : "inlet"),
                at.place(),
                "{who} " + EntryName.entered("kind", kind.written()) + " follows the "
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

    /**
     * Whatever takes tank pressure stands outdoors, its vent piped or not (TR-02); a place not entered asks. A
     * single-stage regulator that may not be there at all is asked for no place.
     */
    private Optional<Verdict> place(House house, Regulators.At at, RegulatorKind kind, Verdict itself) {
        if (!Regulators.takesTankPressure(at.regulator())) {
            return Optional.empty();
        }
        Fact<Setting> setting = at.regulator().setting();
        String field = at.place().pointer() + "/setting";
        if (setting.is(Setting.OUTDOORS)) {
            return Optional.empty();
        }
        if (setting.isKnown()) {
            return Optional.of(Judge.broken(
                    limit(house, "outdoors"),
                    at.place(),
                    "{who} takes tank pressure and is not outdoors " + EntryName.entered("regulators/setting", setting),
                    "Move {who} outdoors to the tank valve.",
                    field));
        }
        return kind == RegulatorKind.SINGLE_STAGE && itself.state().state() != State.HOLDS
                ? Optional.empty()
                : Optional.of(Judge.asks(
                        limit(house, "outdoors"),
                        at.place(),
                        "{who} takes tank pressure, and whether it is outdoors is not entered",
                        Question.fitter(
                                "Is {who} outdoors at the tank, or under the dome of a buried tank, which counts as"
                                        + " outdoors?"),
                        field));
    }

    private Verdict holds(House house, Regulators.At at) {
        return Judge.holds(limit(house, ""), at.place());
    }

    private Threshold limit(House house, String variant) {
        return house.limits().get(name(), variant);
    }
}
