package longrun.plan.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.Use;

/** Ids and what points at them. A plan's pipes form a forest: each section has one feeder, and none feeds itself. */
final class References {

    private static final Set<String> RESERVED = Set.of("tank", "site", "plan", "hot-water");

    private final Plan plan;
    private final AsWritten written;
    private final BiConsumer<String, String> error;
    private final Map<String, Integer> sections = new LinkedHashMap<>();
    private final Map<String, Integer> regulators = new LinkedHashMap<>();
    private final Set<String> appliances = new LinkedHashSet<>();
    private final List<String> feederNames;
    private final Set<String> rooms = new LinkedHashSet<>();

    References(Plan plan, AsWritten written, BiConsumer<String, String> error) {
        this.plan = plan;
        this.written = written;
        this.error = error;
        for (int i = 0; i < plan.sections().size(); i++) {
            sections.putIfAbsent(plan.sections().get(i).id(), i);
        }
        for (int i = 0; i < plan.regulators().size(); i++) {
            regulators.putIfAbsent(plan.regulators().get(i).id(), i);
        }
        feederNames = new ArrayList<>(regulators.keySet());
        feederNames.addAll(sections.keySet());
        plan.appliances().forEach(a -> appliances.add(a.id()));
        plan.rooms().forEach(r -> rooms.add(r.id()));
    }

    void check() {
        ids();
        feeders();
        otherReferences();
        loops();
    }

    /** The section a section leaves, where it leaves one. */
    Optional<Section> parentSection(Section section) {
        return section.from().findValue().map(sections::get).map(plan.sections()::get);
    }

    private void ids() {
        Map<String, String> seen = new LinkedHashMap<>();
        for (int i = 0; i < plan.regulators().size(); i++) {
            id(plan.regulators().get(i).id(), "/regulators/" + i, seen);
        }
        for (int i = 0; i < plan.sections().size(); i++) {
            id(plan.sections().get(i).id(), "/sections/" + i, seen);
        }
        for (int i = 0; i < plan.rooms().size(); i++) {
            id(plan.rooms().get(i).id(), "/rooms/" + i, seen);
        }
        for (int i = 0; i < plan.appliances().size(); i++) {
            id(plan.appliances().get(i).id(), "/appliances/" + i, seen);
        }
    }

    private void id(String id, String at, Map<String, String> seen) {
        if (RESERVED.contains(id)) {
            error.accept(at + "/id", "\"" + id + "\" is kept for the program's own use: write another name");
        }
        String first = seen.putIfAbsent(id, at);
        if (first != null && !id.isEmpty()) {
            error.accept(
                    at + "/id",
                    "\"" + shortened(id) + "\" is already the name of " + written.pointer(first) + ": write another");
        }
    }

    private void feeders() {
        Map<String, String> hanging = new LinkedHashMap<>();
        Set<String> feeding = new LinkedHashSet<>();
        for (int i = 0; i < plan.sections().size(); i++) {
            Fact<String> from = plan.sections().get(i).from();
            String at = "/sections/" + i + "/from";
            from.findValue().ifPresent(id -> {
                if (!sections.containsKey(id) && !regulators.containsKey(id)) {
                    error.accept(at, unknown(id, "a section or a regulator", feederNames));
                }
                feeding.add(id);
            });
        }
        for (int i = 0; i < plan.regulators().size(); i++) {
            Regulator r = plan.regulators().get(i);
            hang(r.fedBy(), "/regulators/" + i + "/fedBy", r.id(), true, hanging, feeding);
        }
        for (int i = 0; i < plan.appliances().size(); i++) {
            Appliance a = plan.appliances().get(i);
            hang(a.fedBy(), "/appliances/" + i + "/fedBy", a.id(), false, hanging, feeding);
        }
    }

    private void hang(
            Fact<String> fedBy,
            String at,
            String who,
            boolean tankWillDo,
            Map<String, String> hanging,
            Set<String> feeding) {
        fedBy.findValue().ifPresent(id -> {
            if (tankWillDo && id.equals("tank")) {
                return;
            }
            if (!sections.containsKey(id)) {
                error.accept(at, unknown(id, tankWillDo ? "a section, or tank," : "a section", sections.keySet()));
                return;
            }
            if (feeding.contains(id)) {
                error.accept(
                        at,
                        "section \"" + shortened(id) + "\" feeds other sections: give \"" + shortened(who)
                                + "\" a section of its own that leaves it");
            }
            String other = hanging.putIfAbsent(id, who);
            if (other != null) {
                error.accept(
                        at,
                        "section \"" + shortened(id) + "\" already ends at \"" + shortened(other) + "\": give \""
                                + shortened(who) + "\" a section of its own");
            }
        });
    }

