package longrun.piping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.plan.Plan;
import longrun.plan.Section;

/** Who feeds whom. The plan's reader has made sure that there is no loop. */
final class Forest {

    private final Plan plan;
    private final Map<String, Integer> sectionIndex = new HashMap<>();
    private final Map<String, Integer> regulatorIndex = new HashMap<>();
    private final int[] parent;
    private final List<List<Integer>> children;
    private final Map<Integer, List<Integer>> leaving = new HashMap<>();
    private final int[] applianceOn;
    private final int[] regulatorOn;
    private final int[] feedingRegulator;
    private final int[] order;

    Forest(Plan plan) {
        this.plan = plan;
        int n = plan.sections().size();
        for (int i = 0; i < n; i++) {
            sectionIndex.put(plan.sections().get(i).id(), i);
        }
        for (int i = 0; i < plan.regulators().size(); i++) {
            regulatorIndex.put(plan.regulators().get(i).id(), i);
        }
        parent = filled(n);
        applianceOn = filled(n);
        regulatorOn = filled(n);
        feedingRegulator = filled(plan.regulators().size());
        children = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            children.add(new ArrayList<>(2));
        }
        for (int i = 0; i < n; i++) {
            leave(i, plan.sections().get(i));
        }
        hang();
        order = order(n);
    }

    private static int[] filled(int n) {
        int[] out = new int[n];
        java.util.Arrays.fill(out, -1);
        return out;
    }

    private void leave(int i, Section section) {
        String from = section.from().findValue().orElse("");
        Integer above = sectionIndex.get(from);
        Integer regulator = regulatorIndex.get(from);
        if (above != null) {
            parent[i] = above;
            children.get(above).add(i);
        } else if (regulator != null) {
            leaving.computeIfAbsent(regulator, k -> new ArrayList<>()).add(i);
        }
    }

    private void hang() {
        for (int a = 0; a < plan.appliances().size(); a++) {
            Integer on = sectionIndex.get(
                    plan.appliances().get(a).fedBy().findValue().orElse(""));
            if (on != null) {
                applianceOn[on] = a;
            }
        }
        for (int r = 0; r < plan.regulators().size(); r++) {
            Integer on = sectionIndex.get(
                    plan.regulators().get(r).fedBy().findValue().orElse(""));
            if (on != null) {
                regulatorOn[on] = r;
                feedingRegulator[r] = on;
            }
        }
    }

    /** Every section after the one it leaves, also across regulators. */
    private int[] order(int n) {
        int[] out = new int[n];
        int end = 0;
        for (int i = 0; i < n; i++) {
            if (feederSection(i) < 0) {
                out[end++] = i;
            }
        }
        for (int k = 0; k < end; k++) {
            for (int child : children.get(out[k])) {
                out[end++] = child;
            }
            if (regulatorOn[out[k]] >= 0) {
                for (int next : sectionsLeaving(regulatorOn[out[k]])) {
                    out[end++] = next;
                }
            }
        }
        return out;
    }

    private int feederSection(int i) {
        if (parent[i] >= 0) {
            return parent[i];
        }
        Integer regulator =
                regulatorIndex.get(plan.sections().get(i).from().findValue().orElse(""));
        return regulator == null ? -1 : feedingRegulator[regulator];
    }

    int[] feedersFirst() {
        return order;
    }

    int parent(int section) {
        return parent[section];
    }

    List<Integer> children(int section) {
        return children.get(section);
    }

    List<Integer> sectionsLeaving(int regulator) {
        return leaving.getOrDefault(regulator, List.of());
    }

    /** How many sections leave the point where this one starts. */
    int leavingWith(int section) {
        if (parent[section] >= 0) {
            return children.get(parent[section]).size();
        }
        Integer regulator = regulatorIndex.get(
                plan.sections().get(section).from().findValue().orElse(""));
        return regulator == null ? 1 : sectionsLeaving(regulator).size();
    }

    int applianceOn(int section) {
        return applianceOn[section];
    }

    int regulatorOn(int section) {
        return regulatorOn[section];
    }

    int sectionFeeding(int regulator) {
        return feedingRegulator[regulator];
    }

    OptionalInt findSection(String id) {
        Integer found = sectionIndex.get(id);
        return found == null ? OptionalInt.empty() : OptionalInt.of(found);
    }

    OptionalInt findRegulator(String id) {
        Integer found = regulatorIndex.get(id);
        return found == null ? OptionalInt.empty() : OptionalInt.of(found);
    }

    Optional<Outlet> findOutlet(int section) {
        if (applianceOn[section] >= 0) {
            int a = applianceOn[section];
            return Optional.of(
                    new Outlet(Outlet.Kind.APPLIANCE, plan.appliances().get(a).id(), section, a));
        }
        if (regulatorOn[section] >= 0) {
            int r = regulatorOn[section];
            return Optional.of(
                    new Outlet(Outlet.Kind.REGULATOR, plan.regulators().get(r).id(), section, r));
        }
        if (!children.get(section).isEmpty()) {
            return Optional.empty();
        }
        Section s = plan.sections().get(section);
        Outlet.Kind kind = s.capped().is(true) ? Outlet.Kind.CAPPED : Outlet.Kind.OPEN;
        return Optional.of(new Outlet(kind, s.id(), section, section));
    }
}
