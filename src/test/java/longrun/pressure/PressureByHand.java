package longrun.pressure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import longrun.capacity.CapacityTable;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.choice.Material;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.RegulatorKind;
import longrun.sizing.SectionSize;
import longrun.sizing.Sizing;

/**
 * A second way to the pressures, from the rule text alone: every outlet walked from the tank, the drop found by halving
 * the code's flow formula, loads added up appliance by appliance. Slow and plain on purpose; it shares only the sizes,
 * the table cells and each section's counted feet with the program.
 */
final class PressureByHand {

    private final Plan plan;
    private final Sizing sizing;
    private final Map<String, Section> sections = new TreeMap<>();
    private final Map<String, Regulator> regulators = new TreeMap<>();
    private final Map<String, List<Section>> ways = new HashMap<>();
    private final Map<String, Double> loads = new HashMap<>();

    PressureByHand(Sizing sizing) {
        this.sizing = sizing;
        this.plan = sizing.piping().plan();
        plan.sections().forEach(s -> sections.put(s.id(), s));
        plan.regulators().forEach(r -> regulators.put(r.id(), r));
    }

    /** The sections between an appliance's or regulator's section and its own regulator, the regulator's end first. */
    private List<Section> way(String last) {
        return ways.computeIfAbsent(last, this::walked);
    }

    private List<Section> walked(String last) {
        List<Section> out = new ArrayList<>();
        String at = last;
        while (sections.containsKey(at)) {
            out.add(0, sections.get(at));
            at = sections.get(at).from().findValue().orElseThrow();
        }
        return out;
    }

    private Regulator regulatorOf(String last) {
        return regulators.get(way(last).get(0).from().findValue().orElseThrow());
    }

    /** Whether a section is on the way to an appliance, through regulators too. */
    private boolean feeds(String section, Appliance appliance) {
        String at = appliance.fedBy().findValue().orElseThrow();
        while (true) {
            for (Section s : way(at)) {
                if (s.id().equals(section)) {
                    return true;
                }
            }
            String before = regulatorOf(at).fedBy().findValue().orElse("tank");
            if (!sections.containsKey(before)) {
                return false;
            }
            at = before;
        }
    }

    private double load(String section) {
        return loads.computeIfAbsent(section, this::added);
    }

    private double added(String section) {
        return plan.appliances().stream()
                .filter(a -> feeds(section, a))
                .mapToDouble(a -> a.input().findValue().orElseThrow().btuh())
                .sum();
    }

    double loadOf(Regulator regulator) {
        return plan.sections().stream()
                .filter(s -> s.from().is(regulator.id()))
                .mapToDouble(s -> load(s.id()))
                .sum();
    }

    double pressureInWc(Appliance a) {
        return along(a, regulatorOf(fed(a)).outlet().findValue().orElseThrow().inWc(), false);
    }

    double droopedInWc(Appliance a) {
        Regulator r = regulatorOf(fed(a));
        return along(a, r.outlet().findValue().orElseThrow().inWc() - droop(r), false);
    }

    double aloneInWc(Appliance a) {
        return along(a, regulatorOf(fed(a)).outlet().findValue().orElseThrow().inWc(), true);
    }

    private static String fed(Appliance a) {
        return a.fedBy().findValue().orElseThrow();
    }

    private double along(Appliance a, double start, boolean alone) {
        double at = start;
        for (Section s : way(fed(a))) {
            double load = alone ? a.input().findValue().orElseThrow().btuh() : load(s.id());
            at = after(s, at, load, regulatorOf(fed(a)));
        }
        return at;
    }

    double regulatorInletInWc(Regulator r) {
        String section = r.fedBy().findValue().orElseThrow();
        Regulator before = regulatorOf(section);
        double at = before.outlet().findValue().orElseThrow().inWc() - droop(before);
        for (Section s : way(section)) {
            at = after(s, at, load(s.id()), before);
        }
        return at;
    }

    private double droop(Regulator r) {
        double setting = r.outlet().findValue().orElseThrow().inWc();
        boolean fifth = r.kind().is(RegulatorKind.FIRST_STAGE) || r.kind().is(RegulatorKind.TWO_PSI);
        double full = r.droopAtCapacity().isKnown()
                ? r.droopAtCapacity().findValue().orElseThrow().inWc()
                : fifth ? setting / 5 : 2;
        return r.capacity().isKnown()
                ? full * loadOf(r) / r.capacity().findValue().orElseThrow().btuh()
                : full;
    }

