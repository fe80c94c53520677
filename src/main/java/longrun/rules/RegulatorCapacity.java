package longrun.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.plan.Regulator;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;

/**
 * The regulator's published capacity, at the inlet pressure it will see, covers all it serves; less than a fifth of it to
 * spare is a caution (common practice).
 */
final class RegulatorCapacity implements Rule {

    private static final double SHARE_IN_USE = 0.8;
    private static final double SLACK = 1e-9;

    @Override
    public String name() {
        return "regulator-capacity";
    }

    @Override
    public Precedence precedence() {
        return Precedence.SIZE;
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
        Threshold own = house.limits().get(name(), "");
        Regulator r = at.regulator();
        Served served = house.network().servedBy(r.id());
        String field = at.place().pointer() + "/capacity";
        Optional<HeatRate> capacity = r.capacity().findValue();
        if (capacity.isEmpty()) {
            return Tell.asks(
                    own,
                    at.place(),
                    "the capacity of {who} is not entered",
                    Question.supplier("What capacity in Btu/h does the maker publish for {who} at its inlet pressure?"),
                    field);
        }
        String found =
                "{who} has a capacity of " + r.capacity().findText().orElse("") + " and serves " + btuh(served.btuh());
        double btuh = capacity.get().btuh();
        if (served.btuh() > btuh) {
            return Tell.broken(own, at.place(), found, "Fit a regulator that covers all it serves.", field);
        }
        if (served.missing().isPresent()) {
            return Tell.asks(
                    own,
                    at.place(),
                    found + " so far: something it serves has no input entered",
                    Question.plate("What INPUT in Btu/h do the rating plates behind {who} give on the propane line?"),
                    served.missing().get());
        }
        Threshold spare = house.limits().get(name(), "spare");
        if (served.btuh() > SHARE_IN_USE * btuh + SLACK) {
            return Tell.broken(
                    spare, at.place(), found, "Fit a regulator with a fifth of its capacity to spare.", field);
        }
        return ratedAtMoreThanItSees(house, at)
                .map(found2 -> Tell.asks(
                        own,
                        at.place(),
                        found2,
                        Question.supplier(
                                "What capacity does the maker publish for {who} at the pressure it will see?"),
                        at.place().pointer() + "/capacityAtInlet"))
                .orElseGet(() -> Tell.holds(own, at.place()));
    }

    private static Optional<String> ratedAtMoreThanItSees(House house, Regulators.At at) {
        Optional<Pressure> rated = at.regulator().capacityAtInlet().findValue();
        return house.network()
                .findRegulatorAhead(at.regulator().id())
                .flatMap(ahead -> ahead.outlet()
                        .findValue()
                        .filter(p -> rated.isPresent() && p.compareTo(rated.get()) < 0)
                        .map(p -> "the capacity of {who} is given at an inlet of "
                                + at.regulator().capacityAtInlet().findText().orElse("") + ", and " + ahead.id()
                                + " feeds it "
                                + ahead.outlet().findText().orElse("")));
    }

    static String btuh(double value) {
        return String.format(Locale.ROOT, "%,.0f Btu/h", value);
    }
}