    private void otherReferences() {
        for (int i = 0; i < plan.appliances().size(); i++) {
            one(plan.appliances().get(i).room(), "/appliances/" + i + "/room", rooms, "a room");
        }
        Set<String> tables = new LinkedHashSet<>();
        for (int i = 0; i < plan.tubingTables().size(); i++) {
            String at = "/tubingTables/" + i + "/name";
            plan.tubingTables().get(i).name().findValue().ifPresent(name -> {
                if (!tables.add(name)) {
                    error.accept(at, "another table is named \"" + shortened(name) + "\": write a name that differs");
                }
            });
        }
        for (int i = 0; i < plan.sections().size(); i++) {
            one(plan.sections().get(i).table(), "/sections/" + i + "/table", tables, "a tubing table");
        }
        plan.use().ifPresent(this::uses);
        Set<String> anything = new LinkedHashSet<>(RESERVED);
        anything.addAll(sections.keySet());
        anything.addAll(regulators.keySet());
        anything.addAll(appliances);
        anything.addAll(rooms);
        for (int i = 0; i < plan.readings().size(); i++) {
            one(plan.readings().get(i).at(), "/readings/" + i + "/at", anything, "any id of the plan");
        }
        for (int i = 0; i < plan.answers().size(); i++) {
            one(plan.answers().get(i).at(), "/answers/" + i + "/at", anything, "any id of the plan");
        }
    }

    private void uses(Use use) {
        for (int i = 0; i < use.heating().size(); i++) {
            one(use.heating().get(i).appliance(), "/use/heating/" + i + "/appliance", appliances, "an appliance");
        }
        for (int i = 0; i < use.others().size(); i++) {
            one(use.others().get(i).appliance(), "/use/others/" + i + "/appliance", appliances, "an appliance");
        }
        for (int i = 0; i < use.occasions().size(); i++) {
            List<String> firing = use.occasions().get(i).firing().findValue().orElse(List.of());
            for (int k = 0; k < firing.size(); k++) {
                one(Fact.known(firing.get(k)), "/use/occasions/" + i + "/firing/" + k, appliances, "an appliance");
            }
        }
        use.hotWater()
                .flatMap(Use.HotWater::onDemand)
                .ifPresent(o -> one(o.appliance(), "/use/hotWater/onDemand/appliance", appliances, "an appliance"));
    }

    private void one(Fact<String> reference, String at, Set<String> known, String what) {
        reference.findValue().ifPresent(id -> {
            if (!known.contains(id)) {
                error.accept(at, unknown(id, what, known));
            }
        });
    }

    /** Follows every feeder once; a chain that comes back to itself is a loop. */
    private void loops() {
        Map<String, Integer> chainOf = new LinkedHashMap<>();
        List<String> all = new ArrayList<>(regulators.keySet());
        plan.sections().forEach(s -> all.add(s.id()));
        int chain = 0;
        for (String start : all) {
            chain++;
            String at = start;
            while (at != null && !chainOf.containsKey(at)) {
                chainOf.put(at, chain);
                at = feeder(at);
            }
            if (at != null && Objects.equals(chainOf.get(at), chain)) {
                loop(at);
            }
        }
    }

    private void loop(String in) {
        int first = Integer.MAX_VALUE;
        int firstRegulator = Integer.MAX_VALUE;
        String at = in;
        do {
            Integer section = sections.get(at);
            first = section == null ? first : Math.min(first, section);
            firstRegulator =
                    section == null ? Math.min(firstRegulator, regulators.getOrDefault(at, 0)) : firstRegulator;
            at = feeder(at);
        } while (at != null && !at.equals(in));
        String pointer =
                first < Integer.MAX_VALUE ? "/sections/" + first + "/from" : "/regulators/" + firstRegulator + "/fedBy";
        error.accept(pointer, "the pipe comes back to itself here: write what really feeds this section");
    }

    private @org.jspecify.annotations.Nullable String feeder(String id) {
        Integer section = sections.get(id);
        if (section != null) {
            return plan.sections().get(section).from().findValue().orElse(null);
        }
        Integer regulator = regulators.get(id);
        return regulator == null
                ? null
                : plan.regulators().get(regulator).fedBy().findValue().orElse(null);
    }

    private static String unknown(String id, String what, Collection<String> known) {
        List<String> names = known.stream().limit(12).map(References::shortened).toList();
        String choice = names.isEmpty() ? "there is none in the plan yet" : "write one of " + String.join(", ", names);
        return "\"" + shortened(id) + "\" is not a name of " + what + ": " + choice
                + (known.size() > names.size() ? ", ..." : "");
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }
}