    double connectorInWc(Appliance a) {
        Optional<List<Appliance.Part>> parts = a.connection().findValue();
        if (parts.isEmpty()) {
            return 0.5;
        }
        for (Appliance.Part p : parts.get()) {
            if (p.part().is(PartKind.FLEXIBLE_CONNECTOR)) {
                double rated = p.ratedDrop().isKnown()
                        ? p.ratedDrop().findValue().orElseThrow().inWc()
                        : 0.5;
                return p.capacity().isKnown()
                        ? rated
                                * Math.pow(
                                        a.input().findValue().orElseThrow().btuh()
                                                / p.capacity()
                                                        .findValue()
                                                        .orElseThrow()
                                                        .btuh(),
                                        1.85)
                        : rated;
            }
        }
        return 0;
    }

    String status(Appliance a) {
        Regulator r = regulatorOf(fed(a));
        Regulator at = r;
        while (sections.containsKey(at.fedBy().findValue().orElseThrow())) {
            double inlet = regulatorInletInWc(at);
            double needed = at.minInlet().isKnown()
                    ? at.minInlet().findValue().orElseThrow().inWc()
                    : at.outlet().findValue().orElseThrow().inWc();
            if (inlet < needed) {
                return "low";
            }
            at = regulatorOf(at.fedBy().findValue().orElseThrow());
        }
        double inlet = droopedInWc(a) - connectorInWc(a);
        double lockUp =
                r.lockUp().isKnown() ? r.lockUp().findValue().orElseThrow().fraction() : 1.2;
        double idle = r.outlet().findValue().orElseThrow().inWc() * lockUp;
        if (a.minInlet().is(p -> inlet < p.inWc())) {
            return "low";
        }
        if (a.maxInlet().is(p -> idle > p.inWc())) {
            return "high";
        }
        return a.minInlet().isKnown() && a.maxInlet().isKnown() ? "enough" : "unknown";
    }

    private double after(Section s, double at, double load, Regulator regulator) {
        int index = sizing.piping().findSection(s.id()).orElseThrow();
        SectionSize size = sizing.section(index);
        double feet = s.legs().findValue().orElseThrow().stream()
                        .mapToDouble(l -> l.length().feet())
                        .sum()
                + sizing.counted(index).orElseThrow().feet();
        if (s.material().is(Material.CSST)) {
            CapacityTable t = size.table().orElseThrow();
            return at - t.drop().inWc() * feet / carries(t, size.used().orElseThrow(), load);
        }
        double setting = regulator.outlet().findValue().orElseThrow().inWc();
        return lower(size.bore().orElseThrow().inches(), at, load, feet, setting >= 1.5 * 27.7);
    }

    /** The length at which a table carries a load, found by trying lengths. */
    private static double carries(CapacityTable t, int column, double load) {
        double shortest = t.run(0).feet();
        double longest = t.run(t.rowCount() - 1).feet();
        if (t.capacity(0, column).orElseThrow().btuh() < load) {
            throw new IllegalStateException("above the first row");
        }
        if (t.capacity(t.rowCount() - 1, column).orElseThrow().btuh() > load) {
            return longest;
        }
        for (int i = 0; i < 200; i++) {
            double middle = Math.sqrt(shortest * longest);
            if (capacityAt(t, column, middle) > load * (1 + 1e-12)) {
                shortest = middle;
            } else {
                longest = middle;
            }
        }
        return longest;
    }

    private static double capacityAt(CapacityTable t, int column, double feet) {
        int row = 1;
        while (t.run(row).feet() < feet) {
            row++;
        }
        double share = Math.log(feet / t.run(row - 1).feet())
                / Math.log(t.run(row).feet() / t.run(row - 1).feet());
        return Math.exp(
                (1 - share) * Math.log(t.capacity(row - 1, column).orElseThrow().btuh())
                        + share * Math.log(t.capacity(row, column).orElseThrow().btuh()));
    }

    /** Pressure after a length of pipe, by halving; the formula as printed in the code. */
    private static double lower(double bore, double at, double load, double feet, boolean high) {
        double low = 0;
        double most = at;
        for (int i = 0; i < 200; i++) {
            double end = (low + most) / 2;
            double flow;
            if (high) {
                double p1 = at / 27.7 + 14.73;
                double p2 = end / 27.7 + 14.73;
                flow = 2237 * Math.pow(bore, 2.623) * Math.pow((p1 * p1 - p2 * p2) * 0.9910 / (1.2462 * feet), 0.541);
            } else {
                flow = 2313 * Math.pow(bore, 2.623) * Math.pow((at - end) / (1.2462 * feet), 0.541);
            }
            if (2488 * flow > load) {
                low = end;
            } else {
                most = end;
            }
        }
        return (low + most) / 2;
    }
}
