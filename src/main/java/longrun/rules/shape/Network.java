package longrun.rules.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.piping.Side;
import longrun.plan.Appliance;
import longrun.plan.ApplianceKind;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.RegulatorKind;
import longrun.plan.Section;

/**
 * What hangs on what, from the plan alone. References that lead nowhere and loops are left hanging, never followed.
 * Worked out in one pass without recursion, so that a plan of 100,000 sections in a row is read like any other.
 */
public final class Network {

    private static final int NOTHING = -1;

    private final List<Section> sections;
    private final List<Regulator> regulators;
    private final Map<String, Integer> nodes = new HashMap<>();
    private final Map<String, Integer> appliances = new HashMap<>();
    private final int[] parent;
    private final int[] children;
    private final Served[] served;
    private final boolean[] deliversBelow;
    private final boolean[] kindMissingBelow;
    private final int[] source;
    private final Map<Integer, List<Section>> leaving = new HashMap<>();
    private final Map<Integer, List<Appliance>> fed = new HashMap<>();
    private final Map<Integer, Regulator> ended = new HashMap<>();

    Network(Plan plan) {
        sections = plan.sections();
        regulators = plan.regulators();
        int count = sections.size() + regulators.size();
        parent = new int[count];
        children = new int[count];
        served = new Served[count];
        deliversBelow = new boolean[count];
        kindMissingBelow = new boolean[count];
        source = new int[count];
        Arrays.fill(served, Served.NOTHING);
        Arrays.fill(source, NOTHING);
        for (int i = 0; i < sections.size(); i++) {
            nodes.putIfAbsent(sections.get(i).id(), i);
        }
        for (int i = 0; i < regulators.size(); i++) {
            nodes.putIfAbsent(regulators.get(i).id(), sections.size() + i);
        }
        for (int i = 0; i < count; i++) {
            parent[i] = isRegulator(i)
                    ? node(regulator(i).fedBy())
                    : node(sections.get(i).from());
            if (parent[i] != NOTHING) {
                children[parent[i]]++;
            }
            if (parent[i] != NOTHING && isRegulator(parent[i]) && !isRegulator(i)) {
                leaving.computeIfAbsent(parent[i], r -> new ArrayList<>()).add(sections.get(i));
            }
            if (parent[i] != NOTHING && isRegulator(i)) {
                ended.putIfAbsent(parent[i], regulator(i));
            }
        }
        hangAppliances(plan.appliances());
        int[] order = leavesFirst();
        for (int n : order) {
            passUp(n);
        }
        for (int i = order.length - 1; i >= 0; i--) {
            findSource(order[i]);
        }
    }

    private void hangAppliances(List<Appliance> list) {
        Served nowhere = Served.NOTHING;
        for (int i = 0; i < list.size(); i++) {
            Appliance appliance = list.get(i);
            appliances.putIfAbsent(appliance.id(), i);
            int on = node(appliance.fedBy());
            if (on == NOTHING) {
                nowhere = nowhere.plus(Served.unknown("/appliances/" + i + "/fedBy"));
            } else {
                children[on]++;
                fed.computeIfAbsent(on, n -> new ArrayList<>()).add(appliance);
                served[on] = served[on].plus(taken(appliance, "/appliances/" + i + "/input"));
            }
        }
        for (int i = 0; i < sections.size(); i++) {
            if (children[i] == 0) {
                served[i] = served[i].plus(reserve(sections.get(i), "/sections/" + i));
            }
        }
        for (int i = 0; i < sections.size(); i++) {
            if (!sections.get(i).from().isKnown()) {
                nowhere = nowhere.plus(Served.unknown("/sections/" + i + "/from"));
            }
        }
        // what hangs nowhere could hang on any of them
        for (int i = 0; i < served.length && nowhere.missing().isPresent(); i++) {
            if (isRegulator(i)) {
                served[i] = served[i].plus(new Served(0, nowhere.missing(), 0, true));
            }
        }
    }

    private static Served taken(Appliance appliance, String pointer) {
        boolean grill = appliance.kind().is(ApplianceKind.OUTDOOR_GRILL);
        return appliance
                .input()
                .findValue()
                .map(rate -> new Served(rate.btuh(), Optional.empty(), 1, grill))
                .orElse(new Served(0, Optional.of(pointer), 1, grill));
    }

