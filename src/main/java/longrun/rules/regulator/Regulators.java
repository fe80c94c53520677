package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;
import longrun.rules.shape.Case;
import longrun.rules.shape.Cases;
import longrun.rules.shape.House;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;

/** The regulators of a house, each at its place. */
public final class Regulators {

    private Regulators() {}

    public record At(Regulator regulator, Place place) {}

    public static List<At> listIn(House house) {
        List<At> all = new ArrayList<>();
        List<Regulator> regulators = house.plan().regulators();
        for (int i = 0; i < regulators.size(); i++) {
            Regulator r = regulators.get(i);
            String kind = r.kind().findValue().map(RegulatorKind::label).orElse("regulator");
            all.add(new At(r, new Place(r.id(), "/regulators/" + i, "the " + kind + " " + r.id())));
        }
        return all;
    }

    /** Whether tank pressure comes into it: a first stage, alone or inside an integral unit, or what hangs on the tank. */
    static boolean takesTankPressure(Regulator r) {
        return r.kind().is(k -> k == RegulatorKind.FIRST_STAGE || k == RegulatorKind.INTEGRAL_TWO_STAGE)
                || (r.fedBy().is("tank")
                        && r.kind().is(k -> k == RegulatorKind.TWO_PSI || k == RegulatorKind.SINGLE_STAGE));
    }

    /** The question that decides which rules a regulator falls under. */
    static <T> Case<T> askKind(At at) {
        return Case.asks(
                at.place(),
                "the kind of {who} is not entered",
                Question.supplier("What kind is {who}: first-stage, second-stage, integral two-stage, 2 psi or line?"),
                at.place().pointer() + "/kind");
    }

    /** Every regulator whose kind is entered. */
    static Cases<Regulator> each() {
        return eachOf(known -> true);
    }

    /** Every line regulator. */
    static Cases<Regulator> eachLine() {
        return eachOf(known -> known.kind().is(RegulatorKind.LINE));
    }

    /** Every regulator ahead of the point of delivery or at it. */
    static Cases<Regulator> eachOnTankSide() {
        return eachOf(known -> !known.kind().is(RegulatorKind.LINE));
    }

    private static Cases<Regulator> eachOf(Predicate<Regulator> wanted) {
        return house -> listIn(house).stream()
                .map(at -> !at.regulator().kind().isKnown()
                        ? Regulators.<Regulator>askKind(at)
                        : wanted.test(at.regulator())
                                ? Case.of(at.place(), at.regulator())
                                : Case.<Regulator>notFor(at.place()))
                .toList();
    }
}
