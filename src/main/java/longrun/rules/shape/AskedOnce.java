package longrun.rules.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import longrun.finding.ListWords;
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
        Map<Same, List<Integer>> told = new LinkedHashMap<>();
        Same last = Same.NOTHING;
        for (int i = 0; i < verdicts.size(); i++) {
            State state = verdicts.get(i).state().state();
            Optional<Telling> telling = verdicts.get(i).telling();
            if (telling.isPresent() && (state == State.ASKS || state == State.BROKEN)) {
                if (!last.isAlso(telling.get(), state)) { // of a thousand sections most follow one of their kind
                    last = Same.of(telling.get(), state);
                }
                told.computeIfAbsent(last, k -> new ArrayList<>()).add(i);
            }
        }
        told.values().stream().filter(same -> same.size() > 1).forEach(same -> tellOnce(verdicts, same));
        return verdicts;
    }

    /** By name, whatever the list's order. */
    private void tellOnce(List<Verdict> verdicts, List<Integer> same) {
        List<Integer> first =
                first(same, Comparator.comparing(i -> verdicts.get(i).state().at()));
        List<String> named = first.stream()
                .map(i -> verdicts.get(i).telling().orElseThrow().place())
                .map(p -> ofSections ? p.at() : p.label())
                .toList();
        int teller = first.get(0);
        Verdict one = verdicts.get(teller);
        same.forEach(i -> verdicts.set(i, verdicts.get(i).untold()));
        Place place = one.telling().orElseThrow().place();
        verdicts.set(
                teller,
                one.about(place.together((ofSections ? "sections " : "") + ListWords.most(named, same.size(), NAMED))));
    }

    /** The few that are named, in order; of a thousand the others need not be sorted. */
    private static List<Integer> first(List<Integer> all, Comparator<Integer> order) {
        NavigableSet<Integer> first = new TreeSet<>(order.thenComparing(Comparator.naturalOrder()));
        for (int one : all) {
            first.add(one);
            if (first.size() > NAMED) {
                first.pollLast();
            }
        }
        return List.copyOf(first);
    }

    /** What must be the same for it to be told once: what was found, what is required, and the entry that mends it. */
    private record Same(String found, String required, String entry) {

        static final Same NOTHING = new Same("", "", "");

        boolean isAlso(Telling t, State state) {
            return found.equals(t.found())
                    && (state == State.ASKS
                            ? entry.lastIndexOf('/') == 0 && t.field().endsWith(entry)
                            : entry.equals(t.field()))
                    && required.equals(t.limit().required());
        }

        static Same of(Telling t, State state) {
            String field = t.field();
            return new Same(
                    t.found(),
                    t.limit().required(),
                    state == State.ASKS ? field.substring(field.lastIndexOf('/')) : field);
        }
    }
}
