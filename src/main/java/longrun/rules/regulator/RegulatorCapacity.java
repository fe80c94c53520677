package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.piping.Served;
import longrun.plan.choice.RegulatorKind;
import longrun.pressure.RegulatorPressure;
import longrun.quantity.HeatRate;
import longrun.quantity.Same;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/**
 * The regulator's published capacity, at the inlet pressure it will see with everything firing, covers all it serves;
 * less than a fifth of it to spare is a caution (common practice). A rating at a higher inlet is no rating at the lower
 * one, so it asks, and so does an inlet that is not known yet. At most one finding a regulator: what is sure comes before what is asked.
 */
public final class RegulatorCapacity implements Rule {

    /** The fuel gas code's section is of line regulators alone; it begins behind the tank's own. */
    private static final String TANK_SIDE = "tank-side";

    private static final double SPARE_SHARE = 0.2;

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
        List<Regulators.At> all = Regulators.listIn(house);
        for (int i = 0; i < all.size(); i++) {
            verdicts.add(judge(house, all.get(i), i));
        }
        return verdicts;
    }

    private Verdict judge(House house, Regulators.At at, int index) {
        RegulatorPressure line = house.pressures().regulator(index);
        Threshold own = house.limits().get(name(), line.regulator().kind().is(RegulatorKind.LINE) ? "" : TANK_SIDE);
        String field = at.place().pointer() + "/capacity";
        Optional<HeatRate> entered = line.capacity();
        if (entered.isEmpty()) {
            String sees = sees(line);
            return Judge.asks(
                    own,
                    at.place(),
                    "the capacity of {who} is not entered",
                    Question.supplier("What does {who} pass" + (sees.isEmpty() ? " at its inlet pressure" : sees)
                            + (line.load().complete()
                                    ? ", with " + btuh(line.load().known().btuh()) + " to serve"
                                    : "")
                            + "?"),
                    field);
        }
        double capacity = entered.get().btuh();
        double load = line.load().known().btuh();
        if (!Same.atMost(load, capacity)) {
            return Judge.broken(own, at.place(), serves(line), "Fit a regulator that covers all it serves.", field);
        }
        Served served = house.network().servedBy(line.regulator().id());
        Optional<String> open =
                served.missing().or(() -> house.pressures().sizing().piping().findLoose(index));
        if (open.filter(RegulatorCapacity::saysWhatFeeds).isPresent()) {
            return Judge.asks(
                    own,
                    at.place(),
                    serves(line) + " so far: what feeds another part of the house is not entered",
                    Question.fitter("Does {who} serve more than is entered behind it?"),
                    open.get());
        }
        if (open.isPresent()) {
            return Judge.asks(
                    own,
                    at.place(),
                    serves(line) + " so far: something it serves has no input entered",
                    Question.plate("What INPUT in Btu/h do the rating plates behind {who} give on the propane line?"),
                    open.get());
        }
        if (!Same.atLeast(capacity * (1 - SPARE_SHARE), load)) {
            return Judge.broken(
                    house.limits().get(name(), "spare"),
                    at.place(),
                    serves(line) + ": " + btuh(capacity - load) + " to spare",
                    "Fit a regulator of at least " + btuh(load / (1 - SPARE_SHARE)) + ".",
                    field);
        }
        return atItsInlet(house, own, at, line, index);
    }

    /** Whether an entry says what a part hangs on; no rating plate answers that. */
    private static boolean saysWhatFeeds(String field) {
        return field.endsWith("/from") || field.endsWith("/fedBy");
    }

    private static Verdict atItsInlet(House house, Threshold own, Regulators.At at, RegulatorPressure line, int index) {
        String capacity = line.regulator().capacity().findText().orElse("");
        String field = at.place().pointer() + "/capacityAtInlet";
        boolean onTank = house.pressures().sizing().piping().sectionFeeding(index) < 0
                && line.regulator().fedBy().isKnown();
        if (onTank) {
            return Judge.holds(own, at.place());
        }
        Optional<InletNotKnown> lacks = InletNotKnown.find(house, index);
        String sees = line.inletText().filter(p -> lacks.isEmpty()).orElse("");
        if (line.regulator().capacityAtInlet().findValue().isEmpty()) {
            return Judge.asks(
                    own,
                    at.place(),
                    "the inlet pressure at which {who} passes " + capacity + " is not entered"
                            + (sees.isEmpty() ? "" : "; with everything firing it will see " + sees),
                    Question.supplier("At what inlet pressure does {who} pass " + capacity + "?"),
                    field);
        }
        if (lacks.isPresent()) {
            return Judge.asks(
                    own,
                    at.place(),
                    "the capacity of {who} is given" + rated(line) + ", and what it will see is not known: "
                            + lacks.get().words(),
                    lacks.get().question(),
                    lacks.get().field());
        }
        if (line.ratingHolds().filter(h -> h).isPresent()) {
            return Judge.holds(own, at.place());
        }
        return Judge.asks(
                own,
                at.place(),
                "the capacity of {who} is given" + rated(line) + ", and with everything firing it will see " + sees,
                Question.supplier("What does {who} pass at an inlet of " + sees + "?"),
                field);
    }

    private static String serves(RegulatorPressure line) {
        return "{who} has a capacity of "
                + line.regulator().capacity().findText().orElse("") + rated(line) + " and serves "
                + btuh(line.load().known().btuh()) + sees(line);
    }

    private static String sees(RegulatorPressure line) {
        return line.inletText().map(p -> " at the " + p + " it will see").orElse("");
    }

    private static String rated(RegulatorPressure line) {
        return line.regulator()
                .capacityAtInlet()
                .findText()
                .map(p -> " at an inlet of " + p)
                .orElse("");
    }

    private static String btuh(double value) {
        return String.format(Locale.ROOT, "%,.0f Btu/h", value);
    }
}
