package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.finding.AskWhom;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.origin.Confidence;

/**
 * Each regulator passes its load at the inlet pressure it will see (2018 IFGC 410.2), with a fifth of its capacity to
 * spare (common practice).
 */
public final class RegulatorCapacity {

    static final String RULE = "regulator-capacity";
    static final double SPARE_SHARE = 0.20;
    private static final String REFERENCE = "International Fuel Gas Code 410.2";
    private static final String EDITION = "2018";

    private final RegulatorPressure line;
    private final int index;

    private RegulatorCapacity(RegulatorPressure line, int index) {
        this.line = line;
        this.index = index;
    }

    /** The findings of a plan, at most one a regulator, in the plan's order. */
    public static List<Finding> of(Pressures pressures) {
        List<Finding> out = new ArrayList<>();
        for (int r = 0; r < pressures.regulators().size(); r++) {
            new RegulatorCapacity(pressures.regulator(r), r).find().ifPresent(out::add);
        }
        return List.copyOf(out);
    }

    private Optional<Finding> find() {
        if (line.capacityBtuh().isEmpty()) {
            return line.regulator().capacity().isUnknown() ? Optional.of(asksCapacity()) : Optional.empty();
        }
        if (line.spareBtuh().isEmpty()) {
            return Optional.empty(); // the missing load is told where it is missing
        }
        double spare = line.spareBtuh().getAsDouble();
        double capacity = line.capacityBtuh().getAsDouble();
        if (spare < -1e-6) {
            return Optional.of(overloaded(capacity));
        }
        if (line.ratingHolds().isPresent() && !line.ratingHolds().get()) {
            return Optional.of(ratedHigher(capacity));
        }
        if (spare < SPARE_SHARE * capacity - 1e-6) {
            return Optional.of(littleSpare(capacity, spare));
        }
        boolean asks = line.inletInWc().isPresent()
                && line.regulator().capacityAtInlet().isUnknown();
        return asks ? Optional.of(asksInlet(capacity)) : Optional.empty();
    }

    private String id() {
        return line.regulator().id();
    }

    private String load() {
        return Words.btuh(line.load().knownBtuh());
    }

    private String sees() {
        return line.inletInWc().isPresent()
                ? " at the " + Words.inWc(line.inletInWc().getAsDouble()) + " it will see"
                : "";
    }

    private Finding overloaded(double capacity) {
        return finding(
                Severity.MUST_FIX,
                "regulator " + id() + " has a capacity of " + Words.btuh(capacity) + " and a load of " + load(),
                "a capacity of at least " + load() + sees(),
                REFERENCE,
                Confidence.PRINT,
                "Use a regulator rated for the whole load.",
                Optional.empty(),
                "capacity");
    }

    private Finding ratedHigher(double capacity) {
        double rated =
                line.regulator().capacityAtInlet().findValue().orElseThrow().inWc();
        double inlet = line.inletInWc().orElseThrow();
        return finding(
                Severity.CAUTION,
                "the " + Words.btuh(capacity) + " of regulator " + id() + " hold at an inlet of " + Words.inWc(rated)
                        + "; with everything firing it will see " + Words.inWc(inlet),
                "a capacity of at least " + load() + sees(),
                REFERENCE,
                Confidence.PRINT,
                "Enter its capacity at that inlet pressure, from its maker's sheet.",
                Optional.of("What does regulator " + id() + " pass at an inlet of " + Words.inWc(inlet) + "?"),
                "capacityAtInlet");
    }

    private Finding littleSpare(double capacity, double spare) {
        return finding(
                Severity.CAUTION,
                "regulator " + id() + " has " + Words.btuh(spare) + " to spare, "
                        + Words.number(100 * spare / capacity, 1) + " % of its " + Words.btuh(capacity),
                "20 % of its capacity to spare" + sees() + ": "
                        + Words.btuh(line.load().knownBtuh() / (1 - SPARE_SHARE)) + " for a load of " + load(),
                "common practice",
                Confidence.MEMORY,
                "Use the next larger regulator.",
                Optional.empty(),
                "capacity");
    }

    private Finding asksInlet(double capacity) {
        return finding(
                Severity.NOTE,
                "the inlet pressure at which regulator " + id() + " passes " + Words.btuh(capacity) + " is not entered",
                "a capacity of at least " + load() + sees(),
                REFERENCE,
                Confidence.PRINT,
                "Enter the inlet pressure of the rating, from its maker's sheet.",
                Optional.of("At what inlet pressure does regulator " + id() + " pass " + Words.btuh(capacity) + "?"),
                "capacityAtInlet");
    }

    private Finding asksCapacity() {
        String required = line.load().complete()
                ? "a capacity of at least " + load() + sees()
                : "a capacity of at least its load" + sees();
        return finding(
                Severity.NOTE,
                "the capacity of regulator " + id() + " is not entered",
                required,
                REFERENCE,
                Confidence.PRINT,
                "Enter its capacity from its maker's sheet.",
                Optional.of("What does regulator " + id() + " pass" + sees() + "?"),
                "capacity");
    }

    private Finding finding(
            Severity severity,
            String found,
            String required,
            String reference,
            Confidence confidence,
            String remedy,
            Optional<String> ask,
            String field) {
        return new Finding(
                RULE,
                severity,
                id(),
                found,
                required,
                reference,
                reference.equals(REFERENCE) ? EDITION : "",
                confidence,
                remedy,
                ask,
                ask.map(a -> AskWhom.SUPPLIER),
                "/regulators/" + index + "/" + field);
    }
}