    /** Counts whether or not the end is capped, as it does in the pipe's load. */
    private static Served reserve(Section section, String pointer) {
        return section.reserve()
                .fold(
                        rate -> new Served(rate.btuh(), Optional.empty(), 0, false),
                        () -> Served.NOTHING,
                        () -> Served.unknown(pointer + "/reserve"));
    }

    private int[] leavesFirst() {
        int[] waiting = new int[parent.length];
        for (int p : parent) {
            if (p != NOTHING) {
                waiting[p]++;
            }
        }
        int[] order = new int[parent.length];
        int filled = 0;
        for (int i = 0; i < parent.length; i++) {
            if (waiting[i] == 0) {
                order[filled++] = i;
            }
        }
        for (int done = 0; done < filled; done++) {
            int p = parent[order[done]];
            if (p != NOTHING && --waiting[p] == 0) {
                order[filled++] = p;
            }
        }
        return Arrays.copyOf(order, filled); // what goes in a loop never gets its turn
    }

    private void passUp(int n) {
        int p = parent[n];
        if (p == NOTHING) {
            return;
        }
        served[p] = served[p].plus(served[n]);
        boolean regulator = isRegulator(n);
        Fact<RegulatorKind> kind = regulator ? regulator(n).kind() : Fact.unknown();
        deliversBelow[p] |= deliversBelow[n] || (regulator && kind.is(k -> k != RegulatorKind.LINE));
        kindMissingBelow[p] |= kindMissingBelow[n] || (regulator && !kind.isKnown());
    }

    private void findSource(int n) {
        int p = parent[n];
        if (p != NOTHING) {
            source[n] = isRegulator(p) ? p : source[p];
        }
    }

    private boolean isRegulator(int n) {
        return n >= sections.size();
    }

    private Regulator regulator(int n) {
        return regulators.get(n - sections.size());
    }

    private int node(Fact<String> reference) {
        return reference.findValue().map(this::node).orElse(NOTHING);
    }

    private int node(String id) {
        return nodes.getOrDefault(id, NOTHING);
    }

    /** JSON pointer of a regulator, or of an appliance or section, by its id. */
    public Optional<String> findPointer(String id) {
        Integer appliance = appliances.get(id);
        if (appliance != null) {
            return Optional.of("/appliances/" + appliance);
        }
        int n = node(id);
        if (n == NOTHING) {
            return Optional.empty();
        }
        return Optional.of(isRegulator(n) ? "/regulators/" + (n - sections.size()) : "/sections/" + n);
    }

    public Optional<Section> findSection(String id) {
        int n = node(id);
        return n == NOTHING || isRegulator(n) ? Optional.empty() : Optional.of(sections.get(n));
    }

    public Optional<Regulator> findRegulator(String id) {
        int n = node(id);
        return n != NOTHING && isRegulator(n) ? Optional.of(regulator(n)) : Optional.empty();
    }

    /** The regulator whose outlet feeds this regulator or section. */
    public Optional<Regulator> findRegulatorAhead(String id) {
        int n = node(id);
        return n == NOTHING || source[n] == NOTHING ? Optional.empty() : Optional.of(regulator(source[n]));
    }

    /** The sections that leave a regulator directly. */
    public List<Section> listLeaving(String regulator) {
        return leaving.getOrDefault(node(regulator), List.of());
    }

    /** The appliances at the end of a section. */
    public List<Appliance> listFedBy(String section) {
        return fed.getOrDefault(node(section), List.of());
    }

    /** The regulator at the end of a section. */
    public Optional<Regulator> findRegulatorAtEndOf(String section) {
        return Optional.ofNullable(ended.get(node(section)));
    }

    /** Whether nothing leaves a section or hangs on it. */
    public boolean feedsNothing(String section) {
        int n = node(section);
        return n != NOTHING && children[n] == 0;
    }

    /** What a regulator or a section feeds, all stages after it included. */
    public Served servedBy(String id) {
        int n = node(id);
        return n == NOTHING ? Served.NOTHING : served[n];
    }

    /** The side of the stage that a regulator, or the regulator ahead of a section, feeds. */
    public Side sideOf(String id) {
        int n = node(id);
        int at = n == NOTHING || isRegulator(n) ? n : source[n];
        if (at == NOTHING) {
            return Side.UNKNOWN;
        }
        if (!regulator(at).kind().isKnown()) {
            return Side.UNKNOWN;
        }
        if (deliversBelow[at]) {
            return Side.TANK_SIDE;
        }
        return kindMissingBelow[at] ? Side.UNKNOWN : Side.HOUSE_SIDE;
    }
}
