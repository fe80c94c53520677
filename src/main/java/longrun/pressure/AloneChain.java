package longrun.pressure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.capacity.FlowEquation;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.Plan;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;

/**
 * Pressure at the end of the pipe with one appliance alone. Under 1.5 psi a drop does not depend on where it happens, so
 * feet of one size are summed up along the way out and each appliance asks once a size, not once a section; from 1.5 psi
 * every section is worked in turn.
 */
final class AloneChain {

    private record Kind(SectionFlow ofOneFoot) {}

    private final Piping piping;
    private final SectionFlow[] flow;
    private final double[] aloneInWc;

    /** Fills the pressure at the end of each section that an appliance hangs on; others keep what they hold. */
    AloneChain(Piping piping, SectionFlow[] flow, double[] aloneInWc) {
        this.piping = piping;
        this.flow = flow;
        this.aloneInWc = aloneInWc;
    }

    void run(Stage stage, Pressure setting) {
        if (setting.compareTo(FlowEquation.HIGH_FROM) >= 0 || setting.same(FlowEquation.HIGH_FROM)) {
            for (Outlet outlet : stage.outlets()) {
                if (outlet.kind() == Outlet.Kind.APPLIANCE) {
                    aloneInWc[outlet.section()] = walked(outlet, setting);
                }
            }
        } else {
            summed(stage, setting);
        }
    }

    private double input(Outlet outlet) {
        Plan plan = piping.plan();
        return plan.appliances()
                .get(outlet.item())
                .input()
                .findValue()
                .map(HeatRate::btuh)
                .orElse(Double.NaN);
    }

    private double walked(Outlet outlet, Pressure setting) {
        List<Integer> path = new ArrayList<>();
        for (int s = outlet.section(); s >= 0; s = piping.parent(s)) {
            path.add(s);
        }
        double at = setting.inWc();
        for (int i = path.size() - 1; i >= 0; i--) {
            at = StageChain.after(at, flow[path.get(i)].dropInWc(setting, at, input(outlet)));
        }
        return at;
    }

    /** Goes down the tree and back up without recursion, keeping the feet of each size between regulator and here. */
    private void summed(Stage stage, Pressure setting) {
        Map<Kind, Integer> numbers = new HashMap<>();
        Map<Integer, Integer> kindOf = new HashMap<>();
        for (int s : stage.sections()) {
            kindOf.put(s, flow[s].isKnown() ? numbers.computeIfAbsent(kind(flow[s]), k -> numbers.size()) : -1);
        }
        Kind[] kinds = new Kind[numbers.size()];
        numbers.forEach((k, i) -> kinds[i] = k);
        Feet feet = new Feet(kinds, setting);
        Map<Integer, double[]> saved = new HashMap<>();
        List<Integer> stack = new ArrayList<>();
        for (int s : stage.sections()) {
            if (piping.parent(s) < 0) {
                stack.add(s);
            }
        }
        while (!stack.isEmpty()) {
            int s = stack.get(stack.size() - 1);
            int kind = kindOf.getOrDefault(s, -1);
            double[] before = saved.remove(s);
            if (before != null) {
                stack.remove(stack.size() - 1);
                feet.restore(kind, before[0]);
                continue;
            }
            saved.put(s, new double[] {feet.add(kind, flow[s].lengthFt())});
            piping.findOutlet(s)
                    .filter(o -> o.kind() == Outlet.Kind.APPLIANCE)
                    .ifPresent(o -> aloneInWc[s] = feet.pressureInWc(input(o)));
            stack.addAll(piping.children(s));
        }
    }

    private static Kind kind(SectionFlow f) {
        return new Kind(new SectionFlow(1, f.boreIn(), f.table(), f.column()));
    }

    /** Feet of each size on the way to one place. */
    private static final class Feet {

        private final Kind[] kinds;
        private final Pressure setting;
        private final double[] feet;
        private int unknown;

        Feet(Kind[] kinds, Pressure setting) {
            this.kinds = kinds;
            this.setting = setting;
            this.feet = new double[kinds.length];
        }

        /** Adds a section and answers what was there before; putting that back leaves no rounding behind. */
        double add(int kind, double lengthFt) {
            if (kind < 0) {
                unknown++;
                return 0;
            }
            double before = feet[kind];
            feet[kind] += lengthFt;
            return before;
        }

        void restore(int kind, double before) {
            if (kind < 0) {
                unknown--;
            } else {
                feet[kind] = before;
            }
        }

        double pressureInWc(double loadBtuh) {
            if (unknown > 0 || Double.isNaN(loadBtuh)) {
                return Double.NaN;
            }
            double at = setting.inWc();
            for (int k = 0; k < kinds.length; k++) {
                if (feet[k] > 0) {
                    at = StageChain.after(at, drop(k, at, loadBtuh));
                }
            }
            return at;
        }

        private double drop(int k, double at, double loadBtuh) {
            SectionFlow one = kinds[k].ofOneFoot();
            SectionFlow whole = new SectionFlow(feet[k], one.boreIn(), one.table(), one.column());
            return whole.dropInWc(setting, at, loadBtuh);
        }
    }

    /** Empty for NaN. */
    static Optional<Pressure> known(double inWc) {
        return Double.isNaN(inWc) ? Optional.empty() : Optional.of(Pressure.ofInWc(inWc));
    }
}
