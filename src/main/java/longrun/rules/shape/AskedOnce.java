package longrun.rules.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import longrun.finding.Finding;
import longrun.plan.Appliance;
import longrun.rules.limit.State;

/**
 * A rule that says the same of many sections or appliances once: a question of one kind stands at the first, names the
 * next few and goes on to those once the first is answered; one wrong entry that many share is told at the first.
 */
public final class AskedOnce implements Rule {

    private static final int NAMED = 3;

    private final Rule rule;
    private final boolean ofSections;

    private AskedOnce(Rule rule, boolean ofSections) {
        this.rule = rule;
        this.ofSections = ofSections;
    }

    public static Rule ofSections(Rule rule) {
        return new AskedOnce(rule, true);
    }

    public static Rule ofAppliances(Rule rule) {
        return new AskedOnce(rule, false);
    }

    @Override
    public String name() {
        return rule.name();
    }

    @Override
    public Precedence precedence() {
        return Precedence.SIZE; // a rule that asks of one place alone goes first
    }

    @Override
    public List<Verdict> judge(House house) {
        List<Verdict> verdicts = new ArrayList<>(rule.judge(house));
        Map<String, String> called = ofSections ? Map.of() : called(house);
        Map<String, List<Integer>> asked = new LinkedHashMap<>();
        for (int i = 0; i < verdicts.size(); i++) {
            Verdict v = verdicts.get(i);
            if (v.finding().isPresent()
                    && (v.state().state() == State.ASKS || v.state().state() == State.BROKEN)) {
                asked.computeIfAbsent(key(v, called), k -> new ArrayList<>()).add(i);
            }
        }
        asked.values().stream().filter(same -> same.size() > 1).forEach(same -> {
            same.sort(Comparator.comparing(i -> verdicts.get(i).state().at())); // by name, whatever the list's order
            Verdict first = verdicts.get(same.get(0));
            String one = label(first, called);
            String all = all(same.stream().map(verdicts::get).toList(), called);
            verdicts.set(same.get(0), new Verdict(first.state(), first.finding().map(f -> about(f, one, all))));
            same.stream()
                    .skip(1)
                    .forEach(i -> verdicts.set(i, new Verdict(verdicts.get(i).state(), Optional.empty())));
        });
        return verdicts;
    }

    private static Map<String, String> called(House house) {
        Map<String, String> called = new LinkedHashMap<>();
        for (Appliance a : house.plan().appliances()) {
            called.put(a.id(), a.called());
        }
        return called;
    }

    private String key(Verdict v, Map<String, String> called) {
        Finding f = v.finding().orElseThrow();
        boolean asks = v.state().state() == State.ASKS;
        return f.found().toLowerCase(Locale.ROOT).replace(label(v, called).toLowerCase(Locale.ROOT), "{who}") + "\n"
                + f.required() + "\n" + (asks ? f.field().substring(f.field().lastIndexOf('/')) : f.field());
    }

    private String label(Verdict v, Map<String, String> called) {
        return ofSections
                ? "section " + v.state().at()
                : called.getOrDefault(v.state().at(), v.state().at());
    }

    private String all(List<Verdict> same, Map<String, String> called) {
        List<String> named = same.stream()
                .limit(NAMED)
                .map(v -> ofSections ? v.state().at() : label(v, called))
                .toList();
        int more = same.size() - named.size();
        return (ofSections ? "sections " : "")
                + (more > 0
                        ? String.join(", ", named) + " and " + more + " more"
                        : String.join(", ", named.subList(0, named.size() - 1)) + " and "
                                + named.get(named.size() - 1));
    }

    private static Finding about(Finding f, String one, String all) {
        String found = f.found().startsWith(capital(one))
                ? capital(all) + f.found().substring(one.length())
                : f.found().replace(one, all);
        return f.saying(found, f.ask().map(q -> q.replace(one, all)), f.remedy().replace(one, all));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
